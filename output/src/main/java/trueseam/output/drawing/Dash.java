package trueseam.output.drawing;

/** How a line is broken. The four are told apart without colour. */
public enum Dash {
    /** Unbroken: common practice for cutting lines. */
    SOLID(),
    /** Strokes: common practice for stitching lines. */
    DASHED(4, 2),
    /** Short strokes, for what was there before. */
    SHORT_DASHED(1.6, 1.4),
    /** Strokes and dots by turns: centre and fold lines. */
    DASH_DOT(6, 1.4, 0.6, 1.4),
    /** Dots. */
    DOTTED(0.5, 1.5);

    private final double[] onOffMm;

    Dash(double... onOffMm) {
        this.onOffMm = onOffMm;
    }

    int count() {
        return onOffMm.length;
    }

    double onOffMm(int i) {
        return onOffMm[i];
    }
}
