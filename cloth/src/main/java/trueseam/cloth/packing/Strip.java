package trueseam.cloth.packing;

import java.util.List;

/**
 * A strip of fixed width, and what is to be laid on it so that as little of its length is used as can be.
 *
 * @param width how wide it is, mm
 * @param parts what is to be laid
 * @param fixed what already lies on it and stays: pieces by hand, flaws of the cloth; each refers to a part
 */
public record Strip(double width, List<StripPart> parts, List<Fixed> fixed) {

    /** Checks. */
    public Strip {
        parts = List.copyOf(parts);
        fixed = List.copyOf(fixed);
        if (!(width > 0)) {
            throw new IllegalArgumentException("a strip must be wider than 0, and is " + width);
        }
    }

    /**
     * One copy of a part that stays where it is.
     *
     * @param placed which part, how and where
     * @param flaw whether it is no piece but a flaw: it may lie partly beside the strip, is no use of length, and is not one of the copies
     */
    public record Fixed(Placed placed, boolean flaw) {}
}
