package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * Length of a kimono sleeve: the forearm slides along the overarm line by the full amount, front and back alike, and the seams are joined
 * again over a line between elbow and wrist.
 *
 * <pre>{@code
 *    N---S-------|------T-->T'    All beyond the line slides along S T. Measured from the
 *        |    ___|______|_        centre back over S to the wrist; the neck stays, the shoulder
 *        |   /   |      |         and the upper arm too.
 * }</pre>
 *
 * Source: [ND1921] (along the centre line; from the centre back to within 3/8 in of the edge); a line square to the sleeve, common practice.
 *
 * @param longerMm longer by so much, mm; minus for shorter
 */
public record KimonoLength(double longerMm) implements Alteration {

    /** Where the line lies, as a share of the overarm seam from the wrist: half way up to the elbow. */
    private static final double LINE_SHARE = 0.2;

    /** How far to either side of the line a seam is drawn new, at the least, mm (common practice). */
    private static final double TAPER_MM = 95;

    private static final double STRAIGHT_MM = 1e-6;
    private static final double LEAST_LEFT_MM = 5;

    @Override
    public String title() {
        return "Kimono length: " + (longerMm > 0 ? "lengthen" : "shorten") + " between elbow and wrist";
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        if (longerMm == 0) {
            return work;
        }
        List<KimonoSleeve> sleeves = KimonoSleeve.of(pattern);
        // Front and back are sewn together: both take the growth of the one that needs more, or nearly.
        Map<EdgeRole, Double> most = new EnumMap<>(EdgeRole.class);
        for (KimonoSleeve sleeve : sleeves) {
            most.merge(EdgeRole.OVERARM, growthMm(sleeve, sleeve.over, !sleeve.isOverInwards()), Math::max);
            most.merge(EdgeRole.UNDERARM, growthMm(sleeve, sleeve.under, sleeve.isUnderOutwards()), Math::max);
        }
        for (KimonoSleeve sleeve : sleeves) {
            Vec by = sleeve.out().times(longerMm);
            StepList list = new StepList(sleeve.piece);
            list.add(new Step.Slide(by.x(), by.y()));
            beyond(list, sleeve, sleeve.over, !sleeve.isOverInwards());
            list.trace(sleeve.wrist.name(), 0, sleeve.wrist.length());
            beyond(list, sleeve, sleeve.under, sleeve.isUnderOutwards());
            join(list, sleeve, sleeve.over, !sleeve.isOverInwards(), most.get(EdgeRole.OVERARM));
            join(list, sleeve, sleeve.under, sleeve.isUnderOutwards(), most.get(EdgeRole.UNDERARM));
            work.add(new PieceWork(sleeve.piece.name(), list.finished()));
        }
        return work;
    }

    private void beyond(StepList list, KimonoSleeve sleeve, Edge edge, boolean outwards) {
        Stretch gap = gap(sleeve, edge, outwards);
        if (outwards) {
            list.trace(edge.name(), gap.toMm(), edge.length());
        } else {
            list.trace(edge.name(), 0, gap.fromMm());
        }
    }

    private void join(StepList list, KimonoSleeve sleeve, Edge edge, boolean outwards, double mostMm) {
        Stretch gap = gap(sleeve, edge, outwards);
        boolean straight = isStraight(sleeve, edge.path(), gap);
        double growthMm = Math.max(growthMm(sleeve, edge, outwards), mostMm - KimonoSleeve.WALKED_MM);
        list.join(
                edge.name(),
                gap.fromMm(),
                gap.toMm(),
                straight
                        ? JoinForm.STRAIGHT
                        : JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, gap.lengthMm() + growthMm));
    }

    /** What is drawn new of a seam: as much on either side of the line. */
    private Stretch gap(KimonoSleeve sleeve, Edge edge, boolean outwards) {
        double fromWrist = LINE_SHARE * sleeve.over.length();
        double half = Math.min(Math.max(TAPER_MM, Math.abs(longerMm)), fromWrist - 1);
        if (2 * half + longerMm < LEAST_LEFT_MM) {
            throw new AlterationException(
                    sleeve.piece.name(),
                    edge.name(),
                    longerMm,
                    "the sleeve leaves only " + Math.round(2 * half - LEAST_LEFT_MM)
                            + " mm to take away between elbow and wrist; take the rest off at the wrist.");
        }
        double at = outwards ? edge.length() - fromWrist : fromWrist;
        return new Stretch(edge.name(), at - half, at + half);
    }

    private boolean isStraight(KimonoSleeve sleeve, Path path, Stretch gap) {
        Vec along = path.pointAt(gap.toMm()).minus(path.pointAt(gap.fromMm()));
        return Math.abs(along.cross(sleeve.out())) < STRAIGHT_MM && gap.lengthMm() - along.length() < STRAIGHT_MM;
    }

    private double growthMm(KimonoSleeve sleeve, Edge edge, boolean outwards) {
        Stretch gap = gap(sleeve, edge, outwards);
        Path path = edge.path();
        if (isStraight(sleeve, path, gap)) {
            return longerMm;
        }
        Vec by = sleeve.out().times(longerMm);
        Point from = path.pointAt(gap.fromMm()).plus(outwards ? Vec.ZERO : by);
        Point to = path.pointAt(gap.toMm()).plus(outwards ? by : Vec.ZERO);
        Cubic gentle = Joining.smooth(from, path.tangentAt(gap.fromMm()), to, path.tangentAt(gap.toMm()));
        return gentle.length() - gap.lengthMm();
    }
}
