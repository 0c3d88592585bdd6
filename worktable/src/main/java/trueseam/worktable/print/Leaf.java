package trueseam.worktable.print;

import java.util.Arrays;
import java.util.Optional;
import trueseam.worktable.page.Download;

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

    /** What the file is called; the print has its paper in the name. */
    String fileName(String project, String paper) {
        int dot = word.indexOf('.');
        return Download.named(
                project, word.substring(0, dot) + (this == PRINT ? "-" + paper : "") + word.substring(dot));
    }
}
