package trueseam.intake.said;

import java.util.Optional;

/** Which of the drawn lines is taken for what. */
public enum LineTaken {
    /** The outermost line is the stitching line. */
    STITCHING("stitching", "the outer line is the stitching line"),
    /** The outermost line is the cutting line; the stitching line is put inside it. */
    CUTTING("cutting", "the outer line is the cutting line"),
    /** The second line, inside the outermost, is the stitching line; the outermost is the cutting line. */
    INNER("inner", "the inner line is the stitching line");

    private final String word;
    private final String meaning;

    LineTaken(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    /**
     * The word that is written.
     *
     * @return one word
     */
    public String word() {
        return word;
    }

    /**
     * What it means.
     *
     * @return a few words
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Reads the word back.
     *
     * @param word as given by {@link #word}
     * @return which, or nothing if there is none of that word
     */
    public static Optional<LineTaken> ofWord(String word) {
        for (LineTaken line : values()) {
            if (line.word.equalsIgnoreCase(word.strip())) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }
}
