package trueseam.garment.measure;

import static trueseam.garment.measure.Measure.*;

import java.util.List;

/**
 * The measures in the order in which a body is measured: from the top down, first all round, then across and along, so that the
 * person turns once and each mark on the body (waist tape, neck side points, armpit level) is used while it lies right.
 *
 * <p>Source: common practice.
 */
public enum MeasuringRound {
    /** Height, and the neck with the chain that marks the neck side points. */
    HEIGHT_AND_NECK("Height and neck", STATURE, NECK_GIRTH, NECK_BASE_GIRTH),
    /** Level girths of the trunk, from the armpits down. */
    ROUND_THE_BODY(
            "Round the body",
            UPPER_CHEST_GIRTH,
            BUST_GIRTH,
            CHEST_GIRTH,
            UNDER_BUST_GIRTH,
            WAIST_GIRTH,
            TOP_HIP_GIRTH,
            HIP_GIRTH),
    /** Shoulder, and across and down the front. */
    SHOULDER_AND_FRONT(
            "Shoulder and front",
            SHOULDER_LENGTH,
            SHOULDER_SLOPE,
            ACROSS_FRONT_WIDTH,
            BUST_POINT_HEIGHT,
            BUST_POINT_WIDTH,
            FRONT_WAIST_LENGTH_OVER_BUST,
            FRONT_WAIST_LENGTH),
    /** Across and down the back. */
    BACK("Back", ACROSS_BACK_SHOULDER_WIDTH, ACROSS_BACK_WIDTH, SCYE_DEPTH, BACK_WAIST_LENGTH),
    /** Armhole and arm. */
    ARM(
            "Arm",
            ARMSCYE_GIRTH,
            NAPE_TO_WRIST_LENGTH,
            ARM_LENGTH,
            UPPER_ARM_LENGTH,
            UPPER_ARM_GIRTH,
            ELBOW_GIRTH,
            WRIST_GIRTH),
    /** From the waist down to and between the legs. */
    WAIST_TO_CROTCH(
            "Waist to crotch",
            WAIST_TO_HIP,
            BODY_RISE,
            TOTAL_CROTCH_LENGTH,
            FRONT_CROTCH_LENGTH,
            BACK_CROTCH_LENGTH,
            TRUNK_CIRCUMFERENCE),
    /** Lengths and girths of the leg. */
    LEG("Leg", OUTSIDE_LEG_LENGTH, INSIDE_LEG_LENGTH, KNEE_HEIGHT, THIGH_GIRTH, KNEE_GIRTH, CALF_GIRTH, ANKLE_GIRTH),
    /** Finished lengths, as the wearer chooses them. */
    CHOSEN_LENGTHS("Lengths that she chooses", SKIRT_LENGTH, DRESS_LENGTH, TROUSER_LENGTH);

    private final String title;
    private final List<Measure> measures;

    MeasuringRound(String title, Measure... measures) {
        this.title = title;
        this.measures = List.of(measures);
    }

    /**
     * What it is called over its fields.
     *
     * @return a few words
     */
    public String title() {
        return title;
    }

    /**
     * Its measures.
     *
     * @return in the order in which they are taken
     */
    public List<Measure> measures() {
        return measures;
    }
}
