package trueseam.fitting.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.repertoire.Family;

/**
 * Puts causes in order and says why.
 *
 * <p>A cause that a symptom names first gets 3 points, one named second 2, any other 1; of several symptoms that are left the best
 * counts. Every answer that speaks for a cause adds 4, more than the list by itself can give, and one that speaks against it takes 4.
 * The points are ours; the order within each symptom is that of its source.
 */
final class CauseRanking {

    private static final int FIRST = 3;
    private static final int TOLD = 4;

    private final List<Symptom> symptoms;
    private final List<Told> told;
    private final Optional<Possible> possible;
    private final Optional<Family> part;

    /** A telling question and what was answered. */
    record Told(TellingQuestion question, TellingQuestion.TellingAnswer answer) {}

    CauseRanking(List<Symptom> symptoms, List<Told> told, Optional<Possible> possible, Optional<Family> part) {
        this.symptoms = symptoms;
        this.told = told;
        this.possible = possible;
        this.part = part;
    }

    List<RankedCause> causes() {
        Map<Cause, Symptom> named = new LinkedHashMap<>();
        for (Symptom symptom : symptoms) {
            for (Cause cause : symptom.causes()) {
                named.merge(cause, symptom, (a, b) -> points(b, cause) > points(a, cause) ? b : a);
            }
        }
        List<RankedCause> ranked = new ArrayList<>();
        named.forEach((cause, symptom) -> ranked.add(ranked(cause, symptom)));
        ranked.sort(Comparator.comparing(RankedCause::isSpokenAgainst)
                .thenComparing(RankedCause::points, Comparator.reverseOrder()));
        return List.copyOf(ranked);
    }

    private static int points(Symptom symptom, Cause cause) {
        return Math.max(1, FIRST - symptom.causes().indexOf(cause));
    }

    private RankedCause ranked(Cause cause, Symptom symptom) {
        List<String> reasons = new ArrayList<>();
        reasons.add(place(symptom, cause) + " where " + symptom.seen() + " [" + symptom.source() + "].");
        int points = points(symptom, cause);
        int balance = 0;
        for (Told one : told) {
            boolean speaksFor = one.answer().speaksFor().contains(cause);
            boolean speaksAgainst = one.answer().speaksAgainst().contains(cause);
            if (speaksFor || speaksAgainst) {
                balance += speaksFor ? 1 : -1;
                reasons.add((speaksFor ? "Speaks for it: " : "Speaks against it: ")
                        + one.question().asks() + " " + one.answer().words() + " ["
                        + one.question().source() + "].");
            }
        }
        List<Remedy> remedies = remedies(cause);
        return new RankedCause(cause, points + TOLD * balance, balance < 0, reasons, remedies, note(cause, remedies));
    }

    private static String place(Symptom symptom, Cause cause) {
        int at = symptom.causes().indexOf(cause);
        return symptom.causes().size() == 1
                ? "The only cause named"
                : at == 0 ? "Named first" : at == 1 ? "Named second" : "Named after others";
    }

    /** What this garment can take; of a garment that is not known, what belongs to the part that is spoken of. */
    private List<Remedy> remedies(Cause cause) {
        List<Remedy> able = cause.remedies().stream()
                .filter(remedy -> possible.map(pattern -> pattern.takes(remedy)).orElse(true))
                .toList();
        List<Remedy> ofPart = able.stream()
                .filter(remedy ->
                        part.map(family -> family == remedy.entry().family()).orElse(true))
                .toList();
        return ofPart.isEmpty() ? able : ofPart;
    }

    private static String note(Cause cause, List<Remedy> remedies) {
        if (!remedies.isEmpty() || cause.remedies().isEmpty()) {
            return cause.note();
        }
        return (cause.note() + " This pattern has no piece that takes "
                        + cause.remedies().get(0).words()
                        + " as it is; where the piece is in parts, tape them together, alter them as one and cut them apart again.")
                .strip();
    }
}
