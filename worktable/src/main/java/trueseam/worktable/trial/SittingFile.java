package trueseam.worktable.trial;

import java.util.List;
import java.util.Map;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetRow;
import trueseam.worktable.project.TrialPart;

/** Writes a sitting as the file that the command line takes (docs/trial-garment.md). */
final class SittingFile {

    private static final List<String> COLUMNS = List.of("seen", "cause", "alteration", "pinned", "as", "side", "note");

    private SittingFile() {}

    static String text(int at, TrialPart.Sitting sitting) {
        String name = "sitting " + (at + 1) + (sitting.date().isEmpty() ? "" : ", " + sitting.date());
        List<SheetRow> rows = sitting.seen().stream()
                .map(seen -> new SheetRow(
                        0,
                        List.of(
                                seen.symptom(),
                                seen.cause(),
                                seen.alteration(),
                                seen.amount(),
                                seen.as(),
                                seen.side(),
                                seen.note())))
                .toList();
        return new Sheet("", Map.of("sitting", name), COLUMNS, rows).text();
    }
}
