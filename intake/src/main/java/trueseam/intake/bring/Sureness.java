package trueseam.intake.bring;

import java.util.Locale;

/** How sure a proposal is, in words. */
public enum Sureness {
    /** Somebody said so. */
    SAID("said"),
    /** Nothing else is near. */
    SURE("sure"),
    /** It speaks more for it than for anything else. */
    LIKELY("likely"),
    /** It may as well be something else. */
    CHECK("please check");

    private static final double SURE_FROM = 0.9;
    private static final double LIKELY_FROM = 0.6;

    private final String word;

    Sureness(String word) {
        this.word = word;
    }

    /**
     * The words of a confidence.
     *
     * @param confidence from 0 to 1
     * @param said whether somebody said so
     * @return how sure that is: sure from 0.9 on, likely from 0.6 on (our own bounds)
     */
    public static Sureness of(double confidence, boolean said) {
        if (said) {
            return SAID;
        }
        return confidence >= SURE_FROM ? SURE : confidence >= LIKELY_FROM ? LIKELY : CHECK;
    }

    /**
     * What is shown.
     *
     * @return a word or two
     */
    public String word() {
        return word;
    }

    /**
     * What is shown with its number.
     *
     * @param confidence from 0 to 1
     * @param said whether somebody said so
     * @return such as {@code likely, 83 in 100}
     */
    public static String words(double confidence, boolean said) {
        Sureness sure = of(confidence, said);
        return sure == SAID || confidence == 0
                ? sure.word
                : String.format(Locale.ROOT, "%s, %.0f in 100", sure.word, 100 * confidence);
    }
}
