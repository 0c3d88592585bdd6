package trueseam.app.input;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.fitting.standing.Standing;
import trueseam.garment.body.Body;
import trueseam.garment.earlier.EarlierFit;
import trueseam.intake.report.FitReportFile;

/** {@code --standing}, the reports of earlier fits, and {@code --made}, the day. */
public final class EarlierOption {

    @Option(
            names = "--standing",
            paramLabel = "REPORT.json",
            split = ",",
            description =
                    "The report.json of an earlier fit of the same person: what two or more of them agree on is taken into"
                            + " this fit where its own comparison does not already bring it about. May be given several times.")
    private List<Path> reports = List.of();

    @Option(
            names = "--made",
            paramLabel = "DATE",
            description = "The day of this fit, such as 2026-03-09. Default: today.")
    private String made;

    /** For the command line. */
    public EarlierOption() {}

    /**
     * What the earlier reports propose.
     *
     * @param body the body as it is now
     * @return the proposals, or nothing if no report was named
     */
    public Optional<Standing> standing(Optional<Body> body) {
        return reports.isEmpty() ? Optional.empty() : Optional.of(Standing.of(read(reports), body));
    }

    /**
     * The day of the fit.
     *
     * @return the day that was given, or today
     */
    public LocalDate today() {
        return made == null ? LocalDate.now(ZoneId.systemDefault()) : day("--made", made);
    }

    /**
     * Reads a day.
     *
     * @param option what the option is called
     * @param written what was given
     * @return the day
     * @throws InputException if it is no date
     */
    public static LocalDate day(String option, String written) {
        try {
            return LocalDate.parse(written.strip());
        } catch (DateTimeException e) {
            throw new InputException(option + " \"" + written + "\" is not a date; write it as 2026-03-09.");
        }
    }

    /**
     * Reads reports.
     *
     * @param files report.json files
     * @return the earlier fits
     */
    public static List<EarlierFit> read(List<Path> files) {
        List<EarlierFit> fits = new ArrayList<>();
        for (Path file : files) {
            fits.add(FitReportFile.read(file.toString(), Texts.read(file)));
        }
        return fits;
    }
}
