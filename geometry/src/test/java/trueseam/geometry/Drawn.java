package trueseam.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.StringTokenizer;

/** Paths for tests: from one line of text, or of garment size from a seeded random. */
public final class Drawn {

    private Drawn() {}

    /**
     * Reads absolute M, L, C and Z with everything parted by blanks.
     *
     * @param text such as {@code "M 0 0 L 10 0 C 1 2 3 4 5 6 Z"}
     * @return the path
     */
    public static Path path(String text) {
        StringTokenizer words = new StringTokenizer(text);
        List<Segment> strokes = new ArrayList<>();
        Point start = Point.ORIGIN;
        Point at = Point.ORIGIN;
        while (words.hasMoreTokens()) {
            switch (words.nextToken()) {
                case "M" -> {
                    start = point(words);
                    at = start;
                }
                case "L" -> {
                    Point to = point(words);
                    strokes.add(new Line(at, to));
                    at = to;
                }
                case "C" -> {
                    Cubic c = new Cubic(at, point(words), point(words), point(words));
                    strokes.add(c);
                    at = c.end();
                }
                case "Z" -> strokes.add(new Line(at, start));
                default -> throw new IllegalArgumentException("not drawn: " + text);
            }
        }
        return Path.of(strokes);
    }

    private static Point point(StringTokenizer words) {
        double x = Double.parseDouble(words.nextToken());
        return new Point(x, Double.parseDouble(words.nextToken()));
    }

    /**
     * A cubic as long as the edge of a garment, from 20 to 800 mm, its handles anywhere about.
     *
     * @param random seeded
     * @return the curve
     */
    public static Cubic cubic(Random random) {
        double size = 20 + 400 * random.nextDouble();
        return new Cubic(
                anywhere(random, size), anywhere(random, size), anywhere(random, size), anywhere(random, size));
    }

    /**
     * A point of a square about the origin.
     *
     * @param random seeded
     * @param size side of the square, mm
     * @return the point
     */
    public static Point anywhere(Random random, double size) {
        return new Point(size * (random.nextDouble() - 0.5), size * (random.nextDouble() - 0.5));
    }
}
