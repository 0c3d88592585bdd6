package trueseam.worktable.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.trial.Counting;
import trueseam.fitting.trial.PinCounting;
import trueseam.fitting.trial.PinnedAs;
import trueseam.fitting.trial.PinnedAt;
import trueseam.fitting.trial.PinnedException;
import trueseam.fitting.trial.RankedCause;
import trueseam.fitting.trial.Remedy;
import trueseam.fitting.trial.Symptom;
import trueseam.worktable.work.Problem;

/**
 * Where what was pinned is written down.
 *
 * @param symptom the number of what is seen
 * @param cause the cause that was settled on
 * @param remedy the change
 * @param alteration the change as it is sent, with its way and sign
 * @param does what the change does and how its amount counts
 * @param measures what the amount may measure
 * @param as what it measures
 * @param sides where the pins may be
 * @param side where they are
 * @param amount as typed
 * @param note as typed
 * @param usual a usual amount, for the empty field
 * @param problem what is wrong, by field
 */
public record PinForm(
        int symptom,
        RankedCause cause,
        Remedy remedy,
        String alteration,
        String does,
        List<PinnedAs> measures,
        String as,
        List<PinnedAt> sides,
        String side,
        String amount,
        String note,
        String usual,
        Optional<Problem> problem) {

    static String field(PinnedException.Field field) {
        return switch (field) {
            case SEEN -> "symptom";
            case PINNED -> "amount";
            case CAUSE, ALTERATION, AS, SIDE -> field.name().toLowerCase(Locale.ROOT);
        };
    }

    /** The form that the address asks for: a cause of the reading, and one of its changes. */
    static Optional<PinForm> of(
            Map<String, String> asked,
            List<Symptom> symptoms,
            List<RankedCause> causes,
            String usual,
            Optional<Problem> problem) {
        for (RankedCause cause : causes) {
            for (Remedy remedy : cause.remedies()) {
                if (cause.cause().key().equals(asked.get("cause"))
                        && alteration(remedy).equals(asked.get("alteration"))) {
                    return Optional.of(form(asked, symptoms, cause, remedy, usual, problem));
                }
            }
        }
        return Optional.empty();
    }

    private static PinForm form(
            Map<String, String> asked,
            List<Symptom> symptoms,
            RankedCause cause,
            Remedy remedy,
            String usual,
            Optional<Problem> problem) {
        Counting counting = PinCounting.of(remedy.entry()).counting();
        List<PinnedAs> measures = new ArrayList<>();
        for (PinnedAs one : PinnedAs.values()) {
            if (one.measures(PinCounting.handling(remedy), counting)) {
                measures.add(one);
            }
        }
        List<PinnedAt> sides = counting == Counting.ONE_SIDE
                ? List.of(PinnedAt.LEFT, PinnedAt.RIGHT)
                : counting == Counting.LIMB
                        ? List.of(PinnedAt.BOTH, PinnedAt.LEFT, PinnedAt.RIGHT)
                        : List.of(PinnedAt.values());
        int symptom = symptoms.stream()
                .filter(one -> one.causes().contains(cause.cause()))
                .findFirst()
                .map(Symptom::number)
                .orElseThrow();
        return new PinForm(
                symptom,
                cause,
                remedy,
                alteration(remedy),
                "It " + remedy.does() + ". The cloth is "
                        + PinCounting.handling(remedy).words() + "; " + counting.words() + ".",
                measures,
                asked.getOrDefault("as", measures.get(0).word()),
                sides,
                asked.getOrDefault("side", sides.get(0).word()),
                asked.getOrDefault("amount", ""),
                asked.getOrDefault("note", ""),
                usual,
                problem);
    }

    /** A change as the line of a file names it. */
    static String alteration(Remedy remedy) {
        boolean usual = remedy.variant().equals(remedy.entry().variants().get(0));
        return remedy.entry().name() + (usual ? "" : "/" + remedy.variant().name()) + (remedy.isPlus() ? " +" : " -");
    }

    /**
     * What is wrong with a field.
     *
     * @param field its name
     * @return a sentence, empty if nothing is
     */
    public String problem(String field) {
        return problem.filter(p -> p.field().equals(field))
                .map(Problem::sentence)
                .orElse("");
    }

    /**
     * What is wrong with no field of the form.
     *
     * @return a sentence, empty if nothing is
     */
    public String otherProblem() {
        return problem.filter(p -> !List.of("amount", "as", "side").contains(p.field()))
                .map(Problem::sentence)
                .orElse("");
    }
}
