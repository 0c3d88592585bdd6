package trueseam.output.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.trial.Cause;
import trueseam.fitting.trial.GuidedReading;
import trueseam.fitting.trial.PinCounting;
import trueseam.fitting.trial.Question;
import trueseam.fitting.trial.RankedCause;
import trueseam.fitting.trial.Remedy;
import trueseam.fitting.trial.Symptom;
import trueseam.output.words.MeasureWords;

/** Tells a guided reading. */
public final class TrialText {

    private TrialText() {}

    /**
     * What is known so far and what to ask next.
     *
     * @param reading the reading
     * @return lines of text
     */
    public static String text(GuidedReading reading) {
        StringBuilder text = new StringBuilder();
        List<Symptom> left = reading.symptoms();
        if (left.isEmpty()) {
            return "Nothing that we know of is seen so. Take an answer back, or answer " + GuidedReading.UNSURE + ".";
        }
        if (left.size() == 1) {
            text.append("Seen: ").append(seen(left.get(0))).append('\n');
            text.append("Try it: ").append(left.get(0).tried()).append(".\n\n");
        }
        if (left.size() <= 4) {
            text.append("Causes, the likeliest first:\n");
            int place = 1;
            for (RankedCause cause : reading.causes()) {
                cause(text, place++, cause);
            }
            text.append('\n');
        }
        reading.next()
                .ifPresentOrElse(
                        question -> question(text, question), () -> text.append("No question of ours tells more.\n"));
        return text.toString().stripTrailing();
    }

    private static void cause(StringBuilder text, int place, RankedCause ranked) {
        text.append("  ")
                .append(place)
                .append(". ")
                .append(MeasureWords.capital(ranked.cause().words()));
        text.append(" (").append(ranked.cause().key()).append(")");
        text.append(ranked.isSpokenAgainst() ? ": spoken against\n" : "\n");
        ranked.reasons().forEach(reason -> text.append("     ").append(reason).append('\n'));
        for (Remedy remedy : ranked.remedies()) {
            text.append("     Change: ").append(change(remedy)).append('\n');
        }
        if (!ranked.note().isBlank()) {
            text.append("     ").append(ranked.note()).append('\n');
        }
    }

    private static void question(StringBuilder text, Question question) {
        text.append("Next: ").append(question.asks()).append(' ').append(question.why());
        text.append(question.source().isBlank() ? "\n" : " [" + question.source() + "]\n");
        for (Question.Answer answer : question.answers()) {
            text.append("  ").append(question.key()).append('=').append(answer.key());
            text.append("  ").append(answer.words());
            text.append(answer.meaning().isBlank() ? "\n" : " (" + answer.meaning() + ")\n");
        }
    }

    /**
     * What a change does and how it is pinned.
     *
     * @param remedy the change
     * @return for example {@code skirt hip: makes the hip larger; the cloth is let out, ...}
     */
    public static String change(Remedy remedy) {
        return remedy.words() + ": " + remedy.does() + "; the cloth is "
                + PinCounting.handling(remedy).words() + ", and "
                + PinCounting.of(remedy.entry()).counting().words();
    }

    /**
     * One line for each symptom with its causes.
     *
     * @param symptoms the symptoms
     * @return lines of text
     */
    public static String list(List<Symptom> symptoms) {
        StringBuilder text = new StringBuilder();
        for (Symptom symptom : symptoms) {
            text.append(String.format("%3d  ", symptom.number()))
                    .append(seen(symptom))
                    .append('\n')
                    .append("     ")
                    .append(symptom.causes().stream().map(Cause::key).collect(Collectors.joining(", ")))
                    .append('\n');
        }
        return text.toString().stripTrailing();
    }

    /**
     * The reading as figures for export.
     *
     * @param reading the reading
     * @return maps, lists, texts and numbers
     */
    public static Map<String, Object> figures(GuidedReading reading) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("answers", reading.answers());
        List<Object> seen = new ArrayList<>();
        for (Symptom symptom : reading.symptoms()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("number", symptom.number());
            one.put("seen", symptom.seen());
            one.put("tried", symptom.tried());
            one.put("source", symptom.source());
            seen.add(one);
        }
        all.put("seen", seen);
        all.put("causes", reading.causes().stream().map(TrialText::figures).toList());
        reading.next().ifPresent(question -> all.put("next", figures(question)));
        return all;
    }

    private static Map<String, Object> figures(RankedCause ranked) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("cause", ranked.cause().key());
        one.put("words", ranked.cause().words());
        one.put("points", ranked.points());
        one.put("spokenAgainst", ranked.isSpokenAgainst());
        one.put("reasons", ranked.reasons());
        one.put(
                "changes",
                ranked.remedies().stream()
                        .map(remedy -> Map.of(
                                "alteration", remedy.words(),
                                "sign", remedy.isPlus() ? "+" : "-",
                                "does", remedy.does()))
                        .toList());
        one.put("note", ranked.note());
        return one;
    }

    private static Map<String, Object> figures(Question question) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("question", question.key());
        one.put("asks", question.asks());
        one.put("why", question.why());
        one.put("source", question.source());
        one.put(
                "answers",
                question.answers().stream()
                        .map(answer ->
                                Map.of("answer", answer.key(), "words", answer.words(), "meaning", answer.meaning()))
                        .toList());
        return one;
    }

    /**
     * The part of the garment that a symptom is told under in lists: the first that it is seen on.
     *
     * @param symptom the symptom
     * @return the part
     */
    static Family family(Symptom symptom) {
        return symptom.families().iterator().next();
    }

    static String seen(Symptom symptom) {
        return MeasureWords.capital(symptom.seen()) + " [" + symptom.source() + "]";
    }
}
