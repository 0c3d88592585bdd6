package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.compare.Need;
import trueseam.garment.finding.Finding;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * What the changes moved besides what they were for: an armhole pivoted out about the shoulder point takes the across front
 * and across back widths with it, a wider sleeve its elbow.
 */
final class AlsoMoved {

    /** A smaller change of a width or short length is left by the finer rule too: 1/8 in, 3 mm (common practice). */
    private static final double SAY_FROM_MM = 3;

    private static final Set<Measure> WATCHED = EnumSet.of(
            Measure.ACROSS_FRONT_WIDTH,
            Measure.ACROSS_BACK_WIDTH,
            Measure.SHOULDER_LENGTH,
            Measure.NECK_BASE_GIRTH,
            Measure.ELBOW_GIRTH,
            Measure.THIGH_GIRTH,
            Measure.KNEE_GIRTH);

    private AlsoMoved() {}

    /**
     * @param needs the chart as it was worked
     * @param before the flat pattern before, mm
     * @param altered the pattern after
     * @param show how lengths are written
     * @return a note for each watched measure that moved without being altered
     */
    static List<Finding> findings(List<Need> needs, Map<Measure, Double> before, Pattern altered, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        for (Measure measure : WATCHED) {
            Optional<FlatMeasure> now = FlatPattern.measure(altered, measure);
            if (before.containsKey(measure) && now.isPresent() && !isAltered(needs, measure)) {
                double moved = now.get().mm() - before.get(measure);
                if (Math.abs(moved) >= SAY_FROM_MM) {
                    findings.add(Finding.note(
                            measure.term(), sentence(measure, moved, now.get().mm(), show)));
                }
            }
        }
        return findings;
    }

    private static boolean isAltered(List<Need> needs, Measure measure) {
        return needs.stream()
                .anyMatch(need -> need.measure() == measure && need.decision().isAltered());
    }

    private static String sentence(Measure measure, double moved, double nowMm, LengthFormat show) {
        return "The other changes move it by " + show.showSigned(moved) + " on the flat pattern, to " + show.show(nowMm)
                + why(measure) + "; look at it on the trial garment.";
    }

    private static String why(Measure measure) {
        return switch (measure) {
            case ACROSS_FRONT_WIDTH, ACROSS_BACK_WIDTH ->
                ", because the armhole turns about the shoulder point as a whole";
            default -> "";
        };
    }
}
