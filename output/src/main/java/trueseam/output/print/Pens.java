package trueseam.output.print;

import trueseam.output.drawing.Dash;
import trueseam.output.drawing.Pen;

/** The lines of a printed pattern, told apart by thickness and breaks: none needs colour. */
final class Pens {

    static final Pen CUTTING = Pen.of(0.6);
    static final Pen STITCHING = Pen.of(0.35).with(Dash.DASHED);
    static final Pen FOLD = Pen.of(0.5).with(Dash.DASH_DOT);
    static final Pen BEFORE = Pen.of(0.3).with(Dash.SHORT_DASHED).gray(0.45);
    static final Pen BEFORE_STITCHING = Pen.of(0.3).with(Dash.DOTTED).gray(0.45);
    static final Pen LEVEL = Pen.of(0.18).gray(0.45);
    static final Pen LENGTHEN = Pen.of(0.25);
    static final Pen SYMBOL = Pen.of(0.35);
    static final Pen FINE = Pen.of(0.25);
    static final Pen FOLDED_DART = Pen.of(0.25).with(Dash.DASH_DOT);

    private Pens() {}
}
