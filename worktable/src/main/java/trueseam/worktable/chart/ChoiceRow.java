package trueseam.worktable.chart;

import java.util.List;
import java.util.Map;

/**
 * A general choice.
 *
 * @param name its name in the project
 * @param label the question
 * @param why what depends on it
 * @param options the answers; the first one is the usual
 * @param chosen the word of the answer that counts
 */
public record ChoiceRow(String name, String label, String why, List<Option> options, String chosen) {

    /**
     * An answer.
     *
     * @param word what is kept; empty for the usual
     * @param label what is shown
     */
    public record Option(String word, String label) {}

    static List<ChoiceRow> all(Map<String, String> words) {
        return List.of(
                row(
                        words,
                        "rule",
                        "Which differences are left alone?",
                        "Cloth gives a little, and nobody sews to the hair.",
                        option("", "half an inch or less"),
                        option("fine", "a quarter inch or less, short lengths an eighth")),
                row(
                        words,
                        "style",
                        "How does the garment sit?",
                        "With the finer rule, a looser garment forgives more.",
                        option("", "fitted"),
                        option("semi_fitted", "semi-fitted"),
                        option("loose", "loose")),
                row(
                        words,
                        "by",
                        "Compare the body with what?",
                        "The table's ease is in the paper already; the flat pattern needs ease added.",
                        option("", "the table where it has the measure, else the flat pattern"),
                        option("table", "the size table"),
                        option("flat", "the flat pattern, with ease")),
                row(
                        words,
                        "hem",
                        "When the hip changes, the hem",
                        "Carried out keeps the shape of the skirt; let back keeps the old sweep.",
                        option("", "is carried out with it"),
                        option("let_back", "goes back to the old sweep")),
                row(
                        words,
                        "cap",
                        "When the upper arm changes, the sleeve cap keeps",
                        "Handbooks differ: the same seam lowers the cap; the same height gives more to ease in.",
                        option("", "its seam"),
                        option("keep_height", "its height")),
                row(
                        words,
                        "sleeve",
                        "The change of the upper arm reaches",
                        "A thick arm often has an ordinary wrist.",
                        option("", "the upper arm alone"),
                        option("whole", "down to the wrist")),
                row(
                        words,
                        "seams",
                        "In panels and gores, girths are shared over",
                        "All seams change each one least.",
                        option("", "all seams"),
                        option("side_panels", "the side panels"),
                        option("side", "the side seams")),
                row(
                        words,
                        "sleeve_seams",
                        "A two-piece sleeve changes at",
                        "The front seam is often left for looks.",
                        option("", "both seams"),
                        option("back", "the back seam")));
    }

    private static ChoiceRow row(Map<String, String> words, String name, String label, String why, Option... options) {
        return new ChoiceRow(name, label, why, List.of(options), words.getOrDefault(name, ""));
    }

    private static Option option(String word, String label) {
        return new Option(word, label);
    }
}
