package trueseam.garment.measure;

/**
 * A measure of a body: what it is called, how the tape runs, and how exactly it can be taken.
 *
 * <p>The first forty-one are taken on the body; the last three are finished lengths that the wearer chooses ({@link
 * #isChosen}). Of a {@linkplain #sidesMayDiffer sided} measure, left and right are measured apart where they differ.
 */
public enum Measure {
    /** Floor to the top of the head. */
    STATURE,
    /** Round the fullest part of the bust. */
    BUST_GIRTH,
    /** Round above the fullness of the bust; the frame in a girth. */
    UPPER_CHEST_GIRTH,
    /** Round close under the breasts. */
    UNDER_BUST_GIRTH,
    /** Round the fullest chest of a man. */
    CHEST_GIRTH,
    /** Arm crease to arm crease across the upper chest; the measure of the frame. */
    ACROSS_FRONT_WIDTH,
    /** Arm crease to arm crease across the back. */
    ACROSS_BACK_WIDTH,
    /** Shoulder point to shoulder point over the nape. */
    ACROSS_BACK_SHOULDER_WIDTH,
    /** Neck side point to shoulder point. */
    SHOULDER_LENGTH,
    /** How far the shoulder point lies below the neck side point, as a drop. */
    SHOULDER_SLOPE,
    /** Round the neck below the voice box. */
    NECK_GIRTH,
    /** Round the base of the neck, where a plain neckline sits. */
    NECK_BASE_GIRTH,
    /** Nape to waist down the spine. */
    BACK_WAIST_LENGTH,
    /** Pit of the neck to waist down the centre front. */
    FRONT_WAIST_LENGTH,
    /** Neck side point over the bust point to the waist. */
    FRONT_WAIST_LENGTH_OVER_BUST,
    /** Neck side point to bust point. */
    BUST_POINT_HEIGHT,
    /** Bust point to bust point. */
    BUST_POINT_WIDTH,
    /** Nape down the spine to the level of the armpits. */
    SCYE_DEPTH,
    /** Round the arm joint. */
    ARMSCYE_GIRTH,
    /** Round the waist where a tied tape settles. */
    WAIST_GIRTH,
    /** Round the top of the hip bones, over the abdomen. */
    TOP_HIP_GIRTH,
    /** Round the fullest part of the seat. */
    HIP_GIRTH,
    /** Waist down the side to the hip level. */
    WAIST_TO_HIP,
    /** Nape over the shoulder point and the elbow to the wrist bone. */
    NAPE_TO_WRIST_LENGTH,
    /** Shoulder point by the bent elbow to the wrist bone. */
    ARM_LENGTH,
    /** Shoulder point to the tip of the elbow. */
    UPPER_ARM_LENGTH,
    /** Round the fullest part of the hanging upper arm. */
    UPPER_ARM_GIRTH,
    /** Round the bent elbow over its tip. */
    ELBOW_GIRTH,
    /** Round the wrist over the wrist bone. */
    WRIST_GIRTH,
    /** Waist to the seat at the side, sitting. */
    BODY_RISE,
    /** Front waist between the legs to back waist. */
    TOTAL_CROTCH_LENGTH,
    /** The front part of the total crotch length. */
    FRONT_CROTCH_LENGTH,
    /** The back part of the total crotch length. */
    BACK_CROTCH_LENGTH,
    /** Round the trunk over one shoulder and between the legs. */
    TRUNK_CIRCUMFERENCE,
    /** Round the fullest thigh. */
    THIGH_GIRTH,
    /** Round the knee over the kneecap. */
    KNEE_GIRTH,
    /** Round the fullest calf. */
    CALF_GIRTH,
    /** Round the ankle over its bones. */
    ANKLE_GIRTH,
    /** Crotch to the floor, down the inside of the leg. */
    INSIDE_LEG_LENGTH,
    /** Waist to the floor at the side, over the hip curve. */
    OUTSIDE_LEG_LENGTH,
    /** Floor to the middle of the kneecap. */
    KNEE_HEIGHT,
    /** Waist to the finished hem of a skirt, as the wearer chooses it. */
    SKIRT_LENGTH,
    /** Nape to the finished hem of a dress or top, as the wearer chooses it. */
    DRESS_LENGTH,
    /** Waist to the finished hem of trousers, as the wearer chooses it. */
    TROUSER_LENGTH;

    private final String term;
    private final String workroomLabel;
    private final String tapePath;
    private final MeasureKind kind;
    private final ErrorGroup errorGroup;
    private final boolean sided;
    private final boolean chosen;
    private final String termConfirmedBy;

    Measure() {
        Definition definition = Definition.of(name());
        term = definition.term();
        workroomLabel = definition.label();
        tapePath = definition.tapePath();
        kind = definition.kind();
        errorGroup = definition.errorGroup();
        sided = definition.sidesMayDiffer();
        chosen = definition.chosen();
        termConfirmedBy = definition.confirmedBy();
    }

    /**
     * Finds a measure by its standard term or its workroom label; case, blanks and marks do not matter.
     *
     * @param name what it is called, such as {@code bust girth}, {@code Full Bust} or {@code BUST_GIRTH}
     * @return the measure
     * @throws UnknownMeasureException naming the most alike measure, when none is called that
     */
    public static Measure named(String name) {
        return MeasureNames.find(name).orElseThrow(() -> new UnknownMeasureException(name, MeasureNames.nearest(name)));
    }

    /**
     * The standard's term where one is confirmed, else the trade's: its identity in files.
     *
     * @return the term, in lower case
     */
    public String term() {
        return term;
    }

    /**
     * What it is called in the workroom.
     *
     * @return the label, in lower case
     */
    public String workroomLabel() {
        return workroomLabel;
    }

    /**
     * How it is taken.
     *
     * @return one sentence for the person with the tape
     */
    public String tapePath() {
        return tapePath;
    }

    /**
     * Whether it goes round, across, along or down.
     *
     * @return the kind
     */
    public MeasureKind kind() {
        return kind;
    }

    /**
     * Whether left and right are two measures where they differ.
     *
     * @return true for shoulders, arms, legs and hips' sides
     */
    public boolean sidesMayDiffer() {
        return sided;
    }

    /**
     * Whether it is a finished length that the wearer chooses, rather than one that the body has.
     *
     * @return true for the lengths to a hem
     */
    public boolean isChosen() {
        return chosen;
    }

    /**
     * The group of ISO 20685 that states how exactly it can be measured.
     *
     * @return the group
     */
    public ErrorGroup errorGroup() {
        return errorGroup;
    }

    /**
     * How far two skilled readings may differ.
     *
     * @return mm
     */
    public double allowableErrorMm() {
        return errorGroup.allowedMm();
    }

    /**
     * What confirms the term.
     *
     * @return the standard and how much of it was read, or {@code common practice}
     */
    public String termConfirmedBy() {
        return termConfirmedBy;
    }
}
