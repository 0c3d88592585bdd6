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
                    "prominent hips",
                    Family.SKIRT,
                    Stage.WIDTH,
                    PieceKind.SKIRT_FRONT,
                    PieceKind.SKIRT_BACK,
                    PieceKind.SKIRT_SIDE_FRONT,
                    PieceKind.SKIRT_SIDE_BACK)
            .calledForBy(Measure.TOP_HIP_GIRTH, Measure.HIP_GIRTH)
            .folds("the skirt pulls at the sides over the hips while the side seam below hangs well")
            .amount(
                    "lays a plait at the hip line of the side seam and deepens the dart nearest to it, or in gores the seam",
                    "")
            .moves("the part between the dart and the side seam, above the hip line; in gores the gore at the side")
            .sharing("the whole plait on every piece that has the side seam")
            .pin("point of the dart; in gores the hip at the seam nearer the centre")
            .stays(
                    Stay.all(EdgeRole.WAIST),
                    Stay.all(EdgeRole.HEM),
                    Stay.all(EdgeRole.CENTRE),
                    Stay.all(EdgeRole.PANEL))
            .alsoStays("the length of the darts; in gores the gores at the centre; below the hip line all")
            .trued(
                    "the side is drawn anew from hip to waist, front and back of one length; in gores the waist stays as level as it was")
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
        List<Gore> atTheSide = new ArrayList<>();
        for (List<Gore> half : Gore.halves(pattern, PieceKind::isSkirt)) {
            Gore last = half.get(half.size() - 1);
            if (half.size() > 1) { // the seam between the gores holds what a dart does elsewhere
                atTheSide.add(last);
            } else {
                parts.add(Part.of(last.piece(), mm));
            }
        }
        double gainsMm = parts.stream()
                .mapToDouble(part -> part.gainsMm(mm))
                .max()
                .orElseGet(() -> atTheSide.stream()
                        .mapToDouble(gore -> GorePlait.levelGainsMm(gore, mm))
                        .average()
                        .orElse(0));
        List<PieceWork> work = new ArrayList<>();
        parts.forEach(part -> work.add(part.work(mm, gainsMm)));
        atTheSide.forEach(gore -> work.add(GorePlait.across(gore, mm, gainsMm)));
        return work;
    }
}
