package trueseam.fitting.standing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen;
import trueseam.garment.earlier.NamedThen;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/**
 * What one person's earlier patterns propose for a new one.
 *
 * <p>Laws: (1) the order of the evidence does not matter; (2) the same evidence given twice counts once; (3) of several fits of one
 * pattern in one size only the worn one counts, else the latest; (4) everything that agrees lies within the measuring error of each
 * other; (5) what is proposed lies within what agrees.
 *
 * @param person whose patterns they were
 * @param proposals by measure in the order of {@link Measure}, then by alteration in the order of work
 */
public record Standing(String person, List<Proposal> proposals) {

    // Immutable.
    public Standing {
        proposals = List.copyOf(proposals);
    }

    /**
     * Weighs the evidence.
     *
     * @param fits earlier fits of one person, in any order
     * @param body the body as it is now, if known: it tells whether it has changed since; else the latest fit tells
     * @return the proposals, and what is not proposed
     * @throws EvidenceException if there is no evidence, or it is of several people
     */
    public static Standing of(Collection<EarlierFit> fits, Optional<Body> body) {
        if (fits.isEmpty()) {
            throw new EvidenceException("No earlier report was given; name the report.json of an earlier fit.");
        }
        Set<String> people = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        fits.forEach(fit -> people.add(fit.person().strip()));
        body.ifPresent(now -> people.add(now.label()));
        if (people.size() > 1) {
            throw new EvidenceException("These are the figures of several people (" + String.join(", ", people)
                    + "); standing alterations are one person's own, so give only hers.");
        }
        List<EarlierFit> counted = LastOfEach.of(fits);
        List<Proposal> proposals = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            ofMeasure(measure, counted, body).ifPresent(proposals::add);
        }
        proposals.addAll(ofNames(counted));
        return new Standing(people.iterator().next(), proposals);
    }

    private static Optional<Proposal> ofMeasure(Measure measure, List<EarlierFit> fits, Optional<Body> body) {
        Subject subject = new Subject.OfMeasure(measure);
        Map<EarlierFit, MeasureThen> then = new LinkedHashMap<>();
        for (EarlierFit fit : fits) {
            fit.measures().stream()
                    .filter(one -> one.measure() == measure)
                    .findFirst()
                    .ifPresent(one -> then.put(fit, one));
        }
        if (then.isEmpty()) {
            return Optional.empty();
        }
        // The latest tape there is: the fits come oldest first.
        double now = body.flatMap(person -> person.value(measure))
                .map(BodyValue::mm)
                .orElseGet(() -> List.copyOf(then.values()).get(then.size() - 1).bodyMm());
        List<Weighing.Heard> heard = new ArrayList<>();
        then.forEach((fit, one) -> {
            // A change within the tape's error is no change of the body; what was proved on the trial garment then
            // stands.
            double since = now - one.bodyMm();
            double moved = Math.abs(since) > measure.allowableErrorMm() ? since : 0;
            Evidence evidence = new Evidence(
                    fit,
                    settled(one, fit),
                    one.changedMm(),
                    one.madeForMm() + moved,
                    moved,
                    OptionalDouble.of(one.drawnForMm()),
                    Evidence.Counts.AGAINST);
            heard.add(new Weighing.Heard(evidence, one.leftUpToMm()));
        });
        return Optional.of(
                measure.isChosen()
                        ? new Proposal(subject, Weight.CHOSEN_LENGTH, OptionalDouble.empty(), Weighing.asHeard(heard))
                        : Weighing.proposal(subject, heard));
    }

    /** What she asked for by name of the alteration that is solved for this measure was her decision, whatever the rule said of it. */
    private static MeasureThen.Settled settled(MeasureThen one, EarlierFit fit) {
        Optional<NamedThen> byName = fit.named().stream()
                .filter(named -> named.side() == Side.BOTH
                        && Repertoire.named(named.name())
                                .filter(entry ->
                                        entry.solved() && entry.measures().get(0) == one.measure())
                                .isPresent())
                .findFirst();
        return byName.map(Standing::settled).orElse(one.settled());
    }

    private static MeasureThen.Settled settled(NamedThen one) {
        return one.standing() ? MeasureThen.Settled.STANDING : MeasureThen.Settled.DECIDED;
    }

    private static List<Proposal> ofNames(List<EarlierFit> fits) {
        Map<Subject, List<Weighing.Heard>> heard = new LinkedHashMap<>();
        for (Entry entry : Repertoire.all()) {
            for (Side side : Side.values()) {
                for (EarlierFit fit : fits) {
                    Map<String, NamedThen> byWay = new TreeMap<>();
                    fit.named().stream()
                            .filter(one -> one.name().equals(entry.name()) && one.side() == side)
                            .filter(one -> !isInTheChart(entry, side, fit))
                            .forEach(one -> byWay.merge(one.way(), one, NamedThen::plus));
                    byWay.forEach((way, one) -> heard.computeIfAbsent(
                                    new Subject.OfName(entry, way, side), subject -> new ArrayList<>())
                            .add(named(fit, one)));
                }
            }
        }
        return heard.entrySet().stream()
                .map(one -> Weighing.proposal(one.getKey(), one.getValue()))
                .toList();
    }

    /** What an entry that is solved for a measure did is in that measure's line already, and is not counted a second time. */
    private static boolean isInTheChart(Entry entry, Side side, EarlierFit fit) {
        return entry.solved()
                && side == Side.BOTH
                && fit.measures().stream()
                        .anyMatch(one -> one.measure() == entry.measures().get(0));
    }

    private static Weighing.Heard named(EarlierFit fit, NamedThen one) {
        MeasureThen.Settled settled = one.standing() ? MeasureThen.Settled.STANDING : MeasureThen.Settled.DECIDED;
        Evidence evidence =
                new Evidence(fit, settled, one.mm(), one.mm(), 0, OptionalDouble.empty(), Evidence.Counts.AGAINST);
        return new Weighing.Heard(evidence, 0);
    }

    /**
     * The proposals that a garment can use.
     *
     * @param kind the garment
     * @return the same without what that garment is not fitted by
     */
    public Standing forGarment(GarmentKind kind) {
        Set<Measure> measures = Coverage.measuresOf(kind);
        return new Standing(
                person,
                proposals.stream()
                        .filter(one -> one.subject() instanceof Subject.OfName named
                                ? Repertoire.isFor(named.entry(), kind)
                                : one.subject() instanceof Subject.OfMeasure of && measures.contains(of.measure()))
                        .collect(Collectors.toList()));
    }

    /**
     * The proposal for a measure.
     *
     * @param measure the measure
     * @return it, or nothing where no earlier pattern was fitted by it
     */
    public Optional<Proposal> of(Measure measure) {
        Subject wanted = new Subject.OfMeasure(measure);
        return proposals.stream().filter(one -> one.subject().equals(wanted)).findFirst();
    }

    /**
     * The proposals of a named alteration.
     *
     * @param name its name
     * @return one for each way and side that was done before
     */
    public List<Proposal> named(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return proposals.stream()
                .filter(one -> one.subject() instanceof Subject.OfName of
                        && of.entry().name().equals(wanted))
                .toList();
    }
}
