package trueseam.output.figure;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How much of the figure is shown: all of it, or what lies about a tape, so that a wrist is not drawn as small as a stature.
 *
 * @param top its upper edge, mm over the floor
 * @param bottom its lower edge; a little below the floor where the feet are shown
 */
record Crop(double top, double bottom) {
    /** Shown beyond the tape, so that one sees where on the body it is; mm. */
    private static final double ABOUT_MM = 230;

    /** Room over the head, and under the floor for the feet. */
    private static final double EDGE_MM = 42;

    /** Less than this share of the figure is not shown. */
    private static final double LEAST_SHARE = 0.52;

    static Crop whole(Form form) {
        return new Crop(form.mm(FigureSize.STATURE) + EDGE_MM, -EDGE_MM);
    }

    /** Never through the head or the feet. */
    static Crop to(TapePath path, Form form) {
        Crop whole = whole(form);
        DoubleSummaryStatistics y = Stream.of(path.strokes(), path.levels())
                .flatMap(List::stream)
                .flatMap(List::stream)
                .flatMapToDouble(spot -> DoubleStream.of(spot.y()))
                .summaryStatistics();
        double least = LEAST_SHARE * whole.high();
        double top = y.getMax() + ABOUT_MM > form.mm(FigureSize.ARMPIT) ? whole.top : y.getMax() + ABOUT_MM;
        double bottom = Math.min(y.getMin() - ABOUT_MM, top - least);
        if (bottom < form.mm(FigureSize.ANKLE) + EDGE_MM) {
            bottom = whole.bottom;
            top = Math.max(top, bottom + least);
            top = top > form.mm(FigureSize.ARMPIT) ? whole.top : top;
        }
        return new Crop(top, bottom);
    }

    double high() {
        return top - bottom;
    }
}
