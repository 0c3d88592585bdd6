package trueseam.worktable.table;

import java.util.List;
import trueseam.fitting.proof.FitReport;
import trueseam.output.words.ProofWords;

/**
 * What the proofs say.
 *
 * @param holds whether every one holds
 * @param headline one sentence
 * @param failures those that fail, a sentence each
 * @param kinds kind by kind, a sentence each
 */
public record ProofsView(boolean holds, String headline, List<String> failures, List<String> kinds) {

    /** Before there is a fit. */
    static final ProofsView NONE = new ProofsView(false, "", List.of(), List.of());

    /** Does not change. */
    public ProofsView {
        failures = List.copyOf(failures);
        kinds = List.copyOf(kinds);
    }

    static ProofsView of(FitReport report) {
        return new ProofsView(
                report.holds(), ProofWords.headline(report), ProofWords.failures(report), ProofWords.kinds(report));
    }
}
