package trueseam.fitting.standing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.standing.Evidence.Counts;
import trueseam.garment.earlier.MeasureThen.Settled;

/**
 * Holds the evidence about one thing against itself: the most that lie within the measuring error of each other agree; the rest says
 * otherwise.
 */
final class Weighing {

    private static final Comparator<Evidence> BY_VALUE =
            Comparator.comparingDouble(Evidence::mm).thenComparing(Evidence::fit, LastOfEach.OLDEST_FIRST);

    private static final Comparator<Evidence> BY_AGE = Comparator.comparing(Evidence::fit, LastOfEach.OLDEST_FIRST);

    /** Evidence before it is weighed, with the difference that the rule then left alone. */
    record Heard(Evidence evidence, double leftUpToMm) {

        Settled settled() {
            return evidence.settled();
        }

        boolean isHearsay() {
            return settled() == Settled.STANDING && !evidence.fit().worn();
        }

        boolean isValue() {
            return settled() != Settled.OPEN && settled() != Settled.LEFT && !isHearsay();
        }
    }

    private final Subject subject;
    private final List<Heard> heard;
    private final List<Evidence> undecided = new ArrayList<>();

    private Weighing(Subject subject, List<Heard> heard) {
        this.subject = subject;
        this.heard = heard;
    }

    static Proposal proposal(Subject subject, List<Heard> heard) {
        return new Weighing(subject, heard).weighed();
    }

    /** The evidence where nothing is proposed whatever it says. */
    static List<Evidence> asHeard(List<Heard> heard) {
        return heard.stream()
                .map(one -> one.evidence().counted(Counts.OPEN))
                .sorted(BY_AGE)
                .toList();
    }

    private Proposal weighed() {
        List<Evidence> values = onePerPattern(
                heard.stream().filter(Heard::isValue).map(Heard::evidence).toList());
        List<Evidence> agreeing = mostThatAgree(values);
        List<Evidence> all = new ArrayList<>(undecided);
        agreeing.forEach(one -> all.add(one.counted(Counts.AGREES)));
        values.stream().filter(one -> !agreeing.contains(one)).forEach(one -> all.add(one.counted(Counts.AGAINST)));
        double mean = agreeing.stream().mapToDouble(Evidence::mm).average().orElse(0);
        boolean left = false;
        for (Heard one : heard) {
            if (one.settled() == Settled.OPEN) {
                all.add(one.evidence().counted(Counts.OPEN));
            } else if (one.isHearsay()) {
                all.add(one.evidence().counted(Counts.HEARSAY));
            } else if (one.settled() == Settled.LEFT) {
                // What was left alone is no amount; it only says that the difference was no larger than what the rule
                // leaves.
                left = true;
                boolean within = Math.abs(one.evidence().mm() - mean) <= Math.max(one.leftUpToMm(), subject.errorMm());
                all.add(one.evidence().counted(agreeing.isEmpty() || within ? Counts.BEARS_OUT : Counts.AGAINST));
            }
        }
        all.sort(BY_AGE);
        Weight weight = weight(agreeing, all, left);
        if (!weight.isProposed()) {
            // Nothing is proposed, so nothing agrees with it.
            all.replaceAll(one -> one.counts() == Counts.AGREES ? one.counted(Counts.AGAINST) : one);
        }
        return new Proposal(
                subject, weight, weight.isProposed() ? OptionalDouble.of(mean) : OptionalDouble.empty(), all);
    }

    private static Weight weight(List<Evidence> agreeing, List<Evidence> all, boolean left) {
        List<Evidence> against =
                all.stream().filter(one -> one.counts() == Counts.AGAINST).toList();
        if (agreeing.isEmpty()) {
            return left ? Weight.LEFT_ALONE : Weight.UNCOUNTED;
        }
        boolean onlyAgainstIsWorn = against.stream().anyMatch(one -> one.fit().worn())
                && agreeing.stream().noneMatch(one -> one.fit().worn());
        if (agreeing.size() <= against.size() || onlyAgainstIsWorn) {
            return Weight.CONTRADICTED;
        }
        return agreeing.size() == 1 ? Weight.ONE_PATTERN : Weight.AGREED;
    }

    /** Fits of one pattern on one day, neither worn: one if they say the same, none if they do not. */
    private List<Evidence> onePerPattern(List<Evidence> values) {
        List<Evidence> one = new ArrayList<>();
        for (Evidence value : values) {
            List<Evidence> same = values.stream()
                    .filter(other -> other.fit().isOfSamePattern(value.fit()))
                    .toList();
            if (spread(same) > subject.errorMm()) {
                undecided.add(value.counted(Counts.UNDECIDED));
            } else if (same.get(0).equals(value)) {
                one.add(value);
            }
        }
        return one;
    }

    /**
     * The largest group within the measuring error; of two as large the one with more that were worn, then the closer one, then the one
     * with the newer evidence, then the smaller amounts.
     */
    private List<Evidence> mostThatAgree(List<Evidence> values) {
        List<Evidence> sorted = values.stream().sorted(BY_VALUE).toList();
        List<Evidence> best = List.of();
        for (int from = 0; from < sorted.size(); from++) {
            int to = from;
            while (to < sorted.size() && sorted.get(to).mm() - sorted.get(from).mm() <= subject.errorMm()) {
                to++;
            }
            List<Evidence> group = sorted.subList(from, to);
            best = best.isEmpty() || BETTER.compare(group, best) > 0 ? group : best;
        }
        return List.copyOf(best);
    }

    private static final Comparator<List<Evidence>> BETTER = Comparator.<List<Evidence>>comparingInt(List::size)
            .thenComparingLong(
                    group -> group.stream().filter(one -> one.fit().worn()).count())
            .thenComparing(
                    Comparator.<List<Evidence>>comparingDouble(Weighing::spread).reversed())
            .thenComparing(group -> group.stream().max(BY_AGE).orElseThrow().fit(), LastOfEach.OLDEST_FIRST);

    private static double spread(List<Evidence> group) {
        var all = group.stream().mapToDouble(Evidence::mm).summaryStatistics();
        return all.getMax() - all.getMin();
    }
}
