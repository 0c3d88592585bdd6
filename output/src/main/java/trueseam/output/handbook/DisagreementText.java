package trueseam.output.handbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.handbook.Answer;

/** Tells where handbooks disagree: as text, as a document, as figures for JSON. */
public final class DisagreementText {

    private DisagreementText() {}

    /**
     * All of it for a terminal.
     *
     * @param all the matters
     * @return lines of text
     */
    public static String list(List<Disagreement> all) {
        StringBuilder text = new StringBuilder();
        for (Disagreement one : all) {
            text.append(one.title()).append(": ").append(one.command()).append('\n');
            for (Answer answer : one.answers()) {
                boolean usual = answer.equals(one.answers().get(0));
                text.append("  ")
                        .append(answer.word())
                        .append(usual ? " (the usual): " : ": ")
                        .append(answer.whole())
                        .append('\n');
            }
        }
        return text.toString().stripTrailing();
    }

    /**
     * All of it as a document.
     *
     * @param all the matters
     * @return Markdown
     */
    public static String markdown(List<Disagreement> all) {
        StringBuilder text = new StringBuilder("# Where handbooks disagree\n\n");
        text.append("Made by `trueseam choices --markdown` from the choices in the code; do not edit by hand.\n")
                .append(
                        "None of these is decided in secret: the first answer is what is done when you say nothing, every other one can")
                .append(
                        " be chosen, and the fit says which counted. Figures of ease are inches. Source codes are those of")
                .append(" `docs/sources.md`; reasons without a publication are common practice.\n");
        int number = 0;
        for (Disagreement one : all) {
            number++;
            text.append("\n## ").append(number).append(". ").append(one.title()).append("\n\n");
            text.append(one.matters()).append("\n\n");
            text.append("- Command line: `").append(one.command()).append("`\n");
            text.append("- Worktable: ").append(one.screen()).append("\n\n");
            text.append("| WORD | what is done | when, and why | source |\n|---|---|---|---|\n");
            for (Answer answer : one.answers()) {
                text.append("| `")
                        .append(answer.word())
                        .append("` | ")
                        .append(answer.label())
                        .append(" | ")
                        .append(answer.reason())
                        .append(" | ")
                        .append(answer.source())
                        .append(" |\n");
            }
        }
        return text.toString();
    }

    /**
     * All of it for JSON.
     *
     * @param all the matters
     * @return a list of plain values
     */
    public static List<Map<String, Object>> figures(List<Disagreement> all) {
        List<Map<String, Object>> figures = new ArrayList<>();
        for (Disagreement one : all) {
            Map<String, Object> figure = new LinkedHashMap<>();
            figure.put("title", one.title());
            figure.put("matters", one.matters());
            figure.put("command", one.command());
            figure.put("screen", one.screen());
            figure.put("answers", one.answers());
            figures.add(figure);
        }
        return figures;
    }
}
