package trueseam.worktable.standing;

import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.fitting.standing.Proposal;
import trueseam.fitting.standing.Standing;
import trueseam.fitting.standing.StandingWords;
import trueseam.fitting.standing.Subject;
import trueseam.fitting.standing.TakenUp;
import trueseam.garment.finding.Finding;
import trueseam.worktable.project.StandingPart;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * What the page of earlier patterns shows.
 *
 * @param person what she is called
 * @param reports what was brought
 * @param on whether it is taken into this fit
 * @param problems what could not be brought
 * @param sentence why nothing can be proposed; else empty
 * @param rows the proposals
 * @param findings what was done by name, or only told
 */
public record StandingView(
        String person,
        List<StandingPart.Report> reports,
        boolean on,
        List<String> problems,
        String sentence,
        List<Row> rows,
        List<Finding> findings) {

    /**
     * A proposal.
     *
     * @param what the measure's workroom word or the alteration's name
     * @param weight how much it is worth, in a word or two
     * @param proposed whether something is proposed
     * @param madeFor the body measure that earlier patterns were made for; empty for an alteration by name
     * @param here the amount on this pattern; empty where there is none
     * @param error what the tape may err
     * @param age how old the evidence is
     * @param evidence the evidence in words
     */
    public record Row(
            String what,
            String weight,
            boolean proposed,
            String madeFor,
            String here,
            String error,
            String age,
            String evidence) {}

    static StandingView of(Workings workings, List<String> problems) {
        StandingPart part = workings.project().standing();
        String label = workings.project().person().label();
        return new StandingView(
                label.isBlank() ? "this person" : label,
                part.reports(),
                !part.off(),
                problems,
                workings.standing()
                        .filter(outcome -> !outcome.isThere())
                        .map(Outcome::sentence)
                        .orElse(""),
                workings.standing()
                        .flatMap(Outcome::value)
                        .map(standing -> rows(standing, workings))
                        .orElse(List.of()),
                workings.takenUp().map(TakenUp::findings).orElse(List.of()));
    }

    /** Only what this garment can use, once there is one. */
    private static List<Row> rows(Standing all, Workings workings) {
        Standing standing =
                workings.taken().value().map(Taken::kind).map(all::forGarment).orElse(all);
        List<Need> chart = workings.needs().value().orElse(List.of());
        return standing.proposals().stream()
                .map(proposal -> row(proposal, chart, workings.standingWords()))
                .toList();
    }

    private static Row row(Proposal proposal, List<Need> chart, StandingWords words) {
        boolean measure = proposal.subject() instanceof Subject.OfMeasure;
        OptionalDouble here = here(proposal, chart);
        return new Row(
                proposal.subject() instanceof Subject.OfMeasure of
                        ? of.measure().workroomLabel()
                        : proposal.subject().label(),
                weight(proposal),
                proposal.weight().isProposed(),
                measure && proposal.mm().isPresent()
                        ? words.show().show(proposal.mm().getAsDouble())
                        : "",
                here.isPresent() ? words.show().showSigned(here.getAsDouble()) : "",
                words.show().show(proposal.subject().errorMm()),
                words.age(proposal),
                words.evidence(proposal));
    }

    /** A measure that this chart has no line for has no amount here. */
    private static OptionalDouble here(Proposal proposal, List<Need> chart) {
        if (!(proposal.subject() instanceof Subject.OfMeasure of)) {
            return proposal.mm();
        }
        return chart.stream()
                .filter(need -> need.measure() == of.measure())
                .findFirst()
                .map(proposal::amountFor)
                .orElse(OptionalDouble.empty());
    }

    private static String weight(Proposal proposal) {
        return switch (proposal.weight()) {
            case AGREED -> "agreed";
            case ONE_PATTERN -> "one pattern alone";
            case CONTRADICTED -> "contradicted";
            case LEFT_ALONE -> "left alone";
            case CHOSEN_LENGTH -> "chosen each time";
            case UNCOUNTED -> "not counted";
        };
    }
}
