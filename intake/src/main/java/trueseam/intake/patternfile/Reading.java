package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.finding.Finding;

/** What is noticed while one file is read. Used by one thread, for one file. */
final class Reading {

    private final String file;
    private final List<Finding> findings = new ArrayList<>();

    Reading(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    void note(SvgNode node, String what, String sentence) {
        findings.add(Finding.note(place(node, what), sentence));
    }

    void warn(SvgNode node, String what, String sentence) {
        findings.add(Finding.warning(place(node, what), sentence));
    }

    void fail(SvgNode node, String what, String sentence) {
        findings.add(Finding.failure(place(node, what), sentence));
    }

    private String place(SvgNode node, String what) {
        return PatternFileException.place(file, node.line()) + ", " + what;
    }

    PatternFileException refused(SvgNode node, String what, String sentence) {
        return new PatternFileException(file, node.line(), what, sentence);
    }

    /** The number in an attribute, or nothing if the attribute is missing. */
    Optional<Double> number(SvgNode node, String attribute, String what) {
        return node.attribute(attribute).map(text -> NumberText.parse(text)
                .orElseThrow(() -> refused(
                        node,
                        what,
                        attribute + " is \"" + NumberText.shortened(text)
                                + "\"; expected a number such as 15 or 15.875; correct it.")));
    }
}
