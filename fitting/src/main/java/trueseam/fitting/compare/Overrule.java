package trueseam.fitting.compare;

import java.util.Optional;
import java.util.OptionalDouble;

/** The dressmaker's own decision about one measure; it goes before every rule. */
public sealed interface Overrule {

    /** Leave it as it is. */
    record Leave() implements Overrule {}

    /** Alter it by the whole difference. */
    record Alter() implements Overrule {}

    /**
     * Alter it by so much.
     *
     * @param mm total, plus for larger
     */
    record Amount(double mm) implements Overrule {}

    /**
     * Do as her earlier patterns agree: by an amount, or as the rule says where that comes to the same.
     *
     * @param mm total, plus for larger, 0 to leave it; nothing where the rule's own decision agrees
     * @param words the evidence, for the chart
     */
    record Standing(OptionalDouble mm, String words) implements Overrule {}

    /**
     * It was settled by the fit before, and what was pinned on the trial garment comes on top.
     *
     * @param decision what was decided then, with what was pinned
     * @param kept her decision of then, or that of earlier patterns, where no pin changed it
     */
    record Settled(Decision decision, Optional<Overrule> kept) implements Overrule {

        /**
         * Whether a pin decided.
         *
         * @return true if it is altered by more or less than was decided then
         */
        public boolean isPinned() {
            return kept.isEmpty() && decision.overruled() && decision.isAltered();
        }
    }
}
