package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** Which parts of a line lie apart from another line: what is drawn of the original beside the altered. */
final class Apart {

    /** Nearer than this the eye does not part two lines, mm: the thickness of the finer one. */
    static final double SEEN_MM = 0.2;

    private static final double SAMPLE_MM = 2;
    private static final double CHORD_MM = 0.02;

    private final List<Point> chain;
    private int last;

    private Apart(Path other) {
        chain = other.flattened(CHORD_MM);
    }

    /**
     * The parts of a line that lie apart from another, seen every 2 mm.
     *
     * @param line looked at
     * @param other compared with
     * @return the parts in order, each reaching at most 2 mm too far; empty if the lines fall together
     */
    static List<Path> parts(Path line, Path other) {
        Apart apart = new Apart(other);
        List<Path> parts = new ArrayList<>();
        double before = 0;
        double begun = -1;
        int stroke = 0;
        for (Segment s : line.segments()) {
            int samples = Math.max(1, (int) Math.ceil(s.length() / SAMPLE_MM));
            for (int i = 0; i <= samples; i++) {
                double t = (double) i / samples;
                double along = line.startOf(stroke) + (i == 0 ? 0 : i == samples ? s.length() : s.lengthTo(t));
                boolean far = apart.isFar(s.at(t));
                if (far && begun < 0) {
                    begun = before;
                } else if (!far && begun >= 0) {
                    parts.add(line.part(begun, along));
                    begun = -1;
                }
                before = along;
            }
            stroke++;
        }
        if (begun >= 0) {
            parts.add(line.part(begun, line.length()));
        }
        return parts;
    }

    /** Looks first where the last point was near: neighbours are near the same chord. */
    private boolean isFar(Point p) {
        int chords = chain.size() - 1;
        for (int k = 0; k < chords; k++) {
            int i = (last + k) % chords;
            if (square(p, chain.get(i), chain.get(i + 1)) <= SEEN_MM * SEEN_MM) {
                last = i;
                return false;
            }
        }
        return true;
    }

    /** The square of the distance from a chord: this runs a hundred thousand times for each print. */
    private static double square(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double chord = dx * dx + dy * dy;
        double t = chord > 0 ? ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / chord : 0;
        double u = Math.max(0, Math.min(1, t));
        double across = p.x() - a.x() - u * dx;
        double along = p.y() - a.y() - u * dy;
        return across * across + along * along;
    }
}
