package trueseam.fitting.trial;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the number that was written down measures. A fold lies double: 1/4 in deep, it takes up 1/2 in. */
public enum PinnedAs {
    /** The depth of a pinned fold, from its edge to the pins. */
    FOLD_DEPTH("fold depth", 2, "how deep the pinned fold is", Handling.TAKE),
    /** What a fold or a seam takes up in all, measured flat between marks on both sides of the pins. */
    TAKEN_UP("taken up", 1, "what it takes up in all, measured flat", Handling.TAKE),
    /** How wide a slash or a seam opened. */
    OPENED("opened", 1, "how wide the slash or the seam opened", Handling.GIVE),
    /** By how much a seam was let out or taken in on each of its two edges. */
    EACH_EDGE("each edge", 2, "by how much each of the two edges of the seam was moved", Handling.GIVE, Handling.TAKE),
    /** How far the new mark is from the old line or point. */
    MOVED("moved", 1, "how far the new mark is from the old", Handling.MOVE, Handling.GIVE, Handling.TAKE);

    private final String word;
    private final int times;
    private final String words;
    private final List<Handling> handlings;

    PinnedAs(String word, int times, String words, Handling... handlings) {
        this.word = word;
        this.times = times;
        this.words = words;
        this.handlings = List.of(handlings);
    }

    /**
     * What a file calls it.
     *
     * @return for example {@code fold depth}
     */
    public String word() {
        return word;
    }

    /**
     * What it measures.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }

    /**
     * What the pins take up, or let out, at that place.
     *
     * @param readMm what was written down, mm
     * @return mm
     */
    public double takenMm(double readMm) {
        return times * readMm;
    }

    /**
     * Whether a change that is made so can be measured so.
     *
     * @param handling what is done with the cloth
     * @param counting how the change counts
     * @return true if it can; a new mark says nothing where both edges of a seam, or both halves, share
     */
    public boolean measures(Handling handling, Counting counting) {
        boolean shared = counting == Counting.ROUND || counting == Counting.SEAM || counting == Counting.HALF;
        return handlings.contains(handling) && !(this == MOVED && handling != Handling.MOVE && shared);
    }

    /**
     * Reads the word back.
     *
     * @param text as a user writes it
     * @return what it measures, or nothing
     */
    public static Optional<PinnedAs> ofWord(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        return List.of(values()).stream().filter(one -> one.word.equals(wanted)).findFirst();
    }
}
