package trueseam.intake.outline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Stroke;

/**
 * Takes each line once and closes outlines that were drawn as several lines.
 */
final class Chains {

    /** Editors and pens leave such gaps; a wider one is told and not closed. */
    static final double JOIN_MM = 0.5;

    /** A gap of an otherwise whole outline that is told with its width. */
    private static final double TOLD_MM = 10;

    /** Two points of a copy lie so near, mm. */
    private static final double COPY_MM = 0.02;

    private final List<Stroke> open = new ArrayList<>();
    private final List<Stroke> done = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /**
     * What came of joining.
     *
     * @param lines all lines, joined as far as they go
     * @param findings gaps and copies
     */
    record Joined(List<Stroke> lines, List<Finding> findings) {}

    static Joined of(List<Stroke> strokes) {
        Chains chains = new Chains();
        List<Stroke> once = chains.once(strokes);
        for (Stroke stroke : once) {
            if (stroke.path().isClosed()) {
                chains.done.add(stroke);
            } else {
                chains.open.add(stroke);
            }
        }
        chains.join();
        chains.gaps();
        chains.done.addAll(chains.open);
        return new Joined(List.copyOf(chains.done), List.copyOf(chains.findings));
    }

    /** Copies have their middle at one place and one length: only such lines are compared. */
    private List<Stroke> once(List<Stroke> strokes) {
        List<Stroke> once = new ArrayList<>();
        Map<Near, List<Stroke>> byMiddle = new HashMap<>();
        int copies = 0;
        for (Stroke stroke : strokes) {
            Near near = Near.of(stroke.path());
            boolean copy = near.around().stream()
                    .flatMap(n -> byMiddle.getOrDefault(n, List.of()).stream())
                    .anyMatch(other -> stroke.look().equals(other.look()) && isCopy(stroke.path(), other.path()));
            copies += copy ? 1 : 0;
            if (!copy) {
                once.add(stroke);
                byMiddle.computeIfAbsent(near, n -> new ArrayList<>()).add(stroke);
            }
        }
        if (copies > 0) {
            findings.add(Finding.note(
                    "drawing",
                    copies + (copies == 1 ? " line lies" : " lines lie")
                            + " exactly on another one; each was taken once."));
        }
        return once;
    }

    /** Middle and length of a line, in steps that are wider than two copies differ by. */
    private record Near(long x, long y, long length) {

        private static final double STEP_MM = 5 * COPY_MM;

        static Near of(Path path) {
            Point middle = path.pointAt(path.length() / 2);
            return new Near(step(middle.x()), step(middle.y()), step(path.length()));
        }

        private static long step(double mm) {
            return (long) Math.floor(mm / STEP_MM);
        }

        List<Near> around() {
            List<Near> around = new ArrayList<>();
            for (int dx = -1; dx <= 1; dx++) {
                for (int dy = -1; dy <= 1; dy++) {
                    for (int dl = -1; dl <= 1; dl++) {
                        around.add(new Near(x + dx, y + dy, length + dl));
                    }
                }
            }
            return around;
        }
    }

    private static boolean isCopy(Path a, Path b) {
        if (a.isClosed() != b.isClosed() || a.segments().size() != b.segments().size()) {
            return false;
        }
        for (Path other : a.isClosed() ? List.of(b) : List.of(b, b.reversed())) {
            boolean same = true;
            for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
                same &= a.pointAt(share * a.length()).isNear(other.pointAt(share * other.length()), COPY_MM);
            }
            if (same) {
                return true;
            }
        }
        return false;
    }

    private void join() {
        List<Stroke> several = new ArrayList<>();
        for (Stroke stroke : open) {
            Path path = stroke.path();
            if (path.length() > 4 * JOIN_MM && path.start().isNear(path.end(), JOIN_MM)) {
                done.add(new Stroke(Loops.endingAt(path, path.start()), stroke.look(), stroke.layer(), stroke.label()));
            } else {
                several.add(stroke);
            }
        }
        Loops.Found found = Loops.of(several, JOIN_MM);
        done.addAll(found.closed());
        open.clear();
        open.addAll(found.open());
    }

    /** A long line whose ends nearly meet is most likely an outline that does not close. */
    private void gaps() {
        for (Stroke stroke : open) {
            double gap = stroke.path().start().distanceTo(stroke.path().end());
            if (gap <= TOLD_MM
                    && stroke.path().length() > 30 * gap
                    && stroke.path().segments().size() > 2) {
                Point p = stroke.path().end();
                findings.add(Finding.warning(
                        stroke.label().isEmpty() ? "drawing" : stroke.label(),
                        String.format(
                                java.util.Locale.ROOT,
                                "This line does not close: its ends lie %.1f mm apart near (%.0f, %.0f); close it in a"
                                        + " vector editor if it is an outline.",
                                gap,
                                p.x(),
                                p.y())));
            }
        }
    }
}
