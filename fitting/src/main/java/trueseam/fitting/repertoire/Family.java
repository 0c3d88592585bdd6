package trueseam.fitting.repertoire;

import java.util.Locale;

/** The part of the wardrobe that an alteration belongs to. */
public enum Family {
    /** Bodices, blouses and the tops of dresses. */
    BODICE,
    /** Sleeves. */
    SLEEVE,
    /** Skirts and the skirts of dresses. */
    SKIRT,
    /** Trousers. */
    TROUSERS;

    /**
     * The word for it.
     *
     * @return for example {@code bodice}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
