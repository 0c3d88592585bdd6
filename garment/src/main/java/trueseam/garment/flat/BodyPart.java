package trueseam.garment.flat;

import java.util.Locale;

/** The parts of a body that a garment goes round, each with its own scale of heights. */
public enum BodyPart {
    /** Chest to hem round the body; heights count from the waist, plus upwards. */
    TRUNK,
    /** One leg; heights count from the crotch. */
    LEG,
    /** One arm, hanging; heights count from the shoulder point, where the crown of the sleeve lies. */
    ARM;

    /**
     * The word shown and written.
     *
     * @return for example {@code trunk}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * What its heights count from.
     *
     * @return for example {@code the waist}
     */
    public String zero() {
        return switch (this) {
            case TRUNK -> "the waist";
            case LEG -> "the crotch";
            case ARM -> "the shoulder point";
        };
    }
}
