package trueseam.fitting.sizing;

/** A size cannot be chosen because body and table have no deciding measure in common. */
public class NoSizeException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String table;
    private final String body;

    /**
     * Says what is missing.
     *
     * @param table the size table
     * @param body the body's label
     * @param wanted the measure that would decide
     */
    public NoSizeException(String table, String body, String wanted) {
        super("No size of table \"" + table + "\" can be chosen for " + body + ": the " + wanted
                + " is missing in the body or in the table; measure it, or name the size yourself.");
        this.table = table;
        this.body = body;
    }

    /**
     * The table.
     *
     * @return its name
     */
    public String table() {
        return table;
    }

    /**
     * The body.
     *
     * @return its label
     */
    public String body() {
        return body;
    }
}
