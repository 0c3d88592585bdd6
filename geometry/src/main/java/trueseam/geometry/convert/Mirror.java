package trueseam.geometry.convert;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** The other half of something drawn once: mirrored at the line x = 0. A sheet of paper folded, not moved. */
public final class Mirror {

    private Mirror() {}

    /**
     * The other half of a path.
     *
     * @param path the path
     * @return its mirror image, in the same direction of travel
     */
    public static Path of(Path path) {
        List<Segment> strokes = new ArrayList<>();
        for (Segment s : path.segments()) {
            strokes.add(
                    s instanceof Cubic c
                            ? new Cubic(of(c.start()), of(c.handle1()), of(c.handle2()), of(c.end()))
                            : new Line(of(s.start()), of(s.end())));
        }
        return Path.of(strokes);
    }

    /**
     * The other half of a point.
     *
     * @param p the point
     * @return its mirror image
     */
    public static Point of(Point p) {
        return new Point(-p.x(), p.y());
    }
}
