package trueseam.output.figure;

/** The points and levels of the body that a tape starts from, ends at or runs over. */
public enum BodyPoint {
    /** Top of the head. */
    CROWN("top of the head"),
    /** Lowest neck bone. */
    NAPE("nape bone"),
    /** Between the inner ends of the collar bones. */
    NECK_PIT("pit of the neck"),
    /** Where the neck base line crosses the ridge of the shoulder. */
    NECK_SIDE("neck side point"),
    /** Outer end of the shoulder bone. */
    SHOULDER("shoulder point"),
    /** Middle of the shoulder line. */
    MID_SHOULDER("middle of the shoulder"),
    /** Where the arm parts from the body, in front or at the back. */
    CREASE("crease of the arm"),
    /** The hollow under the arm. */
    ARMPIT("armpit"),
    /** Most forward point of the breast. */
    BUST_POINT("bust point"),
    /** The tied tape at the waist. */
    WAIST("waist"),
    /** Fullest part of the seat. */
    HIP("hip level"),
    /** The seat of a hard flat chair. */
    SEAT("seat of the chair"),
    /** Lowest point of the trunk, between the legs. */
    CROTCH("crotch point"),
    /** Tip of the bent elbow. */
    ELBOW("elbow"),
    /** Wrist bone on the side of the little finger. */
    WRIST("wrist bone"),
    /** Middle of the kneecap. */
    KNEE("middle of the kneecap"),
    /** Bones of the ankle. */
    ANKLE("ankle bones"),
    /** Where the finished hem shall be. */
    HEM("hem"),
    /** The floor. */
    FLOOR("floor");

    private final String words;

    BodyPoint(String words) {
        this.words = words;
    }

    /**
     * What a dressmaker calls it.
     *
     * @return the words, in lower case
     */
    public String words() {
        return words;
    }
}
