package trueseam.drafting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * What a bodice or dress shall measure, ease included: halves of girths and widths, lengths as they are, and how they are
 * shared between front and back.
 *
 * <p>The side seam lies half an inch behind the middle of the armhole (common practice), where the armhole is what the half
 * bust leaves between the front and the back width.
 *
 * @param shell what is drafted
 * @param dress whether it goes on below the waist
 * @param bustDart whether the front is shaped by a dart in the side seam
 * @param frontBust centre to side at the bust level, front
 * @param backBust centre to side at the bust level, back
 * @param frontWaist centre to side along the waist, darts sewn, front
 * @param backWaist the same, back
 * @param frontHip centre to side at the hip level, front
 * @param backHip the same, back
 * @param frontAcross centre front to armhole
 * @param backAcross centre back to armhole
 * @param shoulder front shoulder seam
 * @param backShoulder back shoulder seam, dart sewn
 * @param slopeRad how far the shoulder slopes
 * @param neckWidth half the width of the neck
 * @param neckHalf half the neck line
 * @param backLength nape to waist
 * @param overBust neck point over the bust point to the waist, front
 * @param bustPointHeight neck point to bust point
 * @param bustPointX half the distance of the bust points
 * @param scyeDepth nape to the level of the underarm
 * @param hipDepth waist to hip level
 * @param length nape to hem
 */
record UpperPlan(
        String shell,
        boolean dress,
        boolean bustDart,
        double frontBust,
        double backBust,
        double frontWaist,
        double backWaist,
        double frontHip,
        double backHip,
        double frontAcross,
        double backAcross,
        double shoulder,
        double backShoulder,
        double slopeRad,
        double neckWidth,
        double neckHalf,
        double backLength,
        double overBust,
        double bustPointHeight,
        double bustPointX,
        double scyeDepth,
        double hipDepth,
        double length) {

    /** Common practice: the side seam lies so far behind the middle of the armhole. */
    private static final double SIDE_BEHIND_MM = 12.7;

    /** Below this the sleeve cannot be set: no curve turns under the arm in less. */
    private static final double LEAST_ARMHOLE_MM = 16;

    /** Steeper than 55 degrees (0.82 of the length) is no shoulder. */
    private static final double STEEPEST = 0.82;

    /** Half the width of the neck as a share of the neck base: common practice, rather more than a sixth. */
    private static final double NECK_WIDTH_SHARE = 0.19;

    static UpperPlan of(String shell, GarmentKind kind, DraftFigure figure, DraftEase ease) {
        Sum sum = new Sum(kind, figure, ease);
        double bust = sum.of(figure.trunkGirth()) / 2;
        double frontAcross = sum.of(Measure.ACROSS_FRONT_WIDTH) / 2;
        double backAcross = sum.of(Measure.ACROSS_BACK_WIDTH) / 2;
        double armhole = bust - frontAcross - backAcross;
        if (armhole < LEAST_ARMHOLE_MM) {
            throw new DraftException(
                    shell,
                    figure.trunkGirth(),
                    armhole,
                    LEAST_ARMHOLE_MM,
                    "front and back width take so much of the girth that too little is left for the armhole; measure the"
                            + " widths again");
        }
        double behind = Math.min(SIDE_BEHIND_MM, armhole / 8);
        double frontBust = frontAcross + armhole / 2 + behind;
        double backBust = backAcross + armhole / 2 - behind;
        double off = (frontBust - backBust) / 2;
        double waist = sum.of(Measure.WAIST_GIRTH) / 4;
        double hip = sum.of(Measure.HIP_GIRTH) / 4;
        double shoulder = sum.of(Measure.SHOULDER_LENGTH);
        double drop = sum.of(Measure.SHOULDER_SLOPE);
        if (drop > STEEPEST * shoulder) {
            throw new DraftException(
                    shell,
                    Measure.SHOULDER_SLOPE,
                    drop,
                    STEEPEST * shoulder,
                    "so steep a slope for so short a shoulder is not possible; measure both again");
        }
        return new UpperPlan(
                shell,
                kind == GarmentKind.DRESS,
                figure.build() == Build.WOMEN,
                frontBust,
                backBust,
                waist + off,
                waist - off,
                hip + off,
                hip - off,
                frontAcross,
                backAcross,
                shoulder,
                shoulder + ease.backShoulderMm(),
                Math.asin(drop / shoulder),
                NECK_WIDTH_SHARE * figure.mm(Measure.NECK_BASE_GIRTH),
                sum.of(Measure.NECK_BASE_GIRTH) / 2,
                sum.of(Measure.BACK_WAIST_LENGTH),
                sum.of(Measure.FRONT_WAIST_LENGTH_OVER_BUST),
                sum.of(Measure.BUST_POINT_HEIGHT),
                sum.of(Measure.BUST_POINT_WIDTH) / 2,
                sum.of(Measure.SCYE_DEPTH),
                sum.of(Measure.WAIST_TO_HIP),
                sum.of(Measure.DRESS_LENGTH));
    }

    /** The same with the side seam moved, forward by so much on either side. */
    UpperPlan withSideForward(double mm) {
        return withWidths(
                frontBust - mm,
                backBust + mm,
                frontWaist - mm,
                backWaist + mm,
                frontHip - mm,
                backHip + mm,
                frontAcross);
    }

    /** The same with other widths of the front, half each: bust and across. */
    UpperPlan withFront(double bust, double across) {
        return withWidths(bust, backBust, frontWaist, backWaist, frontHip, backHip, across);
    }

    private UpperPlan withWidths(
            double frontBustMm,
            double backBustMm,
            double frontWaistMm,
            double backWaistMm,
            double frontHipMm,
            double backHipMm,
            double frontAcrossMm) {
        return new UpperPlan(
                shell,
                dress,
                bustDart,
                frontBustMm,
                backBustMm,
                frontWaistMm,
                backWaistMm,
                frontHipMm,
                backHipMm,
                frontAcrossMm,
                backAcross,
                shoulder,
                backShoulder,
                slopeRad,
                neckWidth,
                neckHalf,
                backLength,
                overBust,
                bustPointHeight,
                bustPointX,
                scyeDepth,
                hipDepth,
                length);
    }

    /** Figure and ease of one measure. */
    record Sum(GarmentKind kind, DraftFigure figure, DraftEase ease) {

        double of(Measure measure) {
            return figure.mm(measure) + ease.mm(measure, kind, figure);
        }

        /** The ease of some measures, as a pattern states it. */
        Map<Measure, Double> eases(List<Measure> measures) {
            Map<Measure, Double> stated = new EnumMap<>(Measure.class);
            for (Measure measure : measures) {
                stated.put(measure, ease.mm(measure, kind, figure));
            }
            return stated;
        }
    }
}
