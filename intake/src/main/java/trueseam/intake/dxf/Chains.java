package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** Lines that meet, joined into one. */
final class Chains {

    /** Ends that lie so near meet. */
    static final double MEET_MM = 0.1;

    private static final int MOST = 5000;

    private Chains() {}

    /** The lines joined where their ends meet; those that come back to their start are closed to the last digit. */
    static List<Path> joined(List<Path> lines) {
        if (lines.size() > MOST) {
            throw new EntityException("it is drawn in " + lines.size() + " lines; at most " + MOST + " are taken");
        }
        List<Path> open = new ArrayList<>();
        List<Path> done = new ArrayList<>();
        for (Path line : lines) {
            if (meets(line.start(), line.end()) && line.length() > MEET_MM) {
                done.add(closed(line));
            } else {
                open.add(line);
            }
        }
        while (!open.isEmpty()) {
            List<Segment> strokes = new ArrayList<>(open.remove(0).segments());
            extend(strokes, open);
            if (!meets(strokes.get(0).start(), last(strokes).end())) {
                List<Segment> back = new ArrayList<>(Path.of(strokes).reversed().segments());
                extend(back, open);
                strokes = back;
            }
            done.add(closed(Path.of(strokes)));
        }
        return done;
    }

    private static void extend(List<Segment> strokes, List<Path> open) {
        boolean grown = true;
        while (grown && !meets(strokes.get(0).start(), last(strokes).end())) {
            grown = false;
            Point end = last(strokes).end();
            for (int i = 0; i < open.size() && !grown; i++) {
                Path next = open.get(i);
                if (meets(end, next.start()) || meets(end, next.end())) {
                    open.remove(i);
                    Path forwards = meets(end, next.start()) ? next : next.reversed();
                    strokes.set(strokes.size() - 1, withEnd(last(strokes), forwards.start()));
                    strokes.addAll(forwards.segments());
                    grown = true;
                }
            }
        }
    }

    private static Segment last(List<Segment> strokes) {
        return strokes.get(strokes.size() - 1);
    }

    private static boolean meets(Point a, Point b) {
        return a.isNear(b, MEET_MM);
    }

    private static Path closed(Path line) {
        if (!meets(line.start(), line.end()) || line.start().equals(line.end())) {
            return line;
        }
        List<Segment> strokes = new ArrayList<>(line.segments());
        strokes.set(strokes.size() - 1, withEnd(last(strokes), line.start()));
        return Path.of(strokes);
    }

    private static Segment withEnd(Segment s, Point end) {
        return s instanceof Cubic c
                ? new Cubic(c.start(), c.handle1(), c.handle2().plus(end.minus(c.end())), end)
                : new Line(s.start(), end);
    }
}
