package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Waist girth by the waist darts of half pieces: with k darts in a half, each takes N/(2k) less or more (trade rule of sharing). */
final class WaistDarts {

    /** A dart that holds less than this is none, mm. */
    static final double LEAST_DART_MM = 2;

    private WaistDarts() {}

    static Maker on(Set<PieceKind> kinds) {
        Set<PieceKind> concerned = EnumSet.copyOf(kinds);
        return (pattern, mm) -> work(pattern, concerned, mm);
    }

    private static List<PieceWork> work(Pattern pattern, Set<PieceKind> kinds, double mm) {
        int darts = 0;
        Piece last = null;
        for (Piece piece : pattern.pieces()) {
            if (kinds.contains(piece.kind())) {
                darts += of(piece).size() * piece.timesAround();
                last = piece;
            }
        }
        if (last != null && darts == 0) {
            throw new AlterationException(
                    last.name(), "waist", mm, "no piece has a waist dart; alter the waist at the side seams.");
        }
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (kinds.contains(piece.kind()) && !of(piece).isEmpty()) {
                StepList list = new StepList(piece);
                for (Dart.EdgeDart dart : of(piece)) {
                    redraw(list, piece, dart, -mm / darts);
                }
                work.add(new PieceWork(piece.name(), list.finished()));
            }
        }
        return work;
    }

    static List<Dart.EdgeDart> of(Piece piece) {
        return piece.firstOf(EdgeRole.WAIST)
                .map(edge -> piece.dartsOn(edge.name()))
                .orElse(List.of());
    }

    private static void redraw(StepList list, Piece piece, Dart.EdgeDart dart, double widerMm) {
        requireHolds(piece, dart, widerMm, widerMm);
        Edge waist = piece.edge(dart.edge());
        double before = 0;
        double after = waist.length();
        for (Dart.EdgeDart other : piece.dartsOn(waist.name())) {
            before = other.toMm() <= dart.fromMm() ? Math.max(before, other.toMm()) : before;
            after = other.fromMm() >= dart.toMm() ? Math.min(after, other.fromMm()) : after;
        }
        if (dart.fromMm() - widerMm < before || dart.toMm() + widerMm > after) {
            throw new AlterationException(
                    piece.name(), dart.name(), widerMm, "the wider dart would reach the next one; use the side seams.");
        }
        list.add(new Step.Remark(Step.Inside.DART_LEGS, dart.name(), widerMm / 2, 0));
    }

    /** Refuses to take from a dart what it does not hold. */
    static void requireHolds(Piece piece, Dart.EdgeDart dart, double widerMm, double amountMm) {
        if (dart.mouthMm() + widerMm < LEAST_DART_MM) {
            throw new AlterationException(
                    piece.name(),
                    dart.name(),
                    amountMm,
                    "the dart does not hold so much; take less here and the rest at the side seams, or take the next size.");
        }
    }
}
