package trueseam.fitting.trial;

import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Variant;

/**
 * What is done about a cause: an alteration of the repertoire, one way of doing it, and whether its amount is a plus or a minus.
 *
 * @param entry the alteration
 * @param variant the way of doing it
 * @param isPlus whether its amount is a plus
 */
public record Remedy(Entry entry, Variant variant, boolean isPlus) {

    // What an entry cannot do remedies nothing.
    public Remedy {
        if (!isPlus && !entry.isBothWays()) {
            throw new IllegalArgumentException("\"" + entry.name() + "\" takes no minus");
        }
    }

    /**
     * What it does.
     *
     * @return in the words of the entry, for example {@code makes the hip larger}
     */
    public String does() {
        return isPlus ? entry.plus() : entry.minus();
    }

    /**
     * Its name, with the way of doing it where that is not the usual one.
     *
     * @return for example {@code back crotch length (wedge)}
     */
    public String words() {
        return variant.equals(entry.variants().get(0)) ? entry.name() : entry.name() + " (" + variant.name() + ")";
    }

    /**
     * The alteration's amount with its sign.
     *
     * @param mm so much, mm, not negative
     * @return as the entry counts it, mm
     */
    public double signed(double mm) {
        return isPlus ? mm : -mm;
    }
}
