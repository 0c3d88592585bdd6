package trueseam.cloth.proof;

import java.util.List;

/**
 * Something that makes a layout one that cannot be cut.
 *
 * @param kind what is wrong
 * @param pieces the places in the layout's list of the one or two pieces concerned
 * @param amount how much: mm, for {@link Kind#ON_EACH_OTHER} mm2, for {@link Kind#OFF_GRAIN} mm in a metre; 0 where there is no amount
 */
public record LayFault(Kind kind, List<Integer> pieces, double amount) {

    /** Does not change. */
    public LayFault {
        pieces = List.copyOf(pieces);
    }

    /** What can be wrong. */
    public enum Kind {
        /** Two pieces overlap. */
        ON_EACH_OTHER,
        /** Two cutting lines lie nearer than the gap; the amount is how far apart they are. */
        TOO_NEAR,
        /** A piece lies partly beside the cloth. */
        OFF_CLOTH,
        /** A piece is turned off the grain by more than is allowed. */
        OFF_GRAIN,
        /** A piece lies head to tail on cloth with one way up. */
        HEAD_TO_TAIL,
        /** A piece to be cut on the fold does not lie at it. */
        OFF_FOLD,
        /** A piece covers a flaw. */
        ON_FLAW,
        /** A piece is matched and lies off a crosswise stripe. */
        OFF_CROSSWISE_STRIPE,
        /** A piece is matched and its grainline lies off a lengthwise stripe. */
        OFF_LENGTHWISE_STRIPE
    }
}
