package trueseam.app.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import trueseam.fitting.trial.Pinned;
import trueseam.fitting.trial.PinnedException;
import trueseam.fitting.trial.PinnedLine;
import trueseam.fitting.trial.Sitting;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetException;
import trueseam.intake.sheet.SheetRow;

/** {@code --pinned}: what was seen and pinned on the trial garment, one file a sitting. */
public final class PinnedOption {

    private static final List<String> COLUMNS = Stream.concat(
                    Stream.of(PinnedException.Field.values())
                            .map(field -> field.name().toLowerCase(Locale.ROOT)),
                    Stream.of("note"))
            .toList();

    @Option(
            names = "--pinned",
            paramLabel = "FILE",
            description =
                    "What was pinned on the trial garment of the fit without it, a CSV file (header seen,cause,alteration,pinned,as,"
                            + "side,note); it comes on top of what was altered. A second sitting's file is given after the first.")
    private List<Path> files = List.of();

    /** For the command line. */
    public PinnedOption() {}

    /**
     * Reads the sittings.
     *
     * @param pattern what the trial garment was cut from
     * @param unit the unit of a number without one
     * @return one for each file, in the order given
     * @throws InputException with file, line and column, if something cannot be read
     */
    public List<Sitting> sittings(Pattern pattern, LengthUnit unit) {
        return files.stream().map(file -> sitting(file, pattern, unit)).toList();
    }

    private static Sitting sitting(Path file, Pattern pattern, LengthUnit unit) {
        String name = String.valueOf(file.getFileName());
        Sheet sheet = Sheet.read(name, Texts.read(file));
        sheet.needColumn("pinned");
        for (String column : sheet.header()) {
            if (COLUMNS.stream().noneMatch(column::equalsIgnoreCase)) {
                throw new InputException(name + ": the column \"" + column + "\" is not known; columns are "
                        + String.join(", ", COLUMNS) + ".");
            }
        }
        List<Pinned> findings = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            String place = SheetException.place(name, row.line());
            if (row.cells().size() > sheet.header().size()) {
                throw new InputException(
                        place + ": the line has more cells than the header; put a note with commas in" + " quotes.");
            }
            List<String> cells = COLUMNS.stream()
                    .map(column -> cell(row, sheet.column(column)))
                    .collect(Collectors.toList());
            PinnedLine line = new PinnedLine(
                    cells.get(0), cells.get(1), cells.get(2), cells.get(3), cells.get(4), cells.get(5), cells.get(6));
            try {
                findings.add(line.read(pattern, unit));
            } catch (PinnedException e) {
                throw new InputException(
                        place + ", " + e.field().name().toLowerCase(Locale.ROOT) + ": " + e.getMessage());
            }
        }
        return new Sitting(sheet.remarks().getOrDefault("sitting", name), findings);
    }

    private static String cell(SheetRow row, OptionalInt column) {
        return column.isPresent() ? row.cell(column.getAsInt()) : "";
    }
}
