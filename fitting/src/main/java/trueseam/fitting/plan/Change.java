package trueseam.fitting.plan;

import trueseam.garment.measure.Measure;

/**
 * One measure that the plan changes and how the amount is shared.
 *
 * @param measure the measure
 * @param totalMm what the garment is to gain in all, mm
 * @param edges over how many cut edges (girths) or pieces (lengths: 1, the full amount on each) it is shared
 * @param sharedOver what they are, in words
 */
public record Change(Measure measure, double totalMm, int edges, String sharedOver) {

    /**
     * The amount at each edge.
     *
     * @return mm
     */
    public double perEdgeMm() {
        return totalMm / edges;
    }
}
