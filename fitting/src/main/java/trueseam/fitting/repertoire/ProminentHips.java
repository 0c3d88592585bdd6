package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Motion;

/**
 * Prominent hips: the dart is slashed, and a plait is laid at the hip line from the side seam to nothing at the point of the dart, over
 * the fullest hip, so that the dart takes what the side seam took. The side may come to be straight there and never hollow [DM1911].
 */
final class ProminentHips {

    static final Entry ENTRY = Entry.named(
                    "prominent hips", Family.SKIRT, Stage.WIDTH, PieceKind.SKIRT_FRONT, PieceKind.SKIRT_BACK)
            .calledForBy(Measure.TOP_HIP_GIRTH, Measure.HIP_GIRTH)
            .folds("the skirt pulls at the sides over the hips while the side seam below hangs well")
            .amount("lays a plait at the hip line of the side seam and deepens the dart nearest to it", "")
            .moves("the part between the dart and the side seam, above the hip line")
            .sharing("the whole plait on every piece")
            .pin("point of the dart")
            .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.HEM), Stay.all(EdgeRole.CENTRE))
            .alsoStays("the length of the darts; below the hip line all")
            .trued("the side is drawn anew from hip to waist, front and back of one length")
            .source("DM1911 (about 1/2 in, darts slashed, dart lengths kept)")
            .amounts(12.7, 12.7)
            .doneBy(ProminentHips::work);

    private ProminentHips() {}

    /** The part that swings, and the hinge that it swings about. */
    private record Part(SeamLine side, Dart.EdgeDart dart, Spot point, Place leg, Place hip, Place sideWaist) {

        static Part of(Piece piece, double mm) {
            SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
            Place sideWaist = new Corners(piece).at(EdgeRole.WAIST, EdgeRole.SIDE, "side waist");
            List<Dart.EdgeDart> darts = WaistDarts.of(piece);
            if (darts.isEmpty()) {
                throw new AlterationException(
                        piece.name(), "waist", mm, "there is no dart to slash; draw the hip curve anew instead.");
            }
            boolean sideFirst =
                    sideWaist.alongMm() < piece.edge(sideWaist.edge()).length() / 2;
            Dart.EdgeDart dart = darts.get(sideFirst ? 0 : darts.size() - 1);
            return new Part(
                    side,
                    dart,
                    new Spot(dart.apex(), "point of the " + dart.name()),
                    new Place(dart.edge(), sideFirst ? dart.fromMm() : dart.toMm(), "leg nearer the side"),
                    side.at(LevelName.HIP, "hip point"),
                    sideWaist);
        }

        /** How long a gentle side is, from the hip to where the waist comes to lie. */
        double gentleMm(double mm) {
            Piece piece = side.piece;
            Motion swing = Swing.along(piece, point, Spot.of(piece, hip), -mm);
            Place top = side.top("side waist");
            double past = swing.apply(top.on(piece)).x() - hip.on(piece).x();
            if (side.outward() * past > 0) {
                throw new AlterationException(
                        piece.name(),
                        side.edge.name(),
                        mm,
                        "the side would turn hollow above the hip; lay a smaller plait and widen the hip at the side.");
            }
            return side.gentleMm(hip, top, swing);
        }

        /** How much the side gains, which front and back must have alike: below the hip their sides need not be of one length. */
        double gainsMm(double mm) {
            return gentleMm(mm) - upperMm();
        }

        private double upperMm() {
            return Math.abs(side.top("").alongMm() - hip.alongMm());
        }

        PieceWork work(double mm, double gainsMm) {
            Piece piece = side.piece;
            double sideMm = upperMm() + gainsMm;
            StepList list = new StepList(piece);
            list.cut("side part", leg, List.of(point), hip, sideWaist);
            list.add(new Step.Spread(point, new Until.MovesAlong(Spot.of(piece, hip), -mm)));
            list.trace(
                    dart.edge(),
                    Math.min(leg.alongMm(), sideWaist.alongMm()),
                    Math.max(leg.alongMm(), sideWaist.alongMm()));
            list.join(hip, side.top(""), JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, sideMm));
            list.join(dart.edge(), dart.fromMm(), dart.toMm(), JoinForm.REFIT);
            return new PieceWork(piece.name(), list.finished());
        }
    }

    private static List<PieceWork> work(Pattern pattern, double mm) {
        List<Part> parts = new ArrayList<>();
        double gainsMm = Double.NEGATIVE_INFINITY;
        for (Piece piece : pattern.pieces()) {
            if (SkirtGirth.SKIRTS.contains(piece.kind())) {
                Part part = Part.of(piece, mm);
                parts.add(part);
                gainsMm = Math.max(gainsMm, part.gainsMm(mm));
            }
        }
        double all = gainsMm;
        return parts.stream().map(part -> part.work(mm, all)).toList();
    }
}
