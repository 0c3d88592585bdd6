package trueseam.output.figure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Population;
import trueseam.garment.measure.Measure;

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

    private static final Map<String, String[]> ROWS = rows();

    /** What a size is when nothing is known of the person. */
    double median(Population people) {
        return number(people, 2);
    }

    /** What the tape reads on the person of the median size. */
    double tapeMedian(Population people) {
        return number(people, 6);
    }

    Sort sort() {
        return Sort.valueOf(row()[1]);
    }

    /** The survey's column, or how it was found. */
    String source() {
        return row()[4];
    }

    Optional<Measure> measure() {
        String name = row()[5];
        return name.isEmpty() ? Optional.empty() : Optional.of(Measure.valueOf(name));
    }

    private double number(Population people, int column) {
        double women = Double.parseDouble(row()[column]);
        double men = Double.parseDouble(row()[column + 1]);
        return switch (people) {
            case WOMEN -> women;
            case MEN -> men;
            case ALL -> (women + men) / 2;
        };
    }

    private String[] row() {
        return ROWS.get(name());
    }

    private static Map<String, String[]> rows() {
        Map<String, String[]> rows = new HashMap<>();
        try (InputStream in = FigureSize.class.getResourceAsStream("figure-sizes.csv")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(";", -1))
                    // the drawn sizes stand before the source, the tape's after the measure
                    .forEach(cells -> rows.put(cells[0], cells));
        } catch (IOException e) {
            throw new UncheckedIOException("figure-sizes.csv cannot be read", e);
        }
        return Map.copyOf(rows);
    }
}
