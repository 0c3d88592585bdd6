package trueseam.cloth.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import trueseam.geometry.Point;

/** Where shapes overlap, against the overlap area of an independent geometry library (JTS). */
class NoFitTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** A star-shaped polygon with dents, some corners on a grid so that edges of different shapes run parallel. */
    static List<Point> dented(Random random, int corners, boolean grid) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double r = 20 + 80 * random.nextDouble();
            double t = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double x = r * Math.cos(t);
            double y = r * Math.sin(t);
            points.add(grid ? new Point(10 * Math.rint(x / 10), 10 * Math.rint(y / 10)) : new Point(x, y));
        }
        return points;
    }

    static Geometry polygon(List<Point> points) {
        Coordinate[] c = new Coordinate[points.size() + 1];
        for (int i = 0; i <= points.size(); i++) {
            Point p = points.get(i % points.size());
            c[i] = new Coordinate(p.x(), p.y());
        }
        return JTS.createPolygon(c);
    }

    @Test
    void shapesLieInEachOtherExactlyWhereTheirAreasOverlap() {
        Random random = new Random(11);
        int inside = 0;
        int outside = 0;
        for (int shapes = 0; shapes < 150; shapes++) {
            boolean grid = random.nextBoolean();
            List<Point> a = dented(random, 3 + random.nextInt(12), grid);
            List<Point> b = dented(random, 3 + random.nextInt(12), grid);
            if (!polygon(a).isValid() || !polygon(b).isValid()) {
                continue;
            }
            NoFitField field = new NoFitField(NoFit.of(Polygon.of(a), Polygon.of(b)), 40);
            for (int k = 0; k < 100; k++) {
                double dx = 300 * (random.nextDouble() - 0.5);
                double dy = 300 * (random.nextDouble() - 0.5);
                if (grid && random.nextBoolean()) {
                    dx = Math.rint(dx);
                    dy = Math.rint(dy);
                }
                Geometry moved =
                        AffineTransformation.translationInstance(dx, dy).transform(polygon(b));
                double area = polygon(a).intersection(moved).getArea();
                double depth = field.depth(dx, dy);
                if (area > 1e-6) {
                    assertThat(depth)
                            .as("overlap of %s at %s %s: %s | %s", area, dx, dy, a, b)
                            .isPositive();
                    inside++;
                } else if (!polygon(a).intersects(moved)) {
                    assertThat(depth)
                            .as("apart at %s %s: %s | %s", dx, dy, a, b)
                            .isZero();
                    outside++;
                }
            }
        }
        assertThat(inside).isGreaterThan(3000);
        assertThat(outside).isGreaterThan(3000);
    }

    @Test
    void theWayOutLeadsOutAndNoShorterWayDoes() {
        Random random = new Random(12);
        double[] way = new double[2];
        int looked = 0;
        for (int shapes = 0; shapes < 60; shapes++) {
            List<Point> a = dented(random, 8, false);
            List<Point> b = dented(random, 7, false);
            if (!polygon(a).isValid() || !polygon(b).isValid()) {
                continue;
            }
            NoFitField field = new NoFitField(NoFit.of(Polygon.of(a), Polygon.of(b)), 40);
            for (int k = 0; k < 20; k++) {
                double dx = 120 * (random.nextDouble() - 0.5);
                double dy = 120 * (random.nextDouble() - 0.5);
                double depth = field.wayOut(dx, dy, way);
                if (depth == 0) {
                    continue;
                }
                Geometry out = AffineTransformation.translationInstance(dx + way[0] * 1.0001, dy + way[1] * 1.0001)
                        .transform(polygon(b));
                assertThat(polygon(a).intersection(out).getArea()).isLessThan(1e-3);
                assertThat(Math.hypot(way[0], way[1])).isCloseTo(depth, org.assertj.core.data.Offset.offset(1e-9));
                for (int t = 0; t < 16; t++) {
                    Geometry tried = AffineTransformation.translationInstance(
                                    dx + 0.9 * depth * Math.cos(t * Math.PI / 8),
                                    dy + 0.9 * depth * Math.sin(t * Math.PI / 8))
                            .transform(polygon(b));
                    assertThat(polygon(a).intersects(tried)).isTrue();
                }
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(300);
    }
}
