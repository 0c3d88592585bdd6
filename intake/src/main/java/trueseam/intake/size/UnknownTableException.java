package trueseam.intake.size;

import java.util.List;

/** A size table was asked for by a name that none has. */
public final class UnknownTableException extends RuntimeException {
    private final String name;
    private final List<String> known;

    UnknownTableException(String name, List<String> known) {
        super("There is no size table \"" + name + "\"; there are " + String.join(", ", known)
                + ", or give the path of your own table.");
        this.name = name;
        this.known = List.copyOf(known);
    }

    /**
     * The name asked for.
     *
     * @return the name as it was given
     */
    public String name() {
        return name;
    }

    /**
     * The tables there are.
     *
     * @return their names
     */
    public List<String> known() {
        return known;
    }
}
