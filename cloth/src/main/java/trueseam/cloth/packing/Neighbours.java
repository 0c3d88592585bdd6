package trueseam.cloth.packing;

/**
 * Which copies can reach into a box. The strip is divided into bins both ways; for each it is known, as bits, which copies begin in it or
 * before, and which end in it or behind: what can reach into a box is what all four of its sides agree on.
 */
final class Neighbours {

    private static final int BINS = 64;

    /** How many words of 64 bits hold a bit for each copy. */
    final int words;

    private final long[] leftUpTo;
    private final long[] rightFrom;
    private final long[] lowUpTo;
    private final long[] highFrom;
    private final double perBinY;
    private double perBinX;

    Neighbours(int count, double width) {
        words = (count + 63) / 64;
        leftUpTo = new long[BINS * words];
        rightFrom = new long[BINS * words];
        lowUpTo = new long[BINS * words];
        highFrom = new long[BINS * words];
        perBinY = BINS / width;
        perBinX = perBinY;
    }

    /** From now on the bins are those of a strip so long; all copies must be put anew. */
    void length(double length) {
        perBinX = BINS / length;
    }

    /** Where a place along the strip has its bits. */
    int column(double x) {
        return bin(x * perBinX) * words;
    }

    /** Where a place across the strip has its bits. */
    int row(double y) {
        return bin(y * perBinY) * words;
    }

    private static int bin(double at) {
        return Math.max(0, Math.min(BINS - 1, (int) at));
    }

    /** The bits of one word of those that can reach into a box, given by the columns and rows of its sides. */
    long in(int word, int left, int right, int low, int high) {
        return leftUpTo[right + word] & rightFrom[left + word] & lowUpTo[high + word] & highFrom[low + word];
    }

    /** A copy lies in a box from now on. */
    void put(int i, double left, double right, double low, double high) {
        set(i, column(left), column(right), leftUpTo, rightFrom);
        set(i, row(low), row(high), lowUpTo, highFrom);
    }

    private void set(int i, int begin, int end, long[] upTo, long[] from) {
        int word = i >> 6;
        long bit = 1L << i;
        for (int at = 0; at < upTo.length; at += words) {
            if (at >= begin) {
                upTo[at + word] |= bit;
            } else {
                upTo[at + word] &= ~bit;
            }
            if (at <= end) {
                from[at + word] |= bit;
            } else {
                from[at + word] &= ~bit;
            }
        }
    }
}
