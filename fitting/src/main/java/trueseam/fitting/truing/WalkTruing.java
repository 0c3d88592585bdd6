package trueseam.fitting.truing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;
import trueseam.geometry.join.LengthOutOfReachException;

/**
 * Walks the seams after smoothing and gives back the little that smoothing took: the shorter of two seam edges is let down at its lower end; an armhole that no longer has its length against the cap is drawn a little fuller or flatter
 * along its hollow.
 */
final class WalkTruing {

    /** Seams nearer than this are left: a fifth of what the proof allows. */
    private static final double LEAVE_MM = 0.02;

    /** A cap that fits its armhole as nearly as this is left: a fifth of what the proof allows. */
    private static final double LEAVE_CAP_MM = 0.1;

    /**
     * Parts of an armhole from the underarm up, as shares of its length. First those that end below the notch, so that the widths
     * across front and back stay what they were made.
     */
    private static final double[][] HOLLOWS = {{0.12, 0.5}, {0.05, 0.48}, {0.02, 0.5}, {0.2, 0.65}, {0.02, 0.75}};

    /** The same of a raglan seam: the hollow below its notch, else the long line above it; not across the notch, where it turns. */
    private static final double[][] OF_A_RAGLAN = {{0.03, 0.3}, {0.42, 0.92}, {0.02, 0.5}};

    /** How much of its bulge a redrawn part keeps at the least. */
    private static final double LEAST_BULGE = 0.4;

    /** How far from its lower end a seam edge is parted to let it down. */
    private static final double LOWER_END_MM = 30;

    /** Below this a seam runs more across the grain than along it: 45 degrees. */
    private static final double MOSTLY_ACROSS = 0.7;

    private final Pattern original;
    private final Pattern altered;
    private final boolean capEaseAsked;
    private final ToDoubleFunction<EdgeRef> meantMm;
    private final Map<String, StepList> lists = new LinkedHashMap<>();

    /**
     * @param capEaseAsked a cap that was given more or less to ease in keeps it: the armhole must not follow
     * @param meantMm by how much an edge was made longer on purpose: truing does not take it back
     */
    WalkTruing(Pattern original, Pattern altered, boolean capEaseAsked, ToDoubleFunction<EdgeRef> meantMm) {
        this.original = original;
        this.altered = altered;
        this.capEaseAsked = capEaseAsked;
        this.meantMm = meantMm;
    }

    List<PieceWork> work() {
        for (Seam seam : original.seams()) {
            double longer = altered.mismatchMm(seam) - original.mismatchMm(seam);
            if (roleOf(seam.first()) == EdgeRole.ARMHOLE) {
                if ((Math.abs(longer) > LEAVE_CAP_MM || isAnyOff(seam.first())) && !capEaseAsked) {
                    fillArmholes(seam.first(), longer);
                }
            } else if (roleOf(seam.first()) == EdgeRole.RAGLAN) {
                // Let down it would take the underarm with it, where three pieces meet.
                List.of(seam.first().get(0), seam.second().get(0)).forEach(this::fillRaglan);
            } else if (isPlain(seam) && Math.abs(longer) > LEAVE_MM) {
                EdgeRef shorter =
                        longer > 0 ? seam.first().get(0) : seam.second().get(0);
                letDown(shorter, Math.abs(longer));
            }
        }
        List<PieceWork> work = new ArrayList<>();
        lists.forEach((piece, list) -> work.add(new PieceWork(piece, list.finished())));
        return work;
    }

    /** One armhole may have lost what the other gained: each keeps its own length. */
    private boolean isAnyOff(List<EdgeRef> armholes) {
        return armholes.stream().anyMatch(ref -> Math.abs(own(ref)) > LEAVE_CAP_MM);
    }

    /** What an edge has lost of the length that it should have. */
    private double own(EdgeRef ref) {
        return original.piece(ref.piece()).sewnLength(ref.edge())
                + meantMm.applyAsDouble(ref)
                - altered.piece(ref.piece()).sewnLength(ref.edge());
    }

    private double meant(List<EdgeRef> edges) {
        return edges.stream().mapToDouble(meantMm).sum();
    }

    private EdgeRole roleOf(List<EdgeRef> side) {
        EdgeRef ref = side.get(0);
        return altered.piece(ref.piece()).edge(ref.edge()).role();
    }

