package trueseam.output.profile;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

/**
 * Lengths laid along a line of the drawing.
 *
 * @param fromMm the length at its start
 * @param toMm the length at its end
 * @param start where it starts on the drawing
 * @param end where it ends
 */
record Axis(double fromMm, double toMm, double start, double end) {

    private static final List<Double> INCHES = List.of(0.25, 0.5, 1.0, 2.0, 4.0, 8.0, 16.0);
    private static final List<Double> CENTIMETRES = List.of(0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0);
    private static final double INCH_MM = 25.4;
    private static final double CENTIMETRE_MM = 10;

    double at(double mm) {
        return start + (mm - fromMm) / (toMm - fromMm) * (end - start);
    }

    /** Round lengths along it, no more than asked for. */
    List<Double> ticks(int most, LengthFormat show) {
        double step = step(most, show);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(fromMm / step - 1e-9); i * step <= toMm + 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    private double step(int most, LengthFormat show) {
        boolean inches = show.unit() == LengthUnit.INCH;
        double step = 0;
        for (double round : inches ? INCHES : CENTIMETRES) {
            step = round * (inches ? INCH_MM : CENTIMETRE_MM);
            if ((toMm - fromMm) / step <= most) {
                return step;
            }
        }
        return step;
    }
}
