package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** The other half of something drawn once: mirrored at the line x = 0. A sheet of paper folded, not moved. */
final class Mirror {

    private Mirror() {}

    static Path of(Path path) {
        List<Segment> strokes = new ArrayList<>();
        for (Segment s : path.segments()) {
            strokes.add(
                    s instanceof Cubic c
                            ? new Cubic(of(c.start()), of(c.handle1()), of(c.handle2()), of(c.end()))
                            : new Line(of(s.start()), of(s.end())));
        }
        return Path.of(strokes);
    }

    static Point of(Point p) {
        return new Point(-p.x(), p.y());
    }
}
