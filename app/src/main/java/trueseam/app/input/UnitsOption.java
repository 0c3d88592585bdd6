package trueseam.app.input;

import java.util.Locale;
import picocli.CommandLine.Option;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/** {@code --units} and {@code --json}, which every command has. */
public final class UnitsOption {

    /** The units that lengths are shown in. */
    public enum Units {
        /** Inches and eighths. */
        in,
        /** Centimetres. */
        cm,
        /** Millimetres. */
        mm
    }

    @Option(
            names = "--units",
            paramLabel = "in|cm|mm",
            defaultValue = "in",
            description = "Units that lengths are shown in, and that a number without a unit is read in: in, cm or mm"
                    + " (default: ${DEFAULT-VALUE}).")
    private Units units;

    @Option(names = "--sixteenths", description = "Show inches to the nearest sixteenth instead of the nearest eighth.")
    private boolean sixteenths;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    /** For the command line. */
    public UnitsOption() {}

    /**
     * How lengths are shown.
     *
     * @return the format
     */
    public LengthFormat format() {
        return switch (units) {
            case in -> LengthFormat.inches(sixteenths ? 16 : 8);
            case cm -> LengthFormat.centimetres();
            case mm -> LengthFormat.millimetres();
        };
    }

    /**
     * The unit of a bare number.
     *
     * @return the unit
     */
    public LengthUnit bareUnit() {
        return switch (units) {
            case in -> LengthUnit.INCH;
            case cm -> LengthUnit.CENTIMETRE;
            case mm -> LengthUnit.MILLIMETRE;
        };
    }

    /**
     * The units, as a word.
     *
     * @return in, cm or mm
     */
    public String word() {
        return units.name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether the result is wanted as JSON.
     *
     * @return true for JSON
     */
    public boolean json() {
        return json;
    }
}
