package trueseam.intake.bring;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.naming.Proposal;

/**
 * What a piece was taken for.
 *
 * @param name what it is called: by its maker, else by its kind
 * @param kind its kind
 * @param proposal which edge is which; nothing if its edges stay unnamed
 * @param others what else it may be, the likelier first
 * @param ask what only words tell, as a question; empty if there is nothing to ask
 */
record Named(String name, Sure<PieceKind> kind, Optional<Proposal> proposal, List<PieceKind> others, String ask) {

    static Named of(String name, Sure<PieceKind> kind, Optional<Proposal> proposal) {
        return new Named(name, kind, proposal, proposal.map(Proposal::others).orElse(List.of()), "");
    }
}
