package trueseam.garment.pattern;

import java.util.Locale;
import java.util.Optional;

/** What a pattern piece is, in the trade's words. */
public enum PieceKind {
    /** Front of a fitted top that ends at the waist. */
    BODICE_FRONT,
    /** Back of a fitted top that ends at the waist. */
    BODICE_BACK,
    /** One-piece sleeve with one seam under the arm. */
    SLEEVE,
    /** Front of a dress or tunic without a waist seam. */
    DRESS_FRONT,
    /** Back of a dress or tunic without a waist seam. */
    DRESS_BACK,
    /** Front of a skirt. */
    SKIRT_FRONT,
    /** Back of a skirt. */
    SKIRT_BACK,
    /** Front of one leg of trousers. */
    TROUSER_FRONT,
    /** Back of one leg of trousers. */
    TROUSER_BACK,
    /** Band sewn to a waist. */
    WAISTBAND,
    /** Band sewn to the lower edge of a sleeve. */
    CUFF,
    /** Collar or neckband, sewn to a neck line. */
    COLLAR,
    /** Anything else: it is kept and printed, and not altered. */
    OTHER;

    /**
     * The word shown and written.
     *
     * @return for example {@code bodice front}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Reads the word back.
     *
     * @param word as given by {@link #word}
     * @return the kind, or nothing if there is none of that word
     */
    public static Optional<PieceKind> ofWord(String word) {
        for (PieceKind kind : values()) {
            if (kind.word().equalsIgnoreCase(word.strip())) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether it covers the front of the body.
     *
     * @return true for fronts
     */
    public boolean isFront() {
        return this == BODICE_FRONT || this == DRESS_FRONT || this == SKIRT_FRONT || this == TROUSER_FRONT;
    }

    /**
     * Whether it covers the back of the body.
     *
     * @return true for backs
     */
    public boolean isBack() {
        return this == BODICE_BACK || this == DRESS_BACK || this == SKIRT_BACK || this == TROUSER_BACK;
    }

    /**
     * Whether it has a shoulder and an armhole.
     *
     * @return true for bodice and dress pieces
     */
    public boolean isUpper() {
        return this == BODICE_FRONT || this == BODICE_BACK || this == DRESS_FRONT || this == DRESS_BACK;
    }

    /**
     * Whether it is a front or back of trousers.
     *
     * @return true for trouser pieces
     */
    public boolean isTrouser() {
        return this == TROUSER_FRONT || this == TROUSER_BACK;
    }

    /**
     * Whether it is a front or back of a skirt.
     *
     * @return true for skirt pieces
     */
    public boolean isSkirt() {
        return this == SKIRT_FRONT || this == SKIRT_BACK;
    }

    /**
     * Whether it is a front or back of a dress.
     *
     * @return true for dress pieces
     */
    public boolean isDress() {
        return this == DRESS_FRONT || this == DRESS_BACK;
    }

    /**
     * Whether it is a band that is as long as what it is sewn to, and follows it.
     *
     * @return true for waistbands, cuffs, collars
     */
    public boolean isBand() {
        return this == WAISTBAND || this == CUFF || this == COLLAR;
    }
}
