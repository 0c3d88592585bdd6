package trueseam.garment.measure;

import java.util.Optional;

/** A measure was asked for by a name that none has. */
public final class UnknownMeasureException extends RuntimeException {
    private final String name;
    private final Optional<Measure> nearest;

    UnknownMeasureException(String name, Optional<Measure> nearest) {
        super("\"" + name + "\" is not a measure this program knows"
                + nearest.map(measure -> "; did you mean \"" + measure.term() + "\"?")
                        .orElse("; write it by its standard term or workroom label, for example \"bust girth\"."));
        this.name = name;
        this.nearest = nearest;
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
     * The measure whose name is most like it.
     *
     * @return the measure, or empty when none is near
     */
    public Optional<Measure> nearest() {
        return nearest;
    }
}
