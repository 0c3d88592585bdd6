package trueseam.worktable.page;

import java.util.Locale;

/** The screens, in the order of the job. */
public enum Step {
    /** Measures of the person. */
    PERSON("Person", "who, and her measures"),
    /** The pattern and its size. */
    PATTERN("Pattern", "which, and in what size"),
    /** The fitting chart. */
    CHART("Chart", "what differs, and what is done"),
    /** The pieces. */
    TABLE("Table", "the pieces, as they change"),
    /** Girths by height. */
    EASE("Ease", "where it will be tight"),
    /** The trial garment. */
    TRIAL("Trial", "what the trial garment tells"),
    /** The cloth, and the pieces on it. */
    CLOTH("Cloth", "how much, and how the pieces lie"),
    /** Printing. */
    PRINT("Print", "pages, strips, step sheets");

    private final String label;
    private final String about;

    Step(String label, String about) {
        this.label = label;
        this.about = about;
    }

    /**
     * What it is called.
     *
     * @return one word
     */
    public String label() {
        return label;
    }

    /**
     * What it is about.
     *
     * @return a few words
     */
    public String about() {
        return about;
    }

    /**
     * Its word in an address.
     *
     * @return the word
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
