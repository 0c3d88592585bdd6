package trueseam.intake.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.convert.Curves;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;

/** The lines of one element in its own user units. Source: SVG 1.1, chapters 8 and 9. */
final class Shapes {

    /** Why an element has no line that can be used. */
    static final class Unusable extends RuntimeException {

        private static final long serialVersionUID = 1;

        Unusable(String why) {
            super(why);
        }
    }

    /** The largest outline that was seen has 80,000. */
    private static final int MOST_CHARACTERS = 4_000_000;

    private Shapes() {}

    static boolean isShape(Element element) {
        return switch (element.name()) {
            case "path", "line", "polyline", "polygon", "rect", "circle", "ellipse" -> true;
            default -> false;
        };
    }

    static List<Path> of(Element element, double width, double height) {
        try {
            return switch (element.name()) {
                case "path" ->
                    PathData.read(bounded(element.attribute("d"))).stream()
                            .map(Subpath::path)
                            .toList();
                case "line" ->
                    line(
                            new Point(at(element, "x1", width), at(element, "y1", height)),
                            new Point(at(element, "x2", width), at(element, "y2", height)));
                case "polyline" -> points(element, false);
                case "polygon" -> points(element, true);
                case "rect" -> rectangle(element, width, height);
                case "circle" -> {
                    double r = at(element, "r", Math.hypot(width, height) / Math.sqrt(2));
                    yield ellipse(element, r, r, width, height);
                }
                case "ellipse" -> ellipse(element, at(element, "rx", width), at(element, "ry", height), width, height);
                default -> List.of();
            };
        } catch (GeometryException e) {
            throw new Unusable(e.getMessage());
        }
    }

    private static double at(Element element, String name, double whole) {
        String text = element.attribute(name);
        if (text.isBlank()) {
            return 0;
        }
        OptionalDouble length = Units.length(text, whole);
        if (length.isEmpty()) {
            throw new Unusable("its " + name + " is \"" + shortened(text) + "\", which is no length.");
        }
        return length.getAsDouble();
    }

    private static String bounded(String data) {
        if (data.length() > MOST_CHARACTERS) {
            throw new Unusable("it is one line of more than " + MOST_CHARACTERS + " characters; that is no pattern.");
        }
        return data;
    }

    static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }

    private static List<Path> line(Point a, Point b) {
        return a.isNear(b, 1e-9) ? List.of() : List.of(Path.through(a, b));
    }

    private static List<Path> points(Element element, boolean closed) {
        Optional<List<Double>> numbers = Units.numbers(bounded(element.attribute("points")));
        if (numbers.isEmpty() || numbers.get().size() % 2 != 0) {
            throw new Unusable("its points are not pairs of numbers.");
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < numbers.get().size(); i += 2) {
            Point p = new Point(numbers.get().get(i), numbers.get().get(i + 1));
            if (points.isEmpty() || !points.get(points.size() - 1).isNear(p, 1e-9)) {
                points.add(p);
            }
        }
        if (closed && points.size() > 2 && !points.get(0).isNear(points.get(points.size() - 1), 1e-9)) {
            points.add(points.get(0));
        }
        return points.size() < 2 ? List.of() : List.of(Path.through(points.toArray(new Point[0])));
    }

    private static List<Path> rectangle(Element element, double width, double height) {
        double x = at(element, "x", width);
        double y = at(element, "y", height);
        double w = at(element, "width", width);
        double h = at(element, "height", height);
        if (!(w > 0) || !(h > 0)) {
            return List.of();
        }
        boolean noX =
                element.attribute("rx").isBlank() || element.attribute("rx").equals("auto");
        boolean noY =
                element.attribute("ry").isBlank() || element.attribute("ry").equals("auto");
        double rx = noX ? (noY ? 0 : at(element, "ry", height)) : at(element, "rx", width);
        double ry = noY ? rx : at(element, "ry", height);
        rx = Math.min(rx, w / 2);
        ry = Math.min(ry, h / 2);
        if (!(rx > 0) || !(ry > 0)) {
            return List.of(Path.through(
                    new Point(x, y),
                    new Point(x + w, y),
                    new Point(x + w, y + h),
                    new Point(x, y + h),
                    new Point(x, y)));
        }
        String data = String.format(
                java.util.Locale.ROOT,
                "M %1$s %2$s h %3$s a %4$s %5$s 0 0 1 %4$s %5$s v %6$s a %4$s %5$s 0 0 1 -%4$s %5$s h -%3$s"
                        + " a %4$s %5$s 0 0 1 -%4$s -%5$s v -%6$s a %4$s %5$s 0 0 1 %4$s -%5$s z",
                x + rx,
                y,
                Math.max(1e-9, w - 2 * rx),
                rx,
                ry,
                Math.max(1e-9, h - 2 * ry));
        return PathData.read(data).stream().map(Subpath::path).toList();
    }

    private static List<Path> ellipse(Element element, double rx, double ry, double width, double height) {
        if (!(rx > 0) || !(ry > 0)) {
            return List.of();
        }
        Affine placed = new Affine(rx, 0, 0, ry, at(element, "cx", width), at(element, "cy", height));
        return List.of(placed.apply(Curves.circle(Point.ORIGIN, 1)));
    }
}
