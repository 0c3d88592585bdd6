package trueseam.garment.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * How lengths are shown: {@code 37 1/2 in}, {@code -5/8 in}, {@code 95.3 cm}, {@code 953 mm}.
 *
 * <p>A length is rounded once, to the nearest step, a half away from zero. The step is 1/8 or 1/16 in, 0.1 cm or 1 mm.
 * The millimetres are taken as their shortest decimal form, so 1.5875 mm, which is 1/16 in, is exactly half of 1/8 in.
 *
 * @param unit the unit shown
 * @param finestFraction for inches 8 or 16, the finest fraction shown; for the metric units 1
 */
public record LengthFormat(LengthUnit unit, int finestFraction) {

    /**
     * Checks that the step exists.
     *
     * @param unit as of the record
     * @param finestFraction as of the record
     * @throws IllegalArgumentException when inches are asked for in other than eighths or sixteenths
     */
    public LengthFormat {
        boolean known = unit == LengthUnit.INCH ? finestFraction == 8 || finestFraction == 16 : finestFraction == 1;
        if (!known) {
            throw new IllegalArgumentException("no such step: 1/" + finestFraction + " " + unit.sign());
        }
    }

    /**
     * Inches to the nearest fraction.
     *
     * @param finestFraction 8 or 16
     * @return that format
     */
    public static LengthFormat inches(int finestFraction) {
        return new LengthFormat(LengthUnit.INCH, finestFraction);
    }

    /**
     * Centimetres to the nearest millimetre.
     *
     * @return that format
     */
    public static LengthFormat centimetres() {
        return new LengthFormat(LengthUnit.CENTIMETRE, 1);
    }

    /**
     * Whole millimetres.
     *
     * @return that format
     */
    public static LengthFormat millimetres() {
        return new LengthFormat(LengthUnit.MILLIMETRE, 1);
    }

    /**
     * The usual format of a unit: eighths of an inch, tenths of a centimetre, whole millimetres.
     *
     * @param unit the unit shown
     * @return that format
     */
    public static LengthFormat usual(LengthUnit unit) {
        return unit == LengthUnit.INCH ? inches(8) : new LengthFormat(unit, 1);
    }

    /**
     * The smallest difference that this format can show.
     *
     * @return mm
     */
    public double stepMm() {
        return unit == LengthUnit.INCH ? LengthUnit.INCH.mm() / finestFraction : 1.0;
    }

    /**
     * Shows a length, with a minus sign when it is negative.
     *
     * @param mm millimetres, finite
     * @return number and unit
     */
    public String show(double mm) {
        return number(mm) + " " + unit.sign();
    }

    /**
     * Shows a length, with a minus sign when it is negative.
     *
     * @param length the length
     * @return number and unit
     */
    public String show(Length length) {
        return show(length.mm());
    }

    /**
     * Shows a change of length: {@code +1/2 in}, {@code -1/2 in}, {@code 0 in}.
     *
     * @param mm millimetres, finite, positive for a gain
     * @return sign, number and unit
     */
    public String showSigned(double mm) {
        String shown = show(mm);
        return mm <= 0 || shown.startsWith("0 ") ? shown : "+" + shown;
    }

    /**
     * Shows the number alone, for a column whose head names the unit.
     *
     * @param mm millimetres, finite
     * @return the number without the unit
     */
    public String number(double mm) {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("mm is not a finite number: " + mm);
        }
        BigInteger steps = BigDecimal.valueOf(mm)
                .divide(stepExactMm(), 0, RoundingMode.HALF_UP)
                .toBigInteger();
        String sign = steps.signum() < 0 ? "-" : "";
        return sign
                + switch (unit) {
                    case INCH -> fraction(steps.abs());
                    case CENTIMETRE -> tenths(steps.abs());
                    case MILLIMETRE -> steps.abs().toString();
                };
    }

    private BigDecimal stepExactMm() {
        return switch (unit) {
            case INCH -> new BigDecimal("25.4").divide(BigDecimal.valueOf(finestFraction));
            case CENTIMETRE, MILLIMETRE -> BigDecimal.ONE;
        };
    }

    private String fraction(BigInteger steps) {
        BigInteger[] wholeAndRest = steps.divideAndRemainder(BigInteger.valueOf(finestFraction));
        int above = wholeAndRest[1].intValueExact();
        if (above == 0) {
            return wholeAndRest[0].toString();
        }
        int below = finestFraction;
        while (above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String part = above + "/" + below;
        return wholeAndRest[0].signum() == 0 ? part : wholeAndRest[0] + " " + part;
    }

    private static String tenths(BigInteger mm) {
        BigInteger[] cmAndMm = mm.divideAndRemainder(BigInteger.TEN);
        return cmAndMm[1].signum() == 0 ? cmAndMm[0].toString() : cmAndMm[0] + "." + cmAndMm[1];
    }
}
