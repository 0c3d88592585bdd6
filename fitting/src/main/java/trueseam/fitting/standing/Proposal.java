package trueseam.fitting.standing;

import java.util.List;
import java.util.OptionalDouble;
import trueseam.fitting.compare.Need;
import trueseam.garment.size.SizeRow;

/**
 * What earlier patterns propose for one measure or one named alteration.
 *
 * @param subject what it is about
 * @param weight what the evidence is worth
 * @param mm the mean of what agrees, mm: for a measure the body measure to make the new pattern for, for a named alteration the amount;
 *     nothing where nothing is proposed
 * @param evidence all evidence, oldest first, what contradicts included
 */
public record Proposal(Subject subject, Weight weight, OptionalDouble mm, List<Evidence> evidence) {

    // Immutable.
    public Proposal {
        evidence = List.copyOf(evidence);
    }

    /**
     * The evidence that counts in one way.
     *
     * @param counts the way
     * @return oldest first
     */
    public List<Evidence> evidence(Evidence.Counts counts) {
        return evidence.stream().filter(one -> one.counts() == counts).toList();
    }

    /**
     * How far what agrees lies apart.
     *
     * @return largest less smallest, mm; 0 for one pattern or none
     */
    public double spreadMm() {
        var all = evidence(Evidence.Counts.AGREES).stream()
                .mapToDouble(Evidence::mm)
                .summaryStatistics();
        return all.getCount() == 0 ? 0 : all.getMax() - all.getMin();
    }

    /**
     * The amount on a pattern of a size.
     *
     * @param size the size with its body measures
     * @return mm; nothing where nothing is proposed or the table does not give the measure
     */
    public OptionalDouble amountOn(SizeRow size) {
        if (mm.isEmpty() || !(subject instanceof Subject.OfMeasure of)) {
            return mm;
        }
        return size.value(of.measure())
                .map(drawnFor -> OptionalDouble.of(mm.getAsDouble() - drawnFor))
                .orElse(OptionalDouble.empty());
    }

    /**
     * The amount on a pattern of the size that the latest of the agreeing patterns was in.
     *
     * @return mm; nothing where nothing is proposed
     */
    public OptionalDouble amountOnTheLatest() {
        List<Evidence> agreeing = evidence(Evidence.Counts.AGREES);
        if (mm.isEmpty() || agreeing.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble drawnFor = agreeing.get(agreeing.size() - 1).drawnForMm();
        return drawnFor.isPresent() ? OptionalDouble.of(mm.getAsDouble() - drawnFor.getAsDouble()) : mm;
    }

    /**
     * The amount on a new pattern: what its draft figure lacks of the figure that earlier patterns were made for.
     *
     * @param need the line of the new chart for this measure, by the table or by the flat pattern
     * @return mm; nothing where nothing is proposed
     */
    public OptionalDouble amountFor(Need need) {
        return mm.isEmpty()
                ? mm
                : OptionalDouble.of(
                        need.needMm() + mm.getAsDouble() - need.body().mm());
    }
}
