package trueseam.fitting.truing;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Run;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Vec;

/**
 * Finds what pivots bent on one piece and writes down the blending: corners get back the angle that they had, so that the edge
 * runs on across the sewn seam as before, and kinks inside an edge are drawn over. Of the two edges at a corner the one that
 * crosses the seam is drawn new. Lines come as gently as they can; what that costs in length, {@link WalkTruing} gives back.
 */
final class Smoothing {

    /** Bends below this are left: a third of what the finished pattern may show. */
    private static final double LEAVE_RAD = Math.toRadians(1);

    /**
     * Kinks below this are left. Far finer than the eye, because blending moves the girth at its level by up to 0.35 mm a degree:
     * a coarser limit would make the girths jump while the amounts are being corrected.
     */
    private static final double LEAVE_KINK_RAD = Math.toRadians(0.05);

    /** How far an edge is drawn new from a bent corner, mm: common practice, an inch or a little more. */
    private static final double CORNER_MM = 35;

    /** How far to either side of a kink a side edge is drawn new, mm: common practice, half an inch to an inch. */
    private static final double KINK_MM = 20;

    private static final double LONGEST_SHARE = 0.4;
    private static final double SAME_PLACE_MM = 1e-6;
    private static final double LOOK_MM = 1e-4;

    private final AlteredPiece altered;
    private final Piece now;
    private final StepList list;
    private final List<Stretch> taken = new ArrayList<>();

    Smoothing(AlteredPiece altered) {
        this.altered = altered;
        this.now = altered.now();
        this.list = new StepList(now);
    }

    List<Step> steps() {
        int n = now.edges().size();
        for (int i = 0; i < n; i++) {
            corner(now.edges().get((i + n - 1) % n), now.edges().get(i));
        }
        for (Edge edge : now.edges()) {
            kinks(edge);
        }
        return list.isEmpty() ? List.of() : list.finished();
    }

    private void corner(Edge before, Edge after) {
        Edge originalBefore = altered.original().edge(before.name());
        Edge originalAfter = altered.original().edge(after.name());
        double turned = turn(before.path(), after.path()) - turn(originalBefore.path(), originalAfter.path());
        if (Math.abs(turned) <= LEAVE_RAD) {
            return;
        }
        boolean beforeCrosses = crosses(before.role());
        if (beforeCrosses && crosses(after.role())) {
            // The crown: each side takes half, one in this round and the other in the next.
            if (isEndDrawn(before)) {
                bendStart(after, turned);
            } else {
                bendEnd(before, turned / 2);
            }
        } else if (beforeCrosses) {
            bendEnd(before, turned);
        } else {
            bendStart(after, turned);
        }
    }

    private boolean isEndDrawn(Edge edge) {
        boolean drawn = false;
        for (Run run : altered.runs()) {
            if (run.edge().equals(edge.name())) {
                drawn = run.isDrawn();
            }
        }
        return drawn;
    }

    private static double turn(Path before, Path after) {
        return before.endTangent().angleTo(after.startTangent());
    }

    private static boolean crosses(EdgeRole role) {
        return switch (role) {
            case NECK, ARMHOLE, WAIST, HEM, CAP, WRIST, CROTCH, RAGLAN -> true;
            case CENTRE, SHOULDER, SIDE, UNDERARM, INSEAM, PANEL, YOKE, OVERARM, OTHER -> false;
        };
    }

    private void bendStart(Edge edge, double backRad) {
        double to = Math.min(CORNER_MM, LONGEST_SHARE * edge.length());
        for (Dart.EdgeDart dart : now.dartsOn(edge.name())) {
            to = Math.min(to, dart.fromMm());
        }
        Vec tangent = edge.path().startTangent().turned(-backRad);
        join(edge, 0, to, tangent, edge.path().tangentAt(to));
    }

    private void bendEnd(Edge edge, double backRad) {
        double whole = edge.length();
        double from = whole - Math.min(CORNER_MM, LONGEST_SHARE * whole);
        for (Dart.EdgeDart dart : now.dartsOn(edge.name())) {
            from = Math.max(from, dart.toMm());
        }
        Vec tangent = edge.path().endTangent().turned(backRad);
        join(edge, from, whole, edge.path().tangentAt(from), tangent);
    }

