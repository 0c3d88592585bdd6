package trueseam.intake.sheet;

/** A file cannot be read, or a line of it cannot be used. */
public final class SheetException extends RuntimeException {
    private final String file;
    private final int line;
    private final String what;

    /**
     * A file that cannot be used because of one line.
     *
     * @param file what the user calls the file
     * @param line the line, from 1; 0 when it is about the whole file
     * @param what what is wrong, what was expected and what to do: one sentence with its full stop
     */
    public SheetException(String file, int line, String what) {
        super(place(file, line) + ": " + what);
        this.file = file;
        this.line = line;
        this.what = what;
    }

    /**
     * How a line of a file is named in findings and errors.
     *
     * @param file what the user calls the file
     * @param line the line, from 1; 0 for the whole file
     * @return such as {@code ann.csv, line 4}
     */
    public static String place(String file, int line) {
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
     * What is wrong.
     *
     * @return one sentence
     */
    public String what() {
        return what;
    }
}
