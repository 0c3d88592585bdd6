package trueseam.worktable.print;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be taken away, each a file. */
enum Leaf {
    PRINT(
            "print.pdf",
            "application/pdf",
            "Pieces at full size",
            "every piece on the paper chosen above, page one with the test squares"),
    STRIPS(
            "strips.pdf",
            "application/pdf",
            "Strips to tape on",
            "only what changes, for a tissue that you have already"),
    STEPS("steps.pdf", "application/pdf", "Step sheet", "every alteration as hands do it, drawing by drawing"),
    CHART("chart.pdf", "application/pdf", "Fitting chart", "need by need: body, paper, decision and why"),
    CHART_CSV("chart.csv", "text/csv", "Fitting chart for a spreadsheet", "the same figures as a table"),
    ALTERED(
            "altered.svg",
            "image/svg+xml",
            "Altered pattern",
            "the pieces as a pattern file, to open here again or in any browser"),
    REPORT(
            "report.json",
            "application/json",
            "Report",
            "every figure; standing alterations of the next pattern start from it");

    private final String word;
    private final String type;
    private final String label;
    private final String about;

    Leaf(String word, String type, String label, String about) {
        this.word = word;
        this.type = type;
        this.label = label;
        this.about = about;
    }

    static Optional<Leaf> named(String word) {
        return Arrays.stream(values()).filter(leaf -> leaf.word.equals(word)).findFirst();
    }

    String word() {
        return word;
    }

    String type() {
        return type;
    }

    String label() {
        return label;
    }

    String about() {
        return about;
    }

    /** What is cut, or taped onto what is cut; whoever takes it away has decided. */
    boolean isForTheCuttingTable() {
        return this == PRINT || this == STRIPS || this == STEPS;
    }

    /**
     * What the file is called: whose, what, and for the print on which paper, so that two on one pile can be told apart. Letters of other
     * alphabets stay; what a file system may not like does not.
     */
    String fileName(String project, String paper) {
        int dot = word.indexOf('.');
        String whose = Normalizer.normalize(project, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String on = this == PRINT ? "-" + paper : "";
        return (whose.isEmpty() ? "" : whose + "-") + word.substring(0, dot) + on + word.substring(dot);
    }
}
