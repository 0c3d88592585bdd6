package trueseam.garment.size;

/** A size table does not hold what was asked of it, or contradicts itself. */
public final class SizeTableException extends RuntimeException {
    private final String table;
    private final String wanted;

    SizeTableException(String table, String wanted, String sentence) {
        super(sentence);
        this.table = table;
        this.wanted = wanted;
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
     * What was asked for: a size or a measure's term.
     *
     * @return the thing wanted
     */
    public String wanted() {
        return wanted;
    }
}
