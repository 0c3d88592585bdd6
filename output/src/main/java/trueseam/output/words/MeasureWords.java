package trueseam.output.words;

import java.util.Locale;
import trueseam.garment.body.Origin;
import trueseam.garment.measure.Measure;

/** How measures are called on every sheet. */
public final class MeasureWords {

    private MeasureWords() {}

    /**
     * The workroom's label.
     *
     * @param measure the measure
     * @return with a capital, for example {@code Full bust}
     */
    public static String label(Measure measure) {
        return capital(measure.workroomLabel());
    }

    /**
     * Where a body's measure comes from.
     *
     * @param origin the origin
     * @return a few words
     */
    public static String origin(Origin origin) {
        return switch (origin) {
            case TAPED -> "taped";
            case TABLE -> "from a size table";
            case STAND_IN -> "stand-in";
            case ESTIMATED -> "estimated";
        };
    }

    /**
     * A sentence or title with a capital.
     *
     * @param text in lower case
     * @return the same with its first letter large
     */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
