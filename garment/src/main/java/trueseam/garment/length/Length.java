package trueseam.garment.length;

/**
 * A length, kept in millimetres. It may be negative (an amount to take off) or zero.
 *
 * <p>Laws:
 *
 * <ol>
 *   <li>{@code ofInches(x).mm()} is the double nearest to 25.4 x, and so for centimetres;
 *   <li>{@code parse(format.show(l), unit)} is {@code l} to within half of the format's step.
 * </ol>
 *
 * @param mm millimetres, finite; never negative zero
 */
public record Length(double mm) implements Comparable<Length> {

    /**
     * Checks that the number is one.
     *
     * @param mm as of the record
     * @throws IllegalArgumentException when it is infinite or not a number
     */
    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("mm is not a finite number: " + mm);
        }
        mm = mm + 0.0;
    }

    /**
     * A length in millimetres.
     *
     * @param mm millimetres, finite
     * @return that length
     */
    public static Length ofMm(double mm) {
        return new Length(mm);
    }

    /**
     * A length in centimetres.
     *
     * @param cm centimetres, finite
     * @return that length
     */
    public static Length ofCm(double cm) {
        return of(cm, LengthUnit.CENTIMETRE);
    }

    /**
     * A length in inches.
     *
     * @param inches inches, finite
     * @return that length, at 25.4 mm an inch
     */
    public static Length ofInches(double inches) {
        return of(inches, LengthUnit.INCH);
    }

    /**
     * A length in a unit.
     *
     * @param number how many, finite
     * @param unit of what
     * @return that length
     */
    public static Length of(double number, LengthUnit unit) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("number is not finite: " + number);
        }
        return new Length(LengthText.exactMm(number, unit));
    }

    /**
     * Reads a length as a dressmaker writes it: {@code 37 1/2}, {@code 37-1/2 in}, {@code 37.5 in}, {@code 5/8"},
     * {@code 1¼ in}, {@code 95 cm}, {@code 952mm}, {@code 95,2 cm}, {@code -3/8}, {@code 5 ft 6 in}, {@code 1.68 m}.
     *
     * <p>A comma before digits is a decimal comma, never a separator of thousands. Reading is exact: the result is the
     * double nearest to what is written.
     *
     * @param text what is written; blanks around it do not matter
     * @param bareUnit the unit meant when none is written
     * @return the length
     * @throws LengthTextException when the text is not a length
     */
    public static Length parse(String text, LengthUnit bareUnit) {
        return new Length(LengthText.mm(text, bareUnit));
    }

    /**
     * This length in inches.
     *
     * @return inches
     */
    public double inches() {
        return in(LengthUnit.INCH);
    }

    /**
     * This length in a unit.
     *
     * @param unit the unit
     * @return how many of that unit
     */
    public double in(LengthUnit unit) {
        return mm / unit.mm();
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }
}
