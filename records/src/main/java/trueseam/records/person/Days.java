package trueseam.records.person;

import java.util.List;

/** The measuring days of the people of one owner. Safe for use by several threads. */
public interface Days {

    /**
     * All days of a person, those of her projects and those written at the person together. The same date is one day: of each
     * measure then the reading counts that was written last.
     *
     * @param personId her mark
     * @return the days, those without a date first, then by date
     */
    List<MeasuringDay> of(String personId);

    /**
     * Puts the days of one project in place of those that it had.
     *
     * @param projectId the project's mark
     * @param personId the person's mark
     * @param days the days
     */
    void replaceOf(String projectId, String personId, List<MeasuringDay> days);

    /**
     * Puts the days written at the person herself, without a project, in place of those that were.
     *
     * @param personId her mark
     * @param days the days
     */
    void replaceOwn(String personId, List<MeasuringDay> days);

    /**
     * The days written at the person herself, without a project.
     *
     * @param personId her mark
     * @return the days, in their order
     */
    List<MeasuringDay> own(String personId);

    /**
     * How a measure went over the days.
     *
     * @param personId her mark
     * @param measure the measure's standard term
     * @return the readings that are lengths, in the order of {@link #of}
     */
    List<TrendPoint> trend(String personId, String measure);
}
