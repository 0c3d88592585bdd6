package trueseam.fitting.standing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.standing.Evidence.Counts;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * Standing alterations taken into the choices of a new fit, each held against what the new chart asks for by itself so that nothing is
 * counted twice: an amount takes the place of the chart's, never comes on top of it; where both come to the same within the measuring
 * error the chart's stays. Her own decisions go before both. One pattern alone and patterns that contradict each other are only told.
 *
 * @param choices the choices with what was taken up
 * @param requests the alterations by name that were added
 * @param findings what was taken, what was not, and why
 */
public record TakenUp(FitChoices choices, List<Request> requests, List<Finding> findings) {

    // Immutable.
    public TakenUp {
        requests = List.copyOf(requests);
        findings = List.copyOf(findings);
    }

    /**
     * Takes up what earlier patterns agree on.
     *
     * @param standing the proposals
     * @param chart the new fitting chart as it is without them
     * @param pattern the new pattern
     * @param choices her choices
     * @param words how evidence is told
     * @return the choices with them
     */
    public static TakenUp of(
            Standing standing, List<Need> chart, Pattern pattern, FitChoices choices, StandingWords words) {
        Taking taking = new Taking(chart, pattern, choices, words);
        standing.proposals().forEach(taking::take);
        Map<Measure, Overrule> overrules = new EnumMap<>(Measure.class);
        overrules.putAll(choices.overrules());
        overrules.putAll(taking.overrules);
        List<Request> requests = new ArrayList<>(choices.requests());
        requests.addAll(taking.requests);
        return new TakenUp(choices.withOverrules(overrules).withRequests(requests), taking.requests, taking.findings);
    }

    /** The work on one fit. */
    private static final class Taking {

        private final List<Need> chart;
        private final Pattern pattern;
        private final FitChoices choices;
        private final StandingWords words;
        private final Map<Measure, Overrule> overrules = new EnumMap<>(Measure.class);
        private final List<Request> requests = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();

        private Taking(List<Need> chart, Pattern pattern, FitChoices choices, StandingWords words) {
            this.chart = chart;
            this.pattern = pattern;
            this.choices = choices;
            this.words = words;
        }

        private void take(Proposal proposal) {
            if (proposal.subject() instanceof Subject.OfName named) {
                byName(named, proposal);
            } else if (proposal.subject() instanceof Subject.OfMeasure of) {
                need(of.measure()).ifPresent(need -> byMeasure(need, proposal));
            }
        }

        private Optional<Need> need(Measure measure) {
            return chart.stream().filter(need -> need.measure() == measure).findFirst();
        }

        private void byMeasure(Need need, Proposal proposal) {
            if (need.decision().overruled()) {
                return; // her own decision, or another measure decides for this one
            }
            if (!proposal.weight().isProposed()) {
                contradiction(proposal);
                return;
            }
            double amount = proposal.amountFor(need).orElseThrow();
            boolean same = Math.abs(amount - need.decision().amountMm())
                            <= proposal.subject().errorMm()
                    || isTheTapesOwn(need, proposal);
            if (proposal.weight() == Weight.ONE_PATTERN) {
                if (!same) {
                    told(proposal, "would ask for " + words.show().showSigned(amount) + " here in all");
                }
                return;
            }
            if (same) {
                // Also where the chart leaves a small difference and the patterns ask for no more than the tape can be
                // off.
                overrules.put(
                        need.measure(),
                        new Overrule.Standing(
                                OptionalDouble.empty(), "Standing: the same, " + words.evidence(proposal) + "."));
                return;
            }
            double taken = Math.abs(amount) <= proposal.subject().errorMm() ? 0 : amount;
            if (need.decision().verdict() == Verdict.TRY_ON) {
                told(proposal, "ask for " + words.show().showSigned(amount) + " here, which the catalogue cannot do");
                return;
            }
            overrules.put(
                    need.measure(),
                    new Overrule.Standing(
                            OptionalDouble.of(taken),
                            "Standing: "
                                    + (taken == 0 ? "left alone" : words.show().showSigned(taken))
                                    + " instead of the "
                                    + words.show().showSigned(need.decision().amountMm()) + " by the tape, for "
                                    + words.evidence(proposal) + "."));
            old(proposal);
        }

        /**
         * Earlier patterns that rules altered by what the tape read say nothing beyond the tape, and so nothing of what to do about a
         * difference here; those that she decided herself do.
         */
        private boolean isTheTapesOwn(Need need, Proposal proposal) {
            long own = proposal.evidence(Counts.AGREES).stream()
                    .filter(Evidence::isOwn)
                    .count();
            double beyond = proposal.mm().orElseThrow() - need.body().mm();
            return own < 2 && Math.abs(beyond) <= proposal.subject().errorMm();
        }

        private void byName(Subject.OfName named, Proposal proposal) {
            Entry entry = named.entry();
            boolean asked = choices.requests().stream()
                    .anyMatch(request ->
                            request.entry().equals(entry) && request.side().orElse(Side.BOTH) == named.side());
            if (asked || !Repertoire.of(pattern).contains(entry)) {
                return; // she asks for it herself, or this pattern has no piece for it
            }
            if (!proposal.weight().isProposed()) {
                contradiction(proposal);
                return;
            }
            double amount = proposal.mm().orElseThrow();
            String ask = words.show().showSigned(amount);
            Optional<Need> need = entry.solved() && named.side() == Side.BOTH
                    ? need(entry.measures().get(0))
                    : Optional.empty();
            Optional<Variant> way = entry.variant(named.way());
            if (need.isPresent()) {
                // Then the body was not measured there, now it is: the tape of today decides.
                told(
                        proposal,
                        "did it by " + ask + " without a measure; today's tape asks for "
                                + words.show().showSigned(need.get().decision().amountMm()) + " and decides");
            } else if (proposal.weight() == Weight.ONE_PATTERN || way.isEmpty()) {
                told(proposal, "did it by " + ask);
            } else if (amount != 0) {
                requests.add(new Request(
                        entry,
                        way.get(),
                        OptionalDouble.of(amount),
                        named.side() == Side.BOTH ? Optional.empty() : Optional.of(named.side())));
                findings.add(Finding.note(
                        named.label(), "Standing: " + ask + " is done, for " + words.evidence(proposal) + "."));
                old(proposal);
            }
        }

        private void told(Proposal proposal, String what) {
            boolean one = proposal.weight() == Weight.ONE_PATTERN;
            findings.add(Finding.note(
                    proposal.subject().label(),
                    "Standing: " + (one ? "one earlier pattern " : "earlier patterns ") + what + " ("
                            + words.evidence(proposal) + "); it is not taken"
                            + (one ? " from one pattern alone" : "") + ", decide it yourself."));
        }

        private void contradiction(Proposal proposal) {
            if (proposal.weight() == Weight.CONTRADICTED) {
                findings.add(Finding.warning(
                        proposal.subject().label(),
                        "Standing: nothing is proposed, for the earlier patterns contradict each other ("
                                + words.evidence(proposal) + "); see on the trial garment."));
            }
        }

        private void old(Proposal proposal) {
            if (words.isOld(proposal)) {
                findings.add(Finding.note(
                        proposal.subject().label(),
                        "Standing: the newest evidence is " + words.age(proposal)
                                + " old, and measures are retaken every six months; measure again."));
            }
        }
    }
}
