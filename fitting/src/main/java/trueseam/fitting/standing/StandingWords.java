package trueseam.fitting.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import trueseam.fitting.standing.Evidence.Counts;
import trueseam.garment.length.LengthFormat;

/**
 * Evidence in words.
 *
 * @param show how lengths are written
 * @param today the day, for the age of evidence
 */
public record StandingWords(LengthFormat show, LocalDate today) {

    /** Measures are retaken at least every six months (Texas E-372), so older evidence is worth a new tape. */
    private static final long RETAKE_MONTHS = 6;

    /**
     * All the evidence for a proposal, what contradicts included.
     *
     * @param proposal the proposal
     * @return for example {@code 2 patterns agree within 1/8 in (misses 12: -1/2 in, 3 months ago; misses 14: -5/8 in, worn)}
     */
    public String evidence(Proposal proposal) {
        List<String> said = new ArrayList<>();
        List<Evidence> agreeing = proposal.evidence(Counts.AGREES);
        if (agreeing.size() > 1) {
            said.add(agreeing.size() + " patterns agree within " + show.show(proposal.spreadMm()) + " ("
                    + list(agreeing) + ")");
        } else if (!agreeing.isEmpty()) {
            said.add(list(agreeing));
        }
        say(said, "left alone on", proposal.evidence(Counts.BEARS_OUT));
        String against = proposal.weight().isProposed() ? "not counted in, for it says otherwise:" : "they differ:";
        say(said, against, proposal.evidence(Counts.AGAINST));
        say(said, "taken from earlier patterns and not worn yet:", proposal.evidence(Counts.HEARSAY));
        say(said, "two fits on one day, say which was worn:", proposal.evidence(Counts.UNDECIDED));
        say(
                said,
                proposal.weight() == Weight.CHOSEN_LENGTH
                        ? "chosen for each garment:"
                        : "left for the trial garment or for another measure:",
                proposal.evidence(Counts.OPEN));
        return String.join("; ", said);
    }

    /**
     * What is to be said of a proposal in all: why nothing is proposed, the evidence, and whether to measure again.
     *
     * @param proposal the proposal
     * @return a few words, no full stop
     */
    public String said(Proposal proposal) {
        String not = whyNot(proposal.weight());
        String one = proposal.weight() == Weight.ONE_PATTERN ? "one pattern alone: " : "";
        return (not.isEmpty() ? one : "no proposal, " + not + ": ")
                + evidence(proposal)
                + (isOld(proposal) ? "; older than six months, measure again" : "");
    }

    private void say(List<String> said, String what, List<Evidence> evidence) {
        if (!evidence.isEmpty()) {
            said.add(what + " " + list(evidence));
        }
    }

    private String list(List<Evidence> evidence) {
        return evidence.stream().map(this::one).collect(Collectors.joining("; "));
    }

    private String one(Evidence evidence) {
        StringBuilder words = new StringBuilder(evidence.fit().sizeLabel())
                .append(": ")
                .append(show.showSigned(evidence.changedMm()));
        if (evidence.movedMm() != 0) {
            words.append(", and the body ")
                    .append(show.showSigned(evidence.movedMm()))
                    .append(" since");
        }
        if (evidence.fit().worn()) {
            words.append(", worn");
        }
        age(evidence).ifPresent(months -> words.append(", ").append(ago(months)));
        return words.toString();
    }

    private OptionalLong age(Evidence evidence) {
        return evidence.ageMonths(today);
    }

    private static String ago(long months) {
        return months < 0 ? "dated after today" : months(months) + (months == 0 ? "" : " ago");
    }

    private static String months(long months) {
        return months == 0 ? "this month" : months == 1 ? "1 month" : months + " months";
    }

    /**
     * The age of what a proposal rests on.
     *
     * @param proposal the proposal
     * @return for example {@code 3 to 14 months}; {@code -} where no fit has a date
     */
    public String age(Proposal proposal) {
        List<Evidence> counted =
                proposal.weight().isProposed() ? proposal.evidence(Counts.AGREES) : proposal.evidence();
        var ages = counted.stream()
                .map(this::age)
                .filter(OptionalLong::isPresent)
                .mapToLong(OptionalLong::getAsLong)
                .summaryStatistics();
        if (ages.getCount() == 0) {
            return "-";
        }
        return ages.getMin() == ages.getMax() ? months(ages.getMax()) : ages.getMin() + " to " + months(ages.getMax());
    }

    /**
     * Whether all that a proposal rests on is so old that the body should be measured anew.
     *
     * @param proposal the proposal
     * @return true if the newest of it is older than six months
     */
    public boolean isOld(Proposal proposal) {
        List<Evidence> agreeing = proposal.evidence(Counts.AGREES);
        return !agreeing.isEmpty()
                && agreeing.stream().allMatch(one -> age(one).isPresent() && age(one).getAsLong() >= RETAKE_MONTHS);
    }

    /** Why nothing is proposed; empty where something is. */
    private static String whyNot(Weight weight) {
        return switch (weight) {
            case AGREED, ONE_PATTERN -> "";
            case CONTRADICTED -> "the earlier patterns contradict each other";
            case LEFT_ALONE -> "left alone every time";
            case CHOSEN_LENGTH -> "a finished length is chosen for each garment";
            case UNCOUNTED -> "nothing that can be counted";
        };
    }
}
