package trueseam.fitting.truing;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;

/** Slides a side edge along the grain; where a dart is sewn into it, the part above the dart and the part below by their own amounts. */
final class SideSlide {

    /** How much of the edge beside is drawn new into a levelled corner. */
    private static final double BESIDE_MM = 40;

    private static final double NOTHING_MM = 1e-9;

    private final Piece piece;
    private final Edge side;
    private final boolean upwards;
    private final Optional<Dart.EdgeDart> dart;

    SideSlide(Piece piece, String side) {
        this.piece = piece;
        this.side = piece.edge(side);
        this.upwards = this.side.path().end().y() > this.side.path().start().y();
        List<Dart.EdgeDart> darts = piece.dartsOn(side);
        this.dart = darts.isEmpty() ? Optional.empty() : Optional.of(darts.get(0));
    }

    boolean isDivided() {
        return dart.isPresent();
    }

    PieceWork work(double topUpMm, double bottomUpMm) {
        StepList list = new StepList(piece);
        double startUp = upwards ? bottomUpMm : topUpMm;
        double endUp = upwards ? topUpMm : bottomUpMm;
        if (dart.isPresent() && Math.abs(startUp - endUp) > NOTHING_MM) {
            list.add(new Step.Slide(0, startUp));
            list.trace(side.name(), 0, dart.get().fromMm());
            list.add(new Step.LayBack());
            list.add(new Step.Slide(0, endUp));
            list.trace(side.name(), dart.get().toMm(), side.length());
            list.join(side.name(), dart.get().fromMm(), dart.get().toMm(), JoinForm.REFIT);
        } else {
            list.add(new Step.Slide(0, startUp));
            list.trace(side.name(), 0, side.length());
        }
        joinBeside(list, piece, SeamEnds.beside(piece, side.name(), true), false);
        joinBeside(list, piece, SeamEnds.beside(piece, side.name(), false), true);
        return new PieceWork(piece.name(), list.finished());
    }

    static void joinBeside(StepList list, Piece piece, Edge edge, boolean atItsStart) {
        double whole = edge.length();
        double reach = Math.min(BESIDE_MM, whole / 3);
        double from = atItsStart ? 0 : whole - reach;
        double to = atItsStart ? reach : whole;
        for (Dart.EdgeDart other : piece.dartsOn(edge.name())) {
            if (atItsStart) {
                to = Math.min(to, other.fromMm());
            } else {
                from = Math.max(from, other.toMm());
            }
        }
        list.join(edge.name(), from, to, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
    }
}
