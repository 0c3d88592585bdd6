package trueseam.output.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.need.ClothChange;
import trueseam.cloth.need.Needed;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/** Lengths of cloth as a shop cuts them. */
public final class ClothWords {

    private static final double YARD_MM = 914.4;

    private ClothWords() {}

    /**
     * A length that was rounded up to what shops cut.
     *
     * @param mm millimetres
     * @param show the user's unit
     * @return yards in eighths for inches, such as {@code 1 5/8 yd}; else metres, such as {@code 1.45 m}
     */
    public static String buy(double mm, LengthFormat show) {
        if (show.unit() != LengthUnit.INCH) {
            return String.format(Locale.ROOT, "%.2f m", mm / 1000);
        }
        long eighths = Math.round(mm / YARD_MM * 8);
        long whole = eighths / 8;
        long left = eighths % 8;
        if (left == 0) {
            return whole + " yd";
        }
        long of = 8;
        while (left % 2 == 0) {
            left /= 2;
            of /= 2;
        }
        return (whole == 0 ? "" : whole + " ") + left + "/" + of + " yd";
    }

    /**
     * A width as it stands on the bolt.
     *
     * @param mm millimetres
     * @return in centimetres where they are whole, such as {@code 115 cm}, else in inches, such as {@code 45 in}
     */
    public static String sold(double mm) {
        return mm % 10 == 0
                ? Math.round(mm / 10) + " cm"
                : LengthFormat.inches(8).show(mm);
    }

    /**
     * What is doubtful about a layout, a remnant that is too short in the user's unit.
     *
     * @param lay the layout
     * @param show the user's unit
     * @return sentences with their places
     */
    public static List<String> notes(Lay lay, LengthFormat show) {
        List<String> notes = new ArrayList<>();
        for (Finding finding : lay.findings()) {
            boolean tooShort = lay.missingMm() > 0 && finding.severity() == Severity.WARNING;
            notes.add(
                    tooShort && finding.place().equals("cloth")
                            ? "cloth: It takes " + show.show(lay.neededMm()) + " and "
                                    + show.show(lay.missingMm())
                                    + " are missing; search longer, allow a smaller gap, or cut facings from something else."
                            : finding.place() + ": " + finding.sentence());
        }
        return List.copyOf(notes);
    }

    /**
     * What alterations do to the length of cloth.
     *
     * @param change both layouts
     * @param show the user's unit
     * @return a sentence
     */
    public static String change(ClothChange change, LengthFormat show) {
        return "On cloth " + show.show(change.cloth().widthMm()) + " wide, "
                + change.cloth().layers().words() + ", the altered pieces take "
                + show.show(change.after().neededMm()) + " (buy " + buy(change.after(), show)
                + "), the original ones " + show.show(change.before().neededMm()) + " ("
                + buy(change.before(), show) + "); a longer search (trueseam lay) may need a little less.";
    }

    /**
     * How much to buy.
     *
     * @param needed what a layout takes
     * @param show the user's unit
     * @return rounded up to what shops cut
     */
    public static String buy(Needed needed, LengthFormat show) {
        return buy(needed.toBuyMm(shop(show)), show);
    }

    /**
     * In what steps a shop cuts.
     *
     * @param show the user's unit
     * @return eighths of a yard for inches, else five centimetres
     */
    public static CutLength shop(LengthFormat show) {
        return show.unit() == LengthUnit.INCH ? CutLength.EIGHTH_YARD : CutLength.FIVE_CM;
    }
}
