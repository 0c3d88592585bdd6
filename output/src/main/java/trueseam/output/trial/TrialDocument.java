package trueseam.output.trial;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.trial.Cause;
import trueseam.fitting.trial.FoldDirection;
import trueseam.fitting.trial.GarmentPlace;
import trueseam.fitting.trial.Moment;
import trueseam.fitting.trial.PinCounting;
import trueseam.fitting.trial.Remedy;
import trueseam.fitting.trial.Symptom;
import trueseam.fitting.trial.TellingQuestion;
import trueseam.fitting.trial.Tension;
import trueseam.fitting.trial.TrialFolds;
import trueseam.output.words.MeasureWords;

/** The whole catalogue of the trial garment as a document: symptoms, causes, questions, and how pins count. */
public final class TrialDocument {

    /** What the catalogue begins with in a document. */
    public static final String HEADING = "## The catalogue";

    private TrialDocument() {}

    /**
     * The catalogue.
     *
     * @return Markdown, from its heading on
     */
    public static String markdown() {
        StringBuilder text = new StringBuilder(HEADING).append("\n\n");
        text.append(
                        "Made by `trueseam trial --markdown` from the tables in the code; do not edit by hand below this line.\n")
                .append("Source codes are those of `docs/sources.md`; CP is common practice.\n");
        symptoms(text);
        causes(text);
        questions(text);
        counting(text);
        return text.toString();
    }

    private static void symptoms(StringBuilder text) {
        text.append(
                        "\n### What is seen\n\nNumbers 1 to 43 are the trade's list; from 44 on, what the alterations themselves say")
                .append(" is seen.\n");
        for (Family family : Family.values()) {
            text.append("\n#### ").append(MeasureWords.capital(family.word())).append("\n\n");
            for (Symptom symptom : TrialFolds.symptoms()) {
                if (TrialText.family(symptom) == family) {
                    symptom(text, symptom);
                }
            }
        }
    }

    private static void symptom(StringBuilder text, Symptom symptom) {
        text.append("- **").append(symptom.number()).append(".** ").append(TrialText.seen(symptom));
        text.append(". Where: ").append(joined(symptom.places(), GarmentPlace::words));
        text.append(". Folds: ").append(joined(symptom.directions(), FoldDirection::key));
        text.append(". Cloth: ").append(joined(symptom.tensions(), Tension::key));
        text.append(". When: ").append(joined(symptom.moments(), Moment::key));
        text.append(". Tried: ").append(symptom.tried());
        text.append(". Causes: ")
                .append(symptom.causes().stream().map(Cause::key).collect(Collectors.joining(", ")))
                .append(".\n");
    }

    private static <E extends Enum<E>> String joined(Set<E> values, java.util.function.Function<E, String> words) {
        return values.stream().sorted().map(words).collect(Collectors.joining("; "));
    }

    private static void causes(StringBuilder text) {
        text.append(
                "\n### Causes and changes\n\n| cause | what it is | changes, the first to be tried first | note |\n|---|---|---|---|\n");
        for (Cause cause : TrialFolds.causes()) {
            text.append("| ")
                    .append(cause.key())
                    .append(" | ")
                    .append(cause.words())
                    .append(" | ");
            text.append(cause.remedies().stream().map(TrialDocument::change).collect(Collectors.joining("; ")));
            text.append(" | ").append(cause.note()).append(" |\n");
        }
    }

    private static String change(Remedy remedy) {
        return remedy.words() + (remedy.isPlus() ? " +" : " -");
    }

    private static void questions(StringBuilder text) {
        text.append("\n### Questions that tell causes with the same folds apart\n");
        for (TellingQuestion question : TrialFolds.questions()) {
            text.append("\n**").append(question.asks()).append("** (`").append(question.key());
            text.append("`) [").append(question.source()).append("]\n\n");
            for (TellingQuestion.TellingAnswer answer : question.answers()) {
                text.append("- ")
                        .append(answer.words())
                        .append(" (`")
                        .append(answer.key())
                        .append("`): speaks for ");
                text.append(keys(answer.speaksFor())).append("; against ");
                text.append(keys(answer.speaksAgainst())).append(".\n");
            }
        }
    }

    private static String keys(Set<Cause> causes) {
        List<Cause> order = TrialFolds.causes();
        return order.stream().filter(causes::contains).map(Cause::key).collect(Collectors.joining(", "));
    }

    private static void counting(StringBuilder text) {
        text.append(
                "\n### How pins count for each alteration\n\n| alteration | a plus | a minus | counting |\n|---|---|---|---|\n");
        for (Entry entry : Repertoire.all()) {
            PinCounting own = PinCounting.of(entry);
            text.append("| ")
                    .append(entry.name())
                    .append(" | ")
                    .append(own.plus().words())
                    .append(" | ");
            text.append(own.minus().map(handling -> handling.words()).orElse("none"))
                    .append(" | ");
            text.append(own.counting().words()).append(" |\n");
        }
    }
}
