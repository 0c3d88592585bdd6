package trueseam.intake.drawing;

/** A file that cannot be read as a drawing at all: one sentence with file and place. */
public class DrawingException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * What is wrong.
     *
     * @param file what the file is called
     * @param place line, element or page; empty if it is the whole file
     * @param what what was found, what was expected, what to do
     */
    public DrawingException(String file, String place, String what) {
        super(file + (place.isEmpty() ? "" : ", " + place) + ": " + what);
    }
}
