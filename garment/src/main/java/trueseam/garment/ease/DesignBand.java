package trueseam.garment.ease;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.table.ResourceTable;

/**
 * A band of whole ease by which a style is called fitted or loose.
 *
 * @param style what is worn
 * @param name the band's name in the trade
 * @param fromMm the least ease of the band, mm
 * @param toMm the most, mm; infinite for the loosest band
 */
public record DesignBand(Style style, String name, double fromMm, double toMm) {

    /** Far below what a tape shows: 3 in computed as a difference must still count as 3 in. */
    private static final double ROUNDING_MM = 1e-6;

    private static final List<DesignBand> STANDARD = readStandard();

    /** What is worn; a jacket goes over a blouse and a coat over a jacket, so they need more. */
    public enum Style {
        /** Dress, blouse, shirt or top: ease at the bust. */
        DRESS,
        /** Lined jacket: ease at the bust. */
        JACKET,
        /** Coat: ease at the bust. */
        COAT,
        /** Skirt or trousers: ease at the hip. */
        SKIRT_OR_TROUSERS
    }

    /**
     * The bands of a style, from close to loose.
     *
     * @param style what is worn
     * @return its bands
     */
    public static List<DesignBand> of(Style style) {
        return STANDARD.stream().filter(band -> band.style() == style).toList();
    }

    /**
     * The band that a garment's whole ease falls into. Between two bands it is the lower one; below the first, the first.
     *
     * @param style what is worn
     * @param easeMm whole ease, mm
     * @return the band
     */
    public static DesignBand of(Style style, double easeMm) {
        List<DesignBand> bands = of(style);
        return bands.stream()
                .filter(band -> band.startsAtOrBelow(easeMm))
                .max(Comparator.comparingDouble(DesignBand::fromMm))
                .orElse(bands.get(0));
    }

    /** A band without upper end starts just above its lower one: over 8 in, not from 8 in. */
    private boolean startsAtOrBelow(double easeMm) {
        return toMm == Double.POSITIVE_INFINITY ? fromMm + ROUNDING_MM < easeMm : fromMm <= easeMm + ROUNDING_MM;
    }

    private static List<DesignBand> readStandard() {
        return ResourceTable.read(DesignBand.class, "design-ease.csv").stream()
                .map(DesignBand::read)
                .toList();
    }

    private static DesignBand read(Map<String, String> line) {
        String to = line.get("to");
        return new DesignBand(
                Style.valueOf(line.get("style")),
                line.get("band"),
                Length.parse(line.get("from"), LengthUnit.INCH).mm(),
                to.isEmpty()
                        ? Double.POSITIVE_INFINITY
                        : Length.parse(to, LengthUnit.INCH).mm());
    }
}