    private void kinks(Edge edge) {
        List<Run> runs = new ArrayList<>();
        for (Run run : altered.runs()) {
            if (run.edge().equals(edge.name())) {
                runs.add(run);
            }
        }
        for (int i = 1; i < runs.size(); i++) {
            double at = runs.get(i).fromMm();
            double bend = Math.abs(bendAt(edge.path(), at) - originalBend(runs.get(i - 1), runs.get(i)));
            if (bend > LEAVE_KINK_RAD) {
                blend(edge, at);
            }
        }
    }

    private static double bendAt(Path path, double at) {
        // A hair before and a hair behind: the place itself may be reckoned to either side of the corner.
        Vec before = path.tangentAt(Math.max(0, at - LOOK_MM));
        return before.angleTo(path.tangentAt(Math.min(path.length(), at + LOOK_MM)));
    }

    /** The turn that the original had between two runs that were neighbours there; none where one is drawn new. */
    private double originalBend(Run before, Run after) {
        if (before.isDrawn() || after.isDrawn()) {
            Run traced = before.isDrawn() ? after : before;
            if (traced.isDrawn()) {
                return 0;
            }
            Run.Origin origin = traced.origin().orElseThrow();
            double at = before.isDrawn()
                    ? origin.stretch().fromMm()
                    : origin.stretch().toMm();
            Path path = altered.original().edge(origin.stretch().edge()).path();
            return at < LOOK_MM || at > path.length() - LOOK_MM ? 0 : bendAt(path, at);
        }
        Run.Origin a = before.origin().orElseThrow();
        Run.Origin b = after.origin().orElseThrow();
        Path path = altered.original().edge(a.stretch().edge()).path();
        boolean neighbours = a.stretch().edge().equals(b.stretch().edge())
                && Math.abs(a.stretch().toMm() - b.stretch().fromMm()) <= SAME_PLACE_MM;
        double at = a.stretch().toMm();
        return neighbours && at > LOOK_MM && at < path.length() - LOOK_MM ? bendAt(path, at) : 0;
    }

    private void blend(Edge edge, double at) {
        double from = Math.max(at - KINK_MM, 0);
        double to = Math.min(at + KINK_MM, edge.length());
        for (Dart.EdgeDart dart : now.dartsOn(edge.name())) {
            if (dart.toMm() <= at + SAME_PLACE_MM) {
                from = Math.max(from, dart.toMm());
            }
            if (dart.fromMm() >= at - SAME_PLACE_MM) {
                to = Math.min(to, dart.fromMm());
            }
            if (dart.fromMm() < at - SAME_PLACE_MM && at + SAME_PLACE_MM < dart.toMm()) {
                return; // a bend inside the mouth of a dart that was widened: it is folded in and not seen
            }
        }
        if (at - from > 1 && to - at > 1) {
            join(edge, from, to, edge.path().tangentAt(from), arrivingAt(edge.path(), to));
        }
    }

    private static Vec arrivingAt(Path path, double at) {
        return path.tangentAt(Math.max(0, at - LOOK_MM));
    }

    /** Two lines drawn new must not touch: the second waits for the next round. */
    private void join(Edge edge, double from, double to, Vec leaving, Vec arriving) {
        if (to - from > 1 && !isTaken(edge, from, to)) {
            list.join(
                    edge.name(),
                    from,
                    to,
                    JoinForm.curve(new Direction.Towards(leaving), new Direction.Towards(arriving)));
            taken.add(new Stretch(edge.name(), from, to));
        }
    }

    private boolean isTaken(Edge edge, double from, double to) {
        int n = now.edges().size();
        int i = now.indexOf(edge.name());
        Edge before = now.edges().get((i + n - 1) % n);
        Edge after = now.edges().get((i + 1) % n);
        for (Stretch t : taken) {
            boolean here = t.edge().equals(edge.name()) && from <= t.toMm() + 1 && t.fromMm() <= to + 1;
            boolean acrossStart = from <= 1 && t.edge().equals(before.name()) && t.toMm() >= before.length() - 1;
            boolean acrossEnd = to >= edge.length() - 1 && t.edge().equals(after.name()) && t.fromMm() <= 1;
            if (here || acrossStart || acrossEnd) {
                return true;
            }
        }
        return false;
    }
}
