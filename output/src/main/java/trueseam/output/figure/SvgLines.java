package trueseam.output.figure;

import java.util.List;
import java.util.Locale;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** Lines as SVG path data: y down, a tenth of a millimetre. */
final class SvgLines {

    private SvgLines() {}

    /** Freehand lines through points; straight ones stay short. */
    static String through(List<List<Point>> lines) {
        StringBuilder data = new StringBuilder();
        lines.forEach(line -> data.append(isStraight(line) ? straight(line) : data(Path.of(Smooth.through(line)))));
        return data.toString();
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

    static String data(Path path) {
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
    static String number(double mm) {
        String text = String.format(Locale.ROOT, "%.1f", mm + 0.0);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2).replaceFirst("^-0$", "0") : text;
    }
}