    /** One edge sewn to one edge; a band is none of them: it follows when all else is true. */
    private boolean isPlain(Seam seam) {
        return seam.first().size() == 1
                && seam.second().size() == 1
                && !altered.piece(seam.second().get(0).piece()).kind().isFollower();
    }

    /** Each armhole gets back what it lost itself, but for what was meant; what the cap changed is shared by length. */
    private void fillArmholes(List<EdgeRef> armholes, double longerMm) {
        double whole = altered.sewnLength(armholes);
        double lost = original.sewnLength(armholes) + meant(armholes) - whole;
        for (EdgeRef ref : armholes) {
            Piece piece = altered.piece(ref.piece());
            Edge edge = piece.edge(ref.edge());
            double wanted = own(ref) + (longerMm - lost) * edge.length() / whole;
            if (piece.dartsOn(edge.name()).isEmpty() && Math.abs(wanted) > LEAVE_MM) {
                redrawHollow(piece, edge, wanted, HOLLOWS);
            }
        }
    }

    private void fillRaglan(EdgeRef ref) {
        Piece piece = altered.piece(ref.piece());
        if (Math.abs(own(ref)) > LEAVE_MM) {
            redrawHollow(piece, piece.edge(ref.edge()), own(ref), OF_A_RAGLAN);
        }
    }

    /** Tries the parts of the armhole one after the other; the first that can take the change gently takes it. */
    private void redrawHollow(Piece piece, Edge edge, double longerMm, double[][] parts) {
        boolean underarmFirst = edge.path().start().y() < edge.path().end().y();
        for (double[] part : parts) {
            double from = (underarmFirst ? part[0] : 1 - part[1]) * edge.length();
            double to = (underarmFirst ? part[1] : 1 - part[0]) * edge.length();
            Path path = edge.path();
            Point a = path.pointAt(from);
            Point b = path.pointAt(to);
            Vec leaving = path.tangentAt(from);
            Vec arriving = path.part(from, to).endTangent();
            double bulge = to - from - a.distanceTo(b);
            double wanted = to - from + longerMm;
            if (bulge + longerMm >= LEAST_BULGE * bulge && isReachable(a, leaving, b, arriving, wanted)) {
                lists.computeIfAbsent(piece.name(), name -> new StepList(piece))
                        .join(
                                edge.name(),
                                from,
                                to,
                                JoinForm.curveOfLength(
                                        new Direction.Towards(leaving), new Direction.Towards(arriving), wanted));
                return; // where no part can, the proof says by how much the cap is off
            }
        }
    }

    /**
     * Lets the lower end of a seam edge down by a hair's breadth. (A line drawn fuller was tried and was worse: so little length is
     * a much larger bulge, and it stands where girths are measured.)
     */
    private void letDown(EdgeRef ref, double byMm) {
        Piece piece = altered.piece(ref.piece());
        Edge edge = piece.edge(ref.edge());
        Path path = edge.path();
        boolean startIsLow = path.start().y() < path.end().y();
        double reach = Math.min(LOWER_END_MM, edge.length() / 4);
        double at = startIsLow ? reach : edge.length() - reach;
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (dart.fromMm() < at && at < dart.toMm()) {
                return; // the proof will say by how much the seam is off
            }
        }
        Vec along = startIsLow ? path.tangentAt(at).reversed() : path.tangentAt(at);
        double upright = Math.abs(along.y());
        StepList list = lists.computeIfAbsent(piece.name(), name -> new StepList(piece));
        list.add(new Step.LayBack());
        // A seam of a kimono sleeve lies across the grain: it is let out along itself.
        list.add(
                upright < MOSTLY_ACROSS
                        ? new Step.Slide(along.x() * byMm, along.y() * byMm)
                        : new Step.Slide(0, -byMm / Math.max(0.5, upright)));
        list.trace(edge.name(), startIsLow ? 0 : at, startIsLow ? at : edge.length());
        list.join(edge.name(), at, at, JoinForm.STRAIGHT);
        SideSlide.joinBeside(list, piece, SeamEnds.beside(piece, edge.name(), startIsLow), !startIsLow);
    }

    private static boolean isReachable(Point a, Vec leaving, Point b, Vec arriving, double wanted) {
        try {
            return Joining.smoothOfLength(a, leaving, b, arriving, wanted).length() > 0;
        } catch (LengthOutOfReachException e) {
            return false;
        }
    }
}
