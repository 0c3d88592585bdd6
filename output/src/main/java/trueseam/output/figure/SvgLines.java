package trueseam.output.figure;

import java.util.List;
import java.util.Locale;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.convert.PathData;

/** What the figure is written with as SVG: y down, a tenth of a millimetre for what stands alone. */
final class SvgLines {

    private SvgLines() {}

    /** Freehand lines through points as path data; straight ones stay short. */
    static String through(List<List<Point>> lines) {
        StringBuilder data = new StringBuilder();
        for (List<Point> line : lines) {
            Path path = isStraight(line)
                    ? Path.through(line.get(0), line.get(line.size() - 1))
                    : Path.of(Smooth.through(line));
            data.append(PathData.drawn(path));
        }
        return data.toString();
    }

    private static boolean isStraight(List<Point> line) {
        Point start = line.get(0);
        Point end = line.get(line.size() - 1);
        double along = start.distanceTo(end);
        return line.stream().allMatch(p -> Math.abs(end.minus(start).cross(p.minus(start))) <= 0.1 * along);
    }

    /** A tenth of a millimetre is finer than any screen shows it. */
    static String number(double mm) {
        String text = String.format(Locale.ROOT, "%.1f", mm + 0.0);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2).replaceFirst("^-0$", "0") : text;
    }
}
