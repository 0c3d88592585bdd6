package trueseam.intake.patternfile;

/** A pattern file that cannot be read, or a pattern that no file can hold. The message is one sentence with its place. */
public final class PatternFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final String element;
    private final String what;

    /**
     * A file that cannot be used.
     *
     * @param file what the user calls the file
     * @param line the line, from 1; 0 when it is about the whole file
     * @param element what in the file it is about, such as {@code edge "side" of piece "front"}; empty for the whole file
     * @param what what is wrong, what was expected and what to do: one sentence with its full stop
     */
    public PatternFileException(String file, int line, String element, String what) {
        super(place(file, line) + (element.isEmpty() ? ": " : ", " + element + ": ") + what);
        this.file = file;
        this.line = line;
        this.element = element;
        this.what = what;
    }

    static String place(String file, int line) {
        return line == 0 ? file : file + ", line " + line;
    }

    /**
     * The file.
     *
     * @return what the user calls it
     */
    public String file() {
        return file;
    }

    /**
     * The line.
     *
     * @return from 1; 0 when it is about the whole file
     */
    public int line() {
        return line;
    }

    /**
     * What in the file it is about.
     *
     * @return such as {@code edge "side" of piece "front"}; empty for the whole file
     */
    public String element() {
        return element;
    }

    /**
     * What is wrong.
     *
     * @return one sentence: what was found, what was expected, what to do
     */
    public String what() {
        return what;
    }
}
