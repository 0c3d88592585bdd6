package trueseam.output.figure;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import trueseam.garment.body.Side;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * Writes the figure as SVG: mm, front on the left and back on the right. No colours and no style attributes: what is drawn how
 * is said by classes, so that a page with a strict policy can show it in light and in dark.
 */
final class FigureSvg {
    /** Room round the figure and between the views, mm; the line of a height stands in it. */
    private static final double MARGIN = 70;

    /** Room under the feet for a word, mm. */
    private static final double FOOT_ROOM = 100;

    private static final double MARK_MM = 8.5;

    private final Form form;
    private final double halfWidth;
    private final StringBuilder out = new StringBuilder();

    FigureSvg(Form form) {
        this.form = form;
        halfWidth = Math.max(form.hand.x(), form.elbow.x() + 40) + MARGIN;
    }

    /** The figure alone. */
    String written() {
        write("Figure from the front and from the back", view -> {});
        return out.toString();
    }

    /** With the tape of a measure; of a sided measure the other side's is faint. */
    String with(TapePath path, Side side) {
        write(
                "Figure with the way of the tape for the " + path.measure().workroomLabel(),
                view -> tape(path, view, side));
        return out.toString();
    }

    private void write(String title, Consumer<FigureView> tape) {
        double top = form.mm(FigureSize.STATURE) + 24;
        put(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"figure\" role=\"img\" viewBox=\"0 0 %s %s\">",
                number(4 * halfWidth), number(top + FOOT_ROOM));
        put("<title>%s</title>", title);
        for (FigureView view : FigureView.values()) {
            String name = view == FigureView.FRONT ? "front" : "back";
            double middle = view == FigureView.FRONT ? halfWidth : 3 * halfWidth;
            put("<g class=\"fig-view fig-%s\" transform=\"translate(%s %s)\">", name, number(middle), number(top));
            person(view);
            words(view, name);
            tape.accept(view);
            put("</g>");
        }
        put("</svg>");
    }

    private void person(FigureView view) {
        Contour contour = new Contour(form, view);
        put("<path class=\"fig-floor\" d=\"M%s 0H%s\"/>", number(-halfWidth + MARGIN), number(halfWidth - MARGIN));
        String head = data(contour.head()) + "Z";
        String body = data(contour.body());
        put("<path class=\"fig-skin\" d=\"%sZ\"/><path class=\"fig-line\" d=\"%s\"/>", body, body);
        put("<path class=\"fig-skin\" d=\"%s\"/><path class=\"fig-line\" d=\"%s\"/>", head, head);
        StringBuilder inside = new StringBuilder();
        contour.inside().forEach(line -> inside.append(data(line)));
        put("<path class=\"fig-detail\" d=\"%s\"/>", inside);
    }

    private void words(FigureView view, String name) {
        put("<text class=\"fig-word\" x=\"0\" y=\"%s\" text-anchor=\"middle\">%s</text>", number(FOOT_ROOM - 22), name);
        double x = form.hand.x() - 22;
        double y = -form.hand.y() + 52;
        put(
                "<text class=\"fig-side\" x=\"%s\" y=\"%s\" text-anchor=\"middle\">left</text>",
                number(view.forward() * x), number(y));
        put(
                "<text class=\"fig-side\" x=\"%s\" y=\"%s\" text-anchor=\"middle\">right</text>",
                number(-view.forward() * x), number(y));
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
        String which = side.name().toLowerCase(Locale.ROOT);
        put(
                "<g class=\"%s\" data-measure=\"%s\" data-side=\"%s\">",
                classes, path.measure().name(), which);
        put("<title>%s</title>", path.measure().workroomLabel() + (side == Side.BOTH ? "" : ", " + which));
        lines("fig-level", drawn.levels());
        lines("fig-behind", drawn.behind());
        lines("fig-edge", drawn.seen());
        lines("fig-seen", drawn.seen());
        drawn.marks().forEach((point, places) -> {
            for (Point place : places) {
                put(
                        "<circle class=\"fig-mark\" cx=\"%s\" cy=\"%s\" r=\"%s\"><title>%s</title></circle>",
                        number(place.x()), number(-place.y()), number(MARK_MM), point.words());
            }
        });
        put("</g>");
    }

    private void lines(String kind, List<List<Point>> lines) {
        if (!lines.isEmpty()) {
            StringBuilder data = new StringBuilder();
            lines.forEach(line -> data.append(isStraight(line) ? straight(line) : data(Path.of(Smooth.through(line)))));
            put("<path class=\"%s\" d=\"%s\"/>", kind, data);
        }
    }

    private static boolean isStraight(List<Point> line) {
        Point start = line.get(0);
        Point end = line.get(line.size() - 1);
        double along = start.distanceTo(end);
        return line.stream().allMatch(p -> Math.abs(end.minus(start).cross(p.minus(start))) <= 0.1 * along);
    }

    private static String straight(List<Point> line) {
        Point end = line.get(line.size() - 1);
        return start(line.get(0)) + "L" + number(end.x()) + " " + number(-end.y());
    }

    private static String start(Point p) {
        return "M" + number(p.x()) + " " + number(-p.y());
    }

    private static String data(Path path) {
        StringBuilder data = new StringBuilder(start(path.start()));
        for (Segment stroke : path.segments()) {
            if (stroke instanceof Cubic cubic) {
                data.append('C')
                        .append(pair(cubic.handle1()))
                        .append(' ')
                        .append(pair(cubic.handle2()))
                        .append(' ');
            } else {
                data.append('L');
            }
            data.append(pair(stroke.end()));
        }
        return data.toString();
    }

    private static String pair(Point p) {
        return number(p.x()) + " " + number(-p.y());
    }

    /** A tenth of a millimetre is finer than any screen shows it. */
    private static String number(double mm) {
        String text = String.format(Locale.ROOT, "%.1f", mm + 0.0);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2).replaceFirst("^-0$", "0") : text;
    }

    private void put(String form, Object... parts) {
        out.append(String.format(Locale.ROOT, form, parts)).append('\n');
    }
}
