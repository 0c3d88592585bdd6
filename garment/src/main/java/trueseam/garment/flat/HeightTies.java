package trueseam.garment.flat;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Where a height of the garment lies on one piece. Pieces meet at the lines that are marked on both (waist, bust, hip, knee): a
 * side dart makes a front longer on paper than the back that it is sewn to. Between two such lines heights are shared out evenly,
 * beyond the last they run on as on paper.
 */
final class HeightTies {

    private final NavigableMap<Double, Double> yOfHeight = new TreeMap<>();

    /** Lays a height of the garment on a height of the paper; both must grow together. */
    HeightTies with(double heightMm, double y) {
        yOfHeight.put(heightMm, y);
        return this;
    }

    boolean isEmpty() {
        return yOfHeight.isEmpty();
    }

    double y(double heightMm) {
        return along(yOfHeight, heightMm);
    }

    double heightMm(double y) {
        NavigableMap<Double, Double> inverse = new TreeMap<>();
        yOfHeight.forEach((height, paper) -> inverse.put(paper, height));
        return along(inverse, y);
    }

    private static double along(NavigableMap<Double, Double> ties, double from) {
        Map.Entry<Double, Double> below = ties.floorEntry(from);
        Map.Entry<Double, Double> above = ties.ceilingEntry(from);
        if (below == null) {
            return ties.firstEntry().getValue() + from - ties.firstKey();
        }
        if (above == null) {
            return ties.lastEntry().getValue() + from - ties.lastKey();
        }
        double gap = above.getKey() - below.getKey();
        double share = gap == 0 ? 0 : (from - below.getKey()) / gap;
        return below.getValue() + share * (above.getValue() - below.getValue());
    }
}
