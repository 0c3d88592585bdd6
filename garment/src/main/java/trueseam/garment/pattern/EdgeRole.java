package trueseam.garment.pattern;

import java.util.Locale;
import java.util.Optional;

/** What an edge of a piece is, in the trade's words. */
public enum EdgeRole {
    /** Centre front or centre back, a fold or a seam. */
    CENTRE,
    /** Neck line. */
    NECK,
    /** Shoulder seam. */
    SHOULDER,
    /** Armhole, from the underarm point to the shoulder point. */
    ARMHOLE,
    /** Side seam; of trousers the outseam. */
    SIDE,
    /** Waist line. */
    WAIST,
    /** Lower edge. */
    HEM,
    /** Half of a sleeve cap, from the underarm to the crown. */
    CAP,
    /** Seam of a sleeve under the arm. */
    UNDERARM,
    /** Lower edge of a sleeve. */
    WRIST,
    /** Inner leg seam. */
    INSEAM,
    /** Crotch seam, from the waist at the centre to the crotch point. */
    CROTCH,
    /** Seam from top to bottom between two panels, gores or sleeve pieces, other than the side seam. */
    PANEL,
    /** Seam across the back between yoke and lower back. */
    YOKE,
    /** Seam of a raglan, on front, back and sleeve alike, from the underarm to the neck. */
    RAGLAN,
    /** Seam over the arm of a sleeve that is cut in one with front or back, from the wrist to the shoulder point. */
    OVERARM,
    /** Any other. */
    OTHER;

    /**
     * The word shown and written.
     *
     * @return for example {@code armhole}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the word back.
     *
     * @param word as given by {@link #word}
     * @return the role, or nothing if there is none of that word
     */
    public static Optional<EdgeRole> ofWord(String word) {
        for (EdgeRole role : values()) {
            if (role.word().equalsIgnoreCase(word.strip())) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
