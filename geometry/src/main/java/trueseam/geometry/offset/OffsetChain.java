package trueseam.geometry.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.crossing.Crossing;
import trueseam.geometry.crossing.Crossings;
import trueseam.geometry.polygon.Region;

/**
 * New lines beside edges, kept as curves: beside each stroke its own, at outer corners drawn on to the mitre, at inner
 * corners cut where they cross. Gives nothing where that is not enough (a cusp, a stroke that is used up, parts that
 * meet from afar); then chords must do.
 *
 * <p>Between two inner corners lies a run. One chain, one thread.
 */
final class OffsetChain {

    /** Strokes shorter than this have no direction to be trusted. */
    private static final double SPECK_MM = 1e-7;

    private final double mitreLimit;
    private final double toleranceMm;
    private final List<List<Segment>> runs = new ArrayList<>();

    private OffsetChain(double mitreLimit, double toleranceMm) {
        this.mitreLimit = mitreLimit;
        this.toleranceMm = toleranceMm;
    }

    /** What lies beside one stroke of the source. */
    private record Side(Segment source, double distanceMm, List<Segment> strokes) {

        Segment first() {
            return strokes.get(0);
        }

        Segment last() {
            return strokes.get(strokes.size() - 1);
        }
    }

    /** Distances to the right of travel. */
    static Optional<Path> open(List<Margin> margins, double mitreLimit, double toleranceMm) {
        Optional<List<Side>> sides = sides(margins, toleranceMm);
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        OffsetChain chain = new OffsetChain(mitreLimit, toleranceMm);
        chain.lay(sides.get());
        return chain.cut(false).filter(p -> Crossings.ofItself(p).isEmpty());
    }

    /** Distances to the right of travel; the source closes. */
    static Optional<Path> closed(List<Margin> margins, double mitreLimit, double toleranceMm) {
        Optional<List<Side>> sides = sides(margins, toleranceMm);
        if (sides.isEmpty()) {
            return Optional.empty();
        }
        OffsetChain chain = new OffsetChain(mitreLimit, toleranceMm);
        List<Side> all = sides.get();
        chain.lay(all);
        boolean cutsAtStart = chain.join(all.get(all.size() - 1), all.get(0));
        double area = 0;
        for (Side s : all) {
            area += s.source().areaTerm();
        }
        double turn = Math.signum(area);
        return chain.cut(cutsAtStart)
                .filter(p -> p.signedArea() * turn > 0 && Region.faultOf(p).isEmpty());
    }

    private static Optional<List<Side>> sides(List<Margin> margins, double toleranceMm) {
        List<Side> sides = new ArrayList<>();
        for (Margin m : margins) {
            for (Segment s : m.line().segments()) {
                if (s.length() > SPECK_MM) {
                    StrokeOffset beside = StrokeOffset.of(s, m.distanceMm(), toleranceMm);
                    if (beside.runsBackwards()) {
                        return Optional.empty();
                    }
                    sides.add(new Side(s, m.distanceMm(), beside.strokes()));
                }
            }
        }
        return sides.isEmpty() ? Optional.empty() : Optional.of(sides);
    }

    private void lay(List<Side> sides) {
        runs.add(new ArrayList<>(sides.get(0).strokes()));
        for (int i = 1; i < sides.size(); i++) {
            join(sides.get(i - 1), sides.get(i));
            runs.get(runs.size() - 1).addAll(sides.get(i).strokes());
        }
    }

