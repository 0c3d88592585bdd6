package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;

/**
 * Alterations of the repertoire that are larger than their entry takes without a thought: warned of where the pieces take them, refused
 * where they do not.
 */
public final class LargeAmounts {

    private LargeAmounts() {}

    /**
     * Refuses an alteration beyond the largest amount of its entry if, carried out by itself, it does not hold every proof.
     *
     * @param pattern the pattern before any alteration, in right and left pieces if it is asked for one side
     * @param applied the alteration
     * @param show the user's units
     * @throws AlterationException if the pieces cannot take it, with what to do instead
     */
    public static void requireTaken(Pattern pattern, Applied applied, LengthFormat show) {
        if (!isLarge(applied)) {
            return;
        }
        WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
        List<Proof> failures =
                Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures();
        if (!failures.isEmpty()) {
            Proof failed = failures.get(0);
            throw new AlterationException(
                    pattern.name(),
                    applied.entry().name(),
                    applied.mm(),
                    "the pieces cannot take " + show.show(Math.abs(applied.mm()))
                            + ", for it would no longer hold that "
                            + failed.kind().word() + " (" + failed.where() + "); up to "
                            + show.show(applied.entry().mostMm())
                            + " is trusted: take the rest by the next size, or open the piece inside.");
        }
    }

    private static boolean isLarge(Applied applied) {
        return Math.abs(applied.mm()) > applied.entry().mostMm() + 1e-9;
    }

    static List<Finding> findings(List<Alteration> alterations, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        for (Alteration alteration : alterations) {
            if (alteration instanceof Applied applied && isLarge(applied)) {
                findings.add(Finding.warning(
                        applied.entry().name(),
                        show.show(Math.abs(applied.mm())) + " is more than the "
                                + show.show(applied.entry().mostMm())
                                + " that this alteration is usually trusted with; consider the next size line there, or opening the"
                                + " piece inside, and sew a trial garment in any case."));
            }
        }
        return findings;
    }
}
