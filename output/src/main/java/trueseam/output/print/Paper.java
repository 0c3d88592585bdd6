package trueseam.output.print;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is printed on. */
public sealed interface Paper {

    /** A4 upright (ISO 216). */
    Paper A4 = new Sheet("A4", 210, 297, true);

    /** US Letter upright (ANSI/ASME Y14.1), 8 1/2 by 11 in. */
    Paper LETTER = new Sheet("US Letter", 215.9, 279.4, true);

    /** A3 upright (ISO 216). */
    Paper A3 = new Sheet("A3", 297, 420, true);

    /** A0 upright (ISO 216). */
    Paper A0 = new Sheet("A0", 841, 1189, false);

    /**
     * Sheets of one size.
     *
     * @param name what they are called
     * @param widthMm width, mm
     * @param heightMm height, mm
     * @param tiled whether sheets are put together to larger ones; if not, each piece is kept on one sheet as long as it fits
     */
    record Sheet(String name, double widthMm, double heightMm, boolean tiled) implements Paper {}

    /**
     * One sheet as long as it needs to be, off a roll.
     *
     * @param widthMm width of the roll, mm
     */
    record Roll(double widthMm) implements Paper {

        /** The narrowest roll that page one fits on, mm. */
        public static final double NARROWEST_MM = 210;

        /** The widest roll, mm: none is made wider for plotters (common practice). */
        public static final double WIDEST_MM = 3000;

        // Neither a till roll nor a mistake of units.
        public Roll {
            if (!(NARROWEST_MM <= widthMm && widthMm <= WIDEST_MM)) {
                throw new IllegalArgumentException("A roll " + widthMm + " mm wide is not possible; give "
                        + NARROWEST_MM + " to " + WIDEST_MM + " mm.");
            }
        }

        @Override
        public String name() {
            return "one sheet " + Math.round(widthMm) + " mm wide";
        }
    }

    /**
     * What it is called.
     *
     * @return for example {@code A4}
     */
    String name();

    /**
     * Its width.
     *
     * @return mm
     */
    double widthMm();

    /**
     * The paper of a word.
     *
     * @param word {@code a4}, {@code letter}, {@code a3} or {@code a0}, in any case
     * @return the paper, or nothing if there is none of that word; rolls have widths instead
     */
    static Optional<Paper> ofWord(String word) {
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> Optional.of(A4);
            case "letter", "us letter" -> Optional.of(LETTER);
            case "a3" -> Optional.of(A3);
            case "a0" -> Optional.of(A0);
            default -> Optional.empty();
        };
    }

    /**
     * The sheets that have a word.
     *
     * @return A4, US Letter, A3, A0
     */
    static List<Paper> sheets() {
        return List.of(A4, LETTER, A3, A0);
    }
}
