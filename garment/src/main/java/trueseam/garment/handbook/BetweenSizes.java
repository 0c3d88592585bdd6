package trueseam.garment.handbook;

import java.util.Arrays;
import java.util.List;

/** What to do when a body lies between two sizes of the table. */
public enum BetweenSizes {
    /** The nearer of the two. */
    NEAREST(
            "nearest",
            "the nearer size, of two equally near the smaller",
            "the least has to be altered, and a smaller shoulder is altered more easily than a larger one",
            "common practice"),
    /** The smaller of the two. */
    SMALL_BONED(
            "small-boned",
            "the smaller of the two",
            "for small bones: narrow shoulders, a thin wrist; the frame stays and the girths are let out",
            "web:measure"),
    /** The larger of the two. */
    LARGE_BONED(
            "large-boned",
            "the larger of the two",
            "for large bones: broad shoulders, a thick wrist; the frame stays and the girths are taken in",
            "web:measure"),
    /** The larger of the two, unless the bust is very large for the rest. */
    NEXT_LARGER(
            "next-larger",
            "always the next larger",
            "it is easier to take in than to let out; but the smaller where the bust is very large for the rest, two inches or"
                    + " more above the upper chest, for it is altered afterwards",
            "WSC78");

    private final Answer answer;

    BetweenSizes(String word, String label, String reason, String source) {
        this.answer = new Answer(word, label, reason, source);
    }

    /** How the body's frame is told, so that the right answer is given. */
    private static final Question QUESTION = new Question(
            "size between two",
            "Which size where the body lies between two?",
            "It decides the shoulder, neck and armhole that everything else is altered around.",
            Arrays.stream(values()).map(BetweenSizes::answer).toList());

    /**
     * The question.
     *
     * @return with all answers
     */
    public static Question question() {
        return QUESTION;
    }

    /**
     * The way of a word.
     *
     * @param word as typed; empty for the usual
     * @return the way
     * @throws HandbookException if there is none of that word
     */
    public static BetweenSizes of(String word) {
        List<Answer> answers = QUESTION.answers();
        return values()[answers.indexOf(QUESTION.answer(word))];
    }

    /**
     * The answer.
     *
     * @return with reason and source
     */
    public Answer answer() {
        return answer;
    }

    /**
     * Which of two sizes is taken.
     *
     * @param belowMm how far the body is above the smaller size, mm
     * @param aboveMm how far the larger size is above the body, mm
     * @param bustVeryLarge whether the bust is two inches or more above the upper chest
     * @return true for the larger one
     */
    public boolean isLarger(double belowMm, double aboveMm, boolean bustVeryLarge) {
        return switch (this) {
            case NEAREST -> aboveMm < belowMm - 1e-9;
            case SMALL_BONED -> false;
            case LARGE_BONED -> true;
            case NEXT_LARGER -> !bustVeryLarge;
        };
    }
}
