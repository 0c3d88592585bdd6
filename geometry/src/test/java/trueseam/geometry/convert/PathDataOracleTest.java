package trueseam.geometry.convert;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** Our reader against Apache Batik's, which reads floats and draws arcs as cubics of a quarter turn. */
class PathDataOracleTest {

    /** A float keeps 7 digits of a few hundred millimetres, and relative commands add up. */
    private static final double FLOAT_MM = 2e-2;

    /** Quarter arcs err by 2.7e-4 of the radius, here at most 120 mm, plus the floats. */
    private static final double ARC_MM = 120 * 2.8e-4 + FLOAT_MM;

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readsTheSameLinesAsBatik(int seed) throws java.io.IOException {
        String data = anyData(new Random(seed));
        List<Path> theirs = batik(data);
        List<Path> ours = new ArrayList<>();
        for (Subpath s : PathData.read(data)) {
            ours.add(s.path());
        }
        assertThat(ours).as(data).hasSameSizeAs(theirs);
        for (int i = 0; i < ours.size(); i++) {
            Path a = ours.get(i);
            Path b = theirs.get(i);
            assertThat(a.length()).as(data).isCloseTo(b.length(), within(0.5 + 1e-3 * b.length()));
            for (int k = 0; k <= 50; k++) {
                Point p = a.pointAt(a.length() * k / 50);
                assertThat(b.nearest(p).point().distanceTo(p)).as(data).isLessThan(ARC_MM);
                Point q = b.pointAt(b.length() * k / 50);
                assertThat(a.nearest(q).point().distanceTo(q)).as(data).isLessThan(ARC_MM);
            }
        }
    }

    private static String anyData(Random random) {
        StringBuilder d = new StringBuilder(random.nextBoolean() ? "M" : "m");
        numbers(d, random, 2);
        int n = 1 + random.nextInt(12);
        char last = 'M';
        for (int i = 0; i < n; i++) {
            char c = "MLHVCSQTAZmlhvcsqtaz".charAt(random.nextInt(20));
            // Batik mirrors the last handle whatever drew it; SVG 1.1, 8.3.6 and 8.3.7, only one of the same kind.
            String before = Character.toString(Character.toUpperCase(last));
            if ((Character.toUpperCase(c) == 'S' && "QTZ".contains(before))
                    || (Character.toUpperCase(c) == 'T' && "CSZ".contains(before))) {
                continue;
            }
            last = c;
            if (c == 'A') {
                d.append('M');
                numbers(d, random, 2);
            }
            d.append(c);
            int repeat = 1 + random.nextInt(2);
            for (int k = 0; k < repeat; k++) {
                switch (Character.toUpperCase(c)) {
                    case 'M', 'L', 'T' -> numbers(d, random, 2);
                    case 'H', 'V' -> numbers(d, random, 1);
                    case 'S', 'Q' -> numbers(d, random, 4);
                    case 'C' -> numbers(d, random, 6);
                    case 'A' -> {
                        // Large enough to reach: radii that must grow, Batik makes a hundred thousandth larger still.
                        double radius = c == 'A' ? 80 : 40;
                        d.append(String.format(
                                Locale.ROOT,
                                " %.2f %.2f %.1f ",
                                radius + 40 * random.nextDouble(),
                                radius + 40 * random.nextDouble(),
                                400 * random.nextDouble() - 200));
                        d.append(random.nextInt(2))
                                .append(random.nextBoolean() ? "" : ",")
                                .append(random.nextInt(2));
                        numbers(d, random, 2);
                    }
                    default -> {}
                }
            }
        }
        return d.toString();
    }

    private static void numbers(StringBuilder d, Random random, int count) {
        for (int i = 0; i < count; i++) {
            String number = String.format(Locale.ROOT, "%.3f", 100 * random.nextDouble() - 50);
            boolean parted = number.startsWith("-") && random.nextBoolean();
            d.append(parted ? "" : i > 0 && random.nextBoolean() ? "," : " ").append(number);
        }
        d.append(random.nextBoolean() ? "" : " ");
    }

    private static List<Path> batik(String data) throws java.io.IOException {
        Shape shape = AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO);
        List<Path> paths = new ArrayList<>();
        List<Segment> strokes = new ArrayList<>();
        double[] c = new double[6];
        Point start = Point.ORIGIN;
        Point at = Point.ORIGIN;
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            Point p1 = new Point((float) c[0], (float) c[1]);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> {
                    finish(paths, strokes);
                    start = p1;
                    at = p1;
                }
                case PathIterator.SEG_LINETO -> {
                    strokes.add(new Line(at, p1));
                    at = p1;
                }
                case PathIterator.SEG_QUADTO -> {
                    Point p2 = new Point(c[2], c[3]);
                    strokes.add(Curves.quadratic(at, p1, p2));
                    at = p2;
                }
                case PathIterator.SEG_CUBICTO -> {
                    Point p3 = new Point(c[4], c[5]);
                    strokes.add(new Cubic(at, p1, new Point(c[2], c[3]), p3));
                    at = p3;
                }
                default -> {
                    if (!strokes.isEmpty()) {
                        strokes.add(new Line(at, start));
                    }
                    finish(paths, strokes);
                    at = start;
                }
            }
        }
        finish(paths, strokes);
        return paths;
    }

    private static void finish(List<Path> paths, List<Segment> strokes) {
        if (!strokes.isEmpty()) {
            paths.add(Path.of(strokes));
            strokes.clear();
        }
    }
}
