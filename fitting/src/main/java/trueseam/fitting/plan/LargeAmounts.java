package trueseam.fitting.plan;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.repertoire.Applied;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;

/** Warns of alterations of the repertoire that are larger than their entry takes without a thought. */
final class LargeAmounts {

    private LargeAmounts() {}

    static List<Finding> findings(List<Alteration> alterations, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        for (Alteration alteration : alterations) {
            if (alteration instanceof Applied applied
                    && Math.abs(applied.mm()) > applied.entry().mostMm() + 1e-9) {
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
