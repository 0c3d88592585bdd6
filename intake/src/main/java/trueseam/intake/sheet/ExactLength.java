package trueseam.intake.sheet;

import java.math.BigDecimal;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/** Writes a length so that reading it gives the same double back: in the wished unit if that can be, else in mm. */
public final class ExactLength {

    private ExactLength() {}

    /**
     * Writes a length without loss.
     *
     * @param mm millimetres
     * @param wished the unit to write in, if it can show the length exactly
     * @return number and unit
     */
    public static String write(double mm, LengthUnit wished) {
        LengthFormat format = wished == LengthUnit.INCH ? LengthFormat.inches(16) : LengthFormat.usual(wished);
        String shown = format.show(mm);
        return Length.parse(shown, wished).mm() == mm
                ? shown
                : BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString() + " mm";
    }
}
