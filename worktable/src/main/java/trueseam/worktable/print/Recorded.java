package trueseam.worktable.print;

import java.time.LocalDate;
import java.util.Optional;
import trueseam.fitting.plan.FitResult;
import trueseam.records.project.KeptFit;
import trueseam.records.project.KeptPrint;
import trueseam.worktable.page.Frame;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;
import trueseam.worktable.work.Outcome;

/** Puts into the record book what was given away: the fit with its report and altered pattern, and that it was printed. */
final class Recorded {

    private Recorded() {}

    /** Nothing before there is a fit: the pattern as bought is nobody's fit. */
    static void keep(Visit visit, Printing printing, Leaf leaf, LocalDate today) {
        Outcome<FitResult> fit = printing.fit();
        if (!leaf.isForTheCuttingTable() || !fit.isThere()) {
            return;
        }
        Frame frame = visit.frame(Step.PRINT);
        Outcome<byte[]> report = printing.file(Leaf.REPORT, today);
        Outcome<byte[]> altered = printing.file(Leaf.ALTERED, today);
        if (!report.isThere()) {
            return;
        }
        visit.desk().shelf().drawer().together(all -> {
            KeptFit kept = all.fits()
                    .keep(new KeptFit(
                            "",
                            frame.id(),
                            frame.version(),
                            fit.get().report().holds(),
                            all.files().keep(report.get()),
                            altered.isThere() ? Optional.of(all.files().keep(altered.get())) : Optional.empty(),
                            0));
            return all.fits()
                    .printed(new KeptPrint(
                            "",
                            frame.id(),
                            kept.id(),
                            leaf.word(),
                            String.valueOf(visit.project().print().choices()),
                            0));
        });
    }
}
