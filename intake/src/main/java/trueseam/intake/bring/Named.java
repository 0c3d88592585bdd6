package trueseam.intake.bring;

import java.util.Optional;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.naming.Proposal;

/**
 * What a piece was taken for.
 *
 * @param name what it is called: by its maker, else by its kind
 * @param kind its kind
 * @param proposal which edge is which; nothing if its edges stay unnamed
 */
record Named(String name, PieceKind kind, Optional<Proposal> proposal) {}