    /**
     * Draws the corner after one side at the end of the last run; where the lines are to be cut instead, opens a new run
     * and says so. (Round the closing corner the new run is left empty or holds the line drawn on before the first side.)
     */
    private boolean join(Side one, Side next) {
        List<Segment> run = runs.get(runs.size() - 1);
        Point end = one.last().end();
        Point start = next.first().start();
        if (end.isNear(start, toleranceMm / 2)) {
            bridge(run, start);
            return false;
        }
        double widest = Math.max(Math.abs(one.distanceMm()), Math.abs(next.distanceMm()));
        Vec arriving = one.source().tangent(1);
        Vec leaving = next.source().tangent(0);
        Corner corner = new Corner(one.source().end(), end, arriving, start, leaving, widest);
        double cross = arriving.cross(leaving);
        double ahead = corner.ahead(cross);
        double behind = corner.behind(cross);
        // Where one line goes on and the other is shortened by it: on a fold always, else not by more than an
        // allowance, lest
        // a hardly bent corner between two allowances takes a long piece of the wider one.
        boolean isFold = one.distanceMm() == 0 || next.distanceMm() == 0;
        double shortened = -Math.min(ahead, behind);
        if (ahead < 0 && behind < 0) {
            runs.add(new ArrayList<>());
            return true;
        }
        double reach = mitreLimit * widest;
        boolean near = Math.abs(ahead) <= reach && Math.abs(behind) <= reach && (isFold || shortened <= widest);
        if (near && ahead > 0 && behind < -toleranceMm) {
            run.add(new Line(end, end.plus(arriving.times(ahead + reach))));
            runs.add(new ArrayList<>());
            return true;
        }
        if (near && ahead < -toleranceMm && behind > 0) {
            runs.add(new ArrayList<>(List.of(new Line(start.minus(leaving.times(behind + reach)), start))));
            return true;
        }
        Point at = end;
        for (Point p : corner.between(mitreLimit)) {
            run.add(new Line(at, p));
            at = p;
        }
        run.add(new Line(at, start));
        return false;
    }

    /** Ends the run where the next side begins, which is no farther off than half the tolerance. */
    private static void bridge(List<Segment> run, Point start) {
        int i = run.size() - 1;
        Segment last = run.get(i);
        if (last.end().isNear(start, Path.CHAIN_MM / 2)) {
            return;
        }
        Vec gap = start.minus(last.end());
        run.set(
                i,
                last instanceof Cubic c
                        ? new Cubic(c.start(), c.handle1(), c.handle2().plus(gap), start)
                        : new Line(last.start(), start));
    }

    /** Cuts neighbouring runs where they cross and puts them together. */
    private Optional<Path> cut(boolean cutsAtStart) {
        if (cutsAtStart) { // what was drawn on before the first side belongs to its run
            List<Segment> before = runs.remove(runs.size() - 1);
            runs.get(0).addAll(0, before);
        }
        List<Path> lines = new ArrayList<>();
        for (List<Segment> run : runs) {
            lines.add(Path.of(run));
        }
        int n = lines.size();
        double[] from = new double[n];
        double[] to = new double[n];
        for (int i = 0; i < n; i++) {
            to[i] = lines.get(i).length();
        }
        for (int i = 0; i < (cutsAtStart ? n : n - 1); i++) {
            Optional<Crossing> where =
                    n == 1 ? ofTheOnlyRun(lines.get(0)) : betweenRuns(lines.get(i), lines.get((i + 1) % n));
            if (where.isEmpty() || where.get().kind() != Crossing.Kind.POINT) {
                return Optional.empty();
            }
            to[i] = where.get().onFirst().alongMm();
            from[(i + 1) % n] = where.get().onSecond().alongMm();
        }
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (!(to[i] - from[i] > SPECK_MM)) {
                return Optional.empty();
            }
            all.addAll(lines.get(i).part(from[i], to[i]).segments());
        }
        return Optional.of(Path.of(all));
    }

    /** Two runs may cross at both their corners: the crossing late on the one and early on the next. */
    private static Optional<Crossing> betweenRuns(Path one, Path next) {
        return nearestToTheCorner(one, Crossings.between(one, next));
    }

    private static Optional<Crossing> ofTheOnlyRun(Path run) {
        List<Crossing> turned = new ArrayList<>();
        for (Crossing c : Crossings.ofItself(run)) {
            turned.add(new Crossing(c.kind(), /* onFirst= */ c.onSecond(), /* onSecond= */ c.onFirst()));
        }
        return nearestToTheCorner(run, turned);
    }

    private static Optional<Crossing> nearestToTheCorner(Path one, List<Crossing> all) {
        return all.stream()
                .min(Comparator.comparingDouble(
                        c -> one.length() - c.onFirst().alongMm() + c.onSecond().alongMm()));
    }
}
