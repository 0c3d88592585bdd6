package trueseam.geometry.convert;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * The text of the attribute {@code d} of an SVG path. Source: SVG 1.1 (second edition), 8.3.
 *
 * <p>Laws: (1) what is written reads back to the same numbers; (2) reading either gives everything or refuses with the
 * place; (3) numbers are double throughout.
 */
public final class PathData {

    private PathData() {}

    /**
     * Reads path data.
     *
     * @param data all commands, absolute and relative
     * @return the lines in order; a move without a stroke gives none
     * @throws PathDataException if it is no path data, holds a number that is too large, or leads off the paper
     */
    public static List<Subpath> read(String data) {
        return PathDataReader.read(data);
    }

    /**
     * Writes an open or closed line with the absolute commands M, L, C and Z.
     *
     * @param line the line
     * @return path data
     */
    public static String write(Subpath line) {
        Path path = line.path();
        StringBuilder text = new StringBuilder("M");
        append(text, path.start());
        List<Segment> strokes = path.segments();
        int last = strokes.size() - 1;
        for (int i = 0; i <= last; i++) {
            Segment s = strokes.get(i);
            if (s instanceof Cubic c) {
                append(text.append(" C"), c.handle1());
                append(text.append(' '), c.handle2());
                append(text.append(' '), c.end());
            } else if (!(i == last && line.closed() && closesBy((Line) s, path.start()))) {
                append(text.append(" L"), s.end());
            }
        }
        return line.closed() ? text.append(" Z").toString() : text.toString();
    }

    /** Whether Z alone would draw this stroke. */
    private static boolean closesBy(Line last, Point start) {
        return last.end().equals(start) && !last.start().isNear(start, Path.CHAIN_MM);
    }

    /**
     * Writes several lines one after another.
     *
     * @param lines the lines
     * @return path data
     */
    public static String write(List<Subpath> lines) {
        return String.join(" ", lines.stream().map(PathData::write).toList());
    }

    /**
     * Writes an open line for the eye, y downwards as on a screen, to 1/1000 mm: short, and quick enough for a picture a frame. It does
     * not read back to the same numbers.
     *
     * @param path the line, y upwards
     * @return path data, absolute M, L and C
     */
    public static String drawn(Path path) {
        StringBuilder text = new StringBuilder(32 * path.segments().size() + 16).append('M');
        fine(text, path.start());
        for (Segment s : path.segments()) {
            if (s instanceof Cubic c) {
                fine(text.append('C'), c.handle1());
                fine(text.append(' '), c.handle2());
                fine(text.append(' '), c.end());
            } else {
                fine(text.append('L'), s.end());
            }
        }
        return text.toString();
    }

    private static void fine(StringBuilder text, Point p) {
        thousandths(text, p.x());
        thousandths(text.append(' '), -p.y());
    }

    private static void thousandths(StringBuilder text, double mm) {
        long whole = Math.round(mm * 1000);
        if (whole < 0) {
            text.append('-');
        }
        long size = Math.abs(whole);
        text.append(size / 1000);
        int rest = (int) (size % 1000);
        if (rest != 0) {
            text.append('.').append((char) ('0' + rest / 100));
            if (rest % 100 != 0) {
                text.append((char) ('0' + rest / 10 % 10));
            }
            if (rest % 10 != 0) {
                text.append((char) ('0' + rest % 10));
            }
        }
    }

    private static void append(StringBuilder text, Point p) {
        text.append(number(p.x())).append(' ').append(number(p.y()));
    }

    /**
     * A number with the fewest digits that read back to it.
     *
     * @param value finite
     * @return digits, with a point where needed and an exponent only below 1e-6
     */
    public static String number(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal shortest = exact.round(new MathContext(17));
        for (int digits = 15; digits < 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (rounded.doubleValue() == value) {
                shortest = rounded;
                break;
            }
        }
        BigDecimal plain = shortest.stripTrailingZeros();
        return Math.abs(value) < 1e-6 ? plain.toString() : plain.toPlainString();
    }
}
