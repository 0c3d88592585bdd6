package trueseam.output.figure;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Population;
import trueseam.garment.measure.Measure;
import trueseam.garment.table.ResourceTable;

/** A height, breadth or depth that the figure is drawn with; the numbers and their sources stand in {@code figure-sizes.csv}. */
enum FigureSize {
    STATURE,
    CHIN,
    NAPE,
    NECK_PIT,
    SHOULDER_POINT,
    ARMPIT,
    BUST,
    UNDER_BUST,
    WAIST,
    HIP,
    CROTCH,
    KNEE,
    CALF,
    ANKLE,
    HEAD_BREADTH,
    NECK_BREADTH,
    NECK_BASE_BREADTH,
    SHOULDER_BREADTH,
    SHOULDER_DROP,
    CREASE_BREADTH,
    ARMPIT_BREADTH,
    BUST_BREADTH,
    UNDER_BUST_BREADTH,
    WAIST_BREADTH,
    TOP_HIP_BREADTH,
    HIP_BREADTH,
    CHEST_DEPTH,
    WAIST_DEPTH,
    SEAT_DEPTH,
    BUST_POINTS,
    THIGH_BREADTH,
    KNEE_BREADTH,
    CALF_BREADTH,
    ANKLE_BREADTH,
    UPPER_ARM_BREADTH,
    ELBOW_BREADTH,
    FOREARM_BREADTH,
    WRIST_BREADTH,
    UPPER_ARM,
    FOREARM,
    HAND,
    FOOT_BREADTH;

    /** What a size goes with when its own measure is not known. */
    enum Sort {
        /** A height over the floor: with the stature. */
        HEIGHT,
        /** Bones: with the stature. */
        BONE,
        /** Breadths and depths of the trunk: with the girths of the trunk that are known. */
        TRUNK,
        /** Neck, arms and legs: half as much as the trunk. */
        LIMB
    }

    private static final Map<String, Map<String, String>> ROWS = rows();

    /** What a size is when nothing is known of the person. */
    double median(Population people) {
        return number(people, "");
    }

    /** What the tape reads on the person of the median size. */
    double tapeMedian(Population people) {
        return number(people, "tape ");
    }

    Sort sort() {
        return Sort.valueOf(cell("sort"));
    }

    /** The survey's column, or how it was found. */
    String source() {
        return cell("source");
    }

    Optional<Measure> measure() {
        String name = cell("measure");
        return name.isEmpty() ? Optional.empty() : Optional.of(Measure.valueOf(name));
    }

    private double number(Population people, String what) {
        return switch (people) {
            case WOMEN -> Double.parseDouble(cell(what + "women"));
            case MEN -> Double.parseDouble(cell(what + "men"));
            case ALL -> (number(Population.WOMEN, what) + number(Population.MEN, what)) / 2;
        };
    }

    private String cell(String column) {
        return ROWS.get(name()).get(column);
    }

    private static Map<String, Map<String, String>> rows() {
        Map<String, Map<String, String>> rows = new HashMap<>();
        ResourceTable.read(FigureSize.class, "figure-sizes.csv").forEach(row -> rows.put(row.get("name"), row));
        return Map.copyOf(rows);
    }
}
