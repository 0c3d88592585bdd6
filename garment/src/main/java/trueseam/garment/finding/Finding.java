package trueseam.garment.finding;

/**
 * One thing noticed about an input or a result.
 *
 * @param severity how grave it is
 * @param place what it is about: file and line, or piece and edge, or measure; never blank
 * @param sentence what was found, what was expected and what to do, in one sentence; never blank
 */
public record Finding(Severity severity, String place, String sentence) {

    /**
     * Checks that there is a place and a sentence.
     *
     * @param severity as of the record
     * @param place as of the record
     * @param sentence as of the record
     * @throws IllegalArgumentException when either is blank
     */
    public Finding {
        if (place.isBlank()) {
            throw new IllegalArgumentException("place is blank for: " + sentence);
        }
        if (sentence.isBlank()) {
            throw new IllegalArgumentException("sentence is blank at: " + place);
        }
    }

    /**
     * Something good to know.
     *
     * @param place what it is about
     * @param sentence what was found
     * @return a finding of severity {@link Severity#NOTE}
     */
    public static Finding note(String place, String sentence) {
        return new Finding(Severity.NOTE, place, sentence);
    }

    /**
     * Something doubtful.
     *
     * @param place what it is about
     * @param sentence what was found
     * @return a finding of severity {@link Severity#WARNING}
     */
    public static Finding warning(String place, String sentence) {
        return new Finding(Severity.WARNING, place, sentence);
    }

    /**
     * Something wrong or unproved.
     *
     * @param place what it is about
     * @param sentence what was found
     * @return a finding of severity {@link Severity#FAILURE}
     */
    public static Finding failure(String place, String sentence) {
        return new Finding(Severity.FAILURE, place, sentence);
    }

    /**
     * The same finding about a place that is described more closely, such as a line of a file.
     *
     * @param newPlace the place to name instead
     * @return this finding at that place
     */
    public Finding at(String newPlace) {
        return new Finding(severity, newPlace, sentence);
    }
}
