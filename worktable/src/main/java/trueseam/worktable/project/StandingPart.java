package trueseam.worktable.project;

import java.util.ArrayList;
import java.util.List;

/**
 * What was brought of earlier patterns.
 *
 * @param reports the reports of earlier fits, in the order brought
 * @param off whether they are only looked at and not taken into the fit
 */
public record StandingPart(List<Report> reports, boolean off) {

    /**
     * The report of an earlier fit.
     *
     * @param file its shelf mark
     * @param fileName what the file was called
     */
    public record Report(String file, String fileName) {}

    /** What is not there is empty. */
    public StandingPart {
        reports = reports == null ? List.of() : List.copyOf(reports);
    }

    /**
     * Nothing brought.
     *
     * @return nothing
     */
    public static StandingPart empty() {
        return new StandingPart(List.of(), false);
    }

    /**
     * The same with one report more; a file that is there already is not brought twice.
     *
     * @param report the report
     * @return the reports
     */
    public StandingPart with(Report report) {
        if (reports.stream().anyMatch(one -> one.file().equals(report.file()))) {
            return this;
        }
        List<Report> all = new ArrayList<>(reports);
        all.add(report);
        return new StandingPart(all, off);
    }

    /**
     * The same without one report.
     *
     * @param file its shelf mark
     * @return the reports
     */
    public StandingPart without(String file) {
        return new StandingPart(
                reports.stream().filter(one -> !one.file().equals(file)).toList(), off);
    }
}
