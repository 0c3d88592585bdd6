package trueseam.output.figure;

import java.util.List;
import java.util.Locale;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;

/**
 * Writes the figure as SVG: mm, front on the left and back on the right, or sitting for what is measured so; as near as the tape allows. No colours and no style attributes: what is drawn how
 * is said by classes, so that a page with a strict policy can show it in light and in dark.
 */
final class FigureSvg {
    /** Room round the figure and between the views, mm; the line of a height stands in it. */
    private static final double MARGIN = 70;

    /** Room under the views for a line of words, mm. */
    private static final double WORDS_MM = 84;

    private static final double MARK_MM = 10;

    private final Form form;
    private final double halfWidth;
    private final StringBuilder out = new StringBuilder();

    FigureSvg(Form form) {
        this.form = form;
        halfWidth = Math.max(form.hand.x(), form.elbow.x() + 40) + MARGIN;
    }

    /** The figure alone. */
    String written() {
        Crop whole = Crop.whole(form);
        begin("Figure from the front and from the back", 4 * halfWidth, whole);
        for (FigureView view : FigureView.values()) {
            standing(view, whole, () -> {});
        }
        put("</svg>");
        return out.toString();
    }

    /** With the tape of a measure, as near as it allows; of a sided measure the other side's is faint. */
    String with(TapePath path, Side side) {
        Crop crop = Crop.to(path, form);
        begin(title(path), 4 * halfWidth, crop);
        for (FigureView view : FigureView.values()) {
            standing(view, crop, () -> tape(path, view, side));
        }
        put("</svg>");
        return out.toString();
    }

    /** The same for a measure that is taken sitting. */
    String sitting(TapePath path, Side side) {
        Crop whole = Crop.whole(form);
        Sitting sitting = new Sitting(form);
        begin(title(path), 2 * halfWidth + 2 * sitting.halfWidth(), whole);
        standing(FigureView.FRONT, whole, () -> tape(path, FigureView.FRONT, side));
        sitting(sitting, path.measure(), whole);
        put("</svg>");
        return out.toString();
    }

    private static String title(TapePath path) {
        return "Figure with the way of the tape for the " + path.measure().workroomLabel();
    }

    private void begin(String title, double width, Crop crop) {
        put(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"figure\" role=\"img\" viewBox=\"0 0 %s %s\">",
                number(width), number(crop.high() + WORDS_MM));
        put("<title>%s</title>", title);
    }

    private void standing(FigureView view, Crop crop, Runnable tape) {
        boolean front = view == FigureView.FRONT;
        double middle = front ? halfWidth : 3 * halfWidth;
        frame(middle - halfWidth, -halfWidth, 2 * halfWidth, crop);
        person(view);
        tape.run();
        put("</svg>");
        words(middle, crop, front ? "front" : "back", front ? "right" : "left", front ? "left" : "right");
    }

    /** What is not of the cut-out lies beyond the edge of a drawing of its own. */
    private void frame(double left, double minX, double width, Crop crop) {
        put(
                "<svg class=\"fig-view\" x=\"%s\" y=\"0\" width=\"%s\" height=\"%s\" viewBox=\"%s %s %s %s\">",
                number(left),
                number(width),
                number(crop.high()),
                number(minX),
                number(-crop.top()),
                number(width),
                number(crop.high()));
    }

    private void words(double middle, Crop crop, String view, String atLeft, String atRight) {
        double y = crop.high() + WORDS_MM - 22;
        word("fig-word", middle, y, "middle", view);
        word("fig-side", middle - halfWidth + 40, y, "start", atLeft);
        word("fig-side", middle + halfWidth - 40, y, "end", atRight);
    }

    private void word(String kind, double x, double y, String anchor, String text) {
        put(
                "<text class=\"%s\" x=\"%s\" y=\"%s\" text-anchor=\"%s\">%s</text>",
                kind, number(x), number(y), anchor, text);
    }

    private void person(FigureView view) {
        Contour contour = new Contour(form, view);
        put("<path class=\"fig-floor\" d=\"M%s 0H%s\"/>", number(-halfWidth + MARGIN), number(halfWidth - MARGIN));
        skin(PathData.drawn(contour.body()));
        skin(PathData.drawn(contour.head()));
        StringBuilder inside = new StringBuilder();
        contour.inside().forEach(line -> inside.append(PathData.drawn(line)));
        put("<path class=\"fig-detail\" d=\"%s\"/>", inside);
    }

    private void skin(String data) {
        put("<path class=\"fig-skin\" d=\"%sZ\"/><path class=\"fig-line\" d=\"%s\"/>", data, data);
    }

    private void sitting(Sitting sitting, Measure measure, Crop crop) {
        double half = sitting.halfWidth();
        double middle = sitting.middle();
        frame(2 * halfWidth, middle - half, 2 * half, crop);
        put("<path class=\"fig-floor\" d=\"M%s 0H%s\"/>", number(middle - half), number(middle + half));
        put("<path class=\"fig-seat\" d=\"%s\"/>", PathData.drawn(sitting.chair()));
        skin(PathData.drawn(sitting.body()));
        skin(PathData.drawn(sitting.arm()));
        group("fig-tape in-focus", measure, Side.RIGHT);
        drawn(sitting.tape());
        put("</g></svg>");
        word("fig-word", 2 * halfWidth + half, crop.high() + WORDS_MM - 22, "middle", "sitting, from her right");
    }

    private void tape(TapePath path, FigureView view, Side focus) {
        if (!path.measure().sidesMayDiffer()) {
            tape(path, view, Side.BOTH, "fig-tape in-focus");
            return;
        }
        for (Side side : focus == Side.RIGHT ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT)) {
            boolean strong = focus == Side.BOTH || focus == side;
            tape(
                    side == Side.LEFT ? path : path.mirrored(),
                    view,
                    side,
                    strong ? "fig-tape in-focus" : "fig-tape other-side");
        }
    }

    private void tape(TapePath path, FigureView view, Side side, String classes) {
        DrawnTape drawn = DrawnTape.of(path, view);
        if (drawn.seen().isEmpty()) {
            return;
        }
        group(classes, path.measure(), side);
        drawn(drawn);
        put("</g>");
    }

    private void group(String classes, Measure measure, Side side) {
        String which = side.name().toLowerCase(Locale.ROOT);
        put("<g class=\"%s\" data-measure=\"%s\" data-side=\"%s\">", classes, measure.name(), which);
        put("<title>%s</title>", measure.workroomLabel() + (side == Side.BOTH ? "" : ", " + which));
    }

    private void drawn(DrawnTape tape) {
        lines("fig-level", tape.levels());
        lines("fig-behind", tape.behind());
        lines("fig-edge", tape.seen());
        lines("fig-seen", tape.seen());
        tape.marks().forEach((point, places) -> {
            for (Point place : places) {
                put(
                        "<circle class=\"fig-mark\" cx=\"%s\" cy=\"%s\" r=\"%s\"><title>%s</title></circle>",
                        number(place.x()), number(-place.y()), number(MARK_MM), point.words());
            }
        });
    }

    private void lines(String kind, List<List<Point>> lines) {
        if (!lines.isEmpty()) {
            put("<path class=\"%s\" d=\"%s\"/>", kind, SvgLines.through(lines));
        }
    }

    private static String number(double mm) {
        return SvgLines.number(mm);
    }

    private void put(String form, Object... parts) {
        out.append(String.format(Locale.ROOT, form, parts)).append('\n');
    }
}
