package trueseam.fitting.trial;

import java.util.Locale;
import trueseam.fitting.repertoire.Family;

/** A place on the trial garment where folds are seen. */
public enum GarmentPlace {
    /** The neck line in front. */
    NECK_FRONT(Family.BODICE, View.FRONT, "the neck line in front"),
    /** The neck line behind. */
    NECK_BACK(Family.BODICE, View.BACK, "the neck line behind"),
    /** The collar. */
    COLLAR(Family.BODICE, View.FRONT, "the collar"),
    /** The shoulder seam. */
    SHOULDER(Family.BODICE, View.FRONT, "the shoulder seam"),
    /** Above the bust. */
    UPPER_CHEST(Family.BODICE, View.FRONT, "the upper chest, above the bust"),
    /** The armhole in front. */
    ARMHOLE_FRONT(Family.BODICE, View.FRONT, "the armhole in front"),
    /** The bust. */
    BUST(Family.BODICE, View.FRONT, "the bust"),
    /** Below the bust. */
    BELOW_BUST(Family.BODICE, View.FRONT, "the front between bust and waist"),
    /** The waist in front. */
    WAIST_FRONT(Family.BODICE, View.FRONT, "the waist in front"),
    /** The side seam above the waist. */
    SIDE_SEAM(Family.BODICE, View.FRONT, "the side seam between armhole and waist"),
    /** Between neck and shoulder blades. */
    UPPER_BACK(Family.BODICE, View.BACK, "the back between neck and shoulder blades"),
    /** Between the armholes behind. */
    SHOULDER_BLADES(Family.BODICE, View.BACK, "the back between the armholes"),
    /** The armhole behind. */
    ARMHOLE_BACK(Family.BODICE, View.BACK, "the armhole behind"),
    /** Between shoulder blades and waist. */
    MIDDLE_BACK(Family.BODICE, View.BACK, "the back between shoulder blades and waist"),
    /** The waist behind. */
    WAIST_BACK(Family.BODICE, View.BACK, "the waist behind"),
    /** The lower edge of the back. */
    BACK_LOWER_EDGE(Family.BODICE, View.BACK, "the lower edge or hem of the back"),
    /** The sleeve cap. */
    CAP(Family.SLEEVE, View.FRONT, "the sleeve cap"),
    /** The seam of the sleeve cap. */
    CAP_SEAM(Family.SLEEVE, View.FRONT, "the seam of the sleeve cap"),
    /** The upper arm. */
    UPPER_ARM(Family.SLEEVE, View.FRONT, "the sleeve at the upper arm"),
    /** The elbow. */
    ELBOW(Family.SLEEVE, View.BACK, "the sleeve at the elbow"),
    /** The forearm. */
    FOREARM(Family.SLEEVE, View.FRONT, "the sleeve at the forearm"),
    /** The wrist. */
    WRIST(Family.SLEEVE, View.FRONT, "the sleeve at the wrist"),
    /** The band of a skirt. */
    SKIRT_BAND(Family.SKIRT, View.FRONT, "the waist or band of the skirt"),
    /** Below the band behind. */
    SKIRT_BAND_BACK(Family.SKIRT, View.BACK, "the skirt below the band behind"),
    /** Over the abdomen. */
    ABDOMEN(Family.SKIRT, View.FRONT, "the skirt over the abdomen"),
    /** The hip. */
    HIP(Family.SKIRT, View.FRONT, "the hip of the skirt"),
    /** The side seam of a skirt. */
    SKIRT_SIDE(Family.SKIRT, View.FRONT, "the side seam of the skirt"),
    /** The seat of a skirt. */
    SEAT_OF_SKIRT(Family.SKIRT, View.BACK, "the seat of the skirt"),
    /** The hem of a skirt. */
    SKIRT_HEM(Family.SKIRT, View.FRONT, "the hem of the skirt"),
    /** The waist of trousers. */
    TROUSER_WAIST(Family.TROUSERS, View.BACK, "the waist of the trousers"),
    /** Over the abdomen. */
    TROUSER_ABDOMEN(Family.TROUSERS, View.FRONT, "the trousers over the abdomen"),
    /** The hip and outseam of trousers. */
    TROUSER_HIP(Family.TROUSERS, View.FRONT, "the hip and the outseam of the trousers"),
    /** The fork in front. */
    FORK_FRONT(Family.TROUSERS, View.FRONT, "the fork in front"),
    /** The fork behind. */
    FORK_BACK(Family.TROUSERS, View.BACK, "the fork behind"),
    /** The seat of trousers. */
    SEAT(Family.TROUSERS, View.BACK, "the seat of the trousers"),
    /** The thigh. */
    THIGH(Family.TROUSERS, View.FRONT, "the thigh"),
    /** The knee. */
    KNEE(Family.TROUSERS, View.FRONT, "the knee"),
    /** Between knee and hem. */
    LOWER_LEG(Family.TROUSERS, View.FRONT, "the leg below the knee"),
    /** The hem of the legs. */
    TROUSER_HEM(Family.TROUSERS, View.FRONT, "the hem of the legs");

    /** From where it is seen best. */
    public enum View {
        /** From the front. */
        FRONT,
        /** From behind. */
        BACK
    }

    private final Family family;
    private final View view;
    private final String words;

    GarmentPlace(Family family, View view, String words) {
        this.family = family;
        this.view = view;
        this.words = words;
    }

    /**
     * The part of the garment.
     *
     * @return bodice, sleeve, skirt or trousers
     */
    public Family family() {
        return family;
    }

    /**
     * From where it is seen best.
     *
     * @return front or back
     */
    public View view() {
        return view;
    }

    /**
     * What it is called.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * What an answer calls it.
     *
     * @return for example {@code waist-back}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
