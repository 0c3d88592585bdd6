package trueseam.fitting.proof;

import java.util.Locale;

/**
 * One proof: what was measured on the finished pattern and how far it may be off.
 *
 * @param kind what is proved
 * @param where piece, edge, seam or level
 * @param value how far it is off, in the unit
 * @param bound how far it may be off, in the unit
 * @param unit {@code mm} or {@code degrees}, or {@code crossings}
 * @param remark what was compared, in a few words
 */
public record Proof(Kind kind, String where, double value, double bound, String unit, String remark) {

    /** What can be proved. */
    public enum Kind {
        /** A traced edge has the length and shape of the original. */
        CONGRUENT("traced edges keep their shape"),
        /** A changed level measures what it should. */
        TARGET("changed measures reach their target"),
        /** A seam walks as it did before. */
        WALK("seams still walk"),
        /** Ends that meet when sewn are level. */
        LEVEL("ends that meet are level"),
        /** The cap is as much longer than the armhole as before, or as asked. */
        CAP("cap ease is as before"),
        /** The outline does not cross itself. */
        SIMPLE("outlines do not cross"),
        /** Dart legs are equal. */
        DART("dart legs are equal"),
        /** Edges run on smoothly across sewn seams. */
        SMOOTH("edges run smooth across seams");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * What is proved, in words.
         *
         * @return a few words
         */
        public String word() {
            return word;
        }
    }

    /**
     * Whether it holds.
     *
     * @return true if not farther off than allowed
     */
    public boolean holds() {
        return Math.abs(value) <= bound;
    }

    /**
     * The proof in one sentence.
     *
     * @return what, where, how far off, how far allowed
     */
    public String sentence() {
        return String.format(
                Locale.ROOT,
                "%s: %s is off by %.4g %s (%.4g allowed): %s.",
                where,
                kind.word(),
                Math.abs(value),
                unit,
                bound,
                remark);
    }
}
