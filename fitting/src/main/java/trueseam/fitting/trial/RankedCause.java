package trueseam.fitting.trial;

import java.util.List;

/**
 * A cause with its place among the others.
 *
 * @param cause the cause
 * @param points how much speaks for it; only to be compared within one reading
 * @param isSpokenAgainst whether more answers speak against it than for it
 * @param reasons why it stands there, in words
 * @param remedies what is done about it on this garment, the first to be tried first; empty where nothing in the repertoire does it here
 * @param note what is to be known, or why nothing does it; may be empty
 */
public record RankedCause(
        Cause cause, int points, boolean isSpokenAgainst, List<String> reasons, List<Remedy> remedies, String note) {

    // Immutable.
    public RankedCause {
        reasons = List.copyOf(reasons);
        remedies = List.copyOf(remedies);
    }
}
