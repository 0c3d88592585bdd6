package trueseam.fitting.proof;

import java.util.List;

/**
 * All proofs of an altered pattern.
 *
 * @param proofs each proof, in the order of the design's table
 */
public record FitReport(List<Proof> proofs) {

    // Immutable.
    public FitReport {
        proofs = List.copyOf(proofs);
    }

    /**
     * Whether every proof holds.
     *
     * @return true if the pattern may be cut as it is
     */
    public boolean holds() {
        return failures().isEmpty();
    }

    /**
     * The proofs that do not hold.
     *
     * @return none if the pattern is proven
     */
    public List<Proof> failures() {
        return proofs.stream().filter(p -> !p.holds()).toList();
    }
}
