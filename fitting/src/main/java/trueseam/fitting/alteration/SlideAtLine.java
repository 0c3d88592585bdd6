package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;
import trueseam.geometry.join.LengthOutOfReachException;

/**
 * Lengthens or shortens a piece at a line across the grain: all below the line slides along the grain, and the edges that
 * cross the line are joined again, tapering from the old line to the slid one.
 *
 * <pre>{@code
 *      |    \          |    \        Edges that are sewn together grow by the same
 *      |     \         |     )       length, so they still walk.
 *   ---+------\---  => |     |
 *      |       \       |      )
 *      +--------+      |       \
 *                      +--------+
 * }</pre>
 *
 * Source: common practice.
 */
final class SlideAtLine {

    /** How far above and below the line a crossing edge is drawn new, at the least: a hand's blending. */
    private static final double BLEND_MM = 25;

    /** The same for a long seam, which tapers back to the old line (common practice). */
    private static final double TAPER_MM = 70;

    /** How far from a level a taper ends, so that smoothing its end does not reach the level. */
    private static final double CLEAR_MM = 25;

    private static final double UPRIGHT = 1e-6;
    private static final double END_MM = 1e-6;

    private final Piece piece;
    private final double y;
    private final double longerMm;
    private final LevelName level;
    private final String levelWord;

    /** Where an edge crosses the line: the part drawn new, and by how much a gentle line there is longer. */
    record Crossing(Edge edge, Stretch gap, boolean upright, double growthMm) {}

    SlideAtLine(Piece piece, LevelName level, double longerMm) {
        this.piece = piece;
        this.longerMm = longerMm;
        this.level = level;
        this.levelWord = level.word() + " line";
        this.y = piece.level(level)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), levelWord, longerMm, "the piece has no such line; mark it on the piece."));
    }

    String pieceName() {
        return piece.name();
    }

    List<Crossing> crossings() {
        List<Crossing> found = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (isOfKimonoSleeve(edge)) {
                continue; // it hangs beside the body and stays, however low
            }
            for (PathPlace place : edge.path().crossings(new Point(0, y), new Vec(1, 0))) {
                if (place.alongMm() > END_MM && place.alongMm() < edge.length() - END_MM) {
                    found.add(crossing(edge, place.alongMm()));
                }
            }
        }
        return found;
    }

    /** About hip and crotch the seams are curved, and a long taper would cut the curve short; nor may it reach a level where a girth is taken. */
    private double taper(EdgeRole role) {
        boolean curved = level == LevelName.SKIRT_LENGTH || level == LevelName.CROTCH_DEPTH;
        boolean seam = role == EdgeRole.SIDE || role == EdgeRole.INSEAM || role == EdgeRole.UNDERARM;
        if (!seam || curved) {
            return BLEND_MM;
        }
        double nearest = TAPER_MM;
        for (Level other : piece.levels()) {
            if (!other.name().isLengthLine()) {
                nearest = Math.min(nearest, Math.abs(other.y() - y) - CLEAR_MM);
            }
        }
        return Math.max(BLEND_MM, nearest);
    }

    private Crossing crossing(Edge edge, double at) {
        double reach = Math.max(taper(edge.role()), Math.abs(longerMm));
        double half = Math.min(at - lowest(edge, at), highest(edge, at) - at);
        half = Math.min(half, reach);
        if (2 * half + longerMm < 1) {
            throw new AlterationException(
                    piece.name(),
                    levelWord,
                    longerMm,
                    "edge " + edge.name() + " leaves only " + Math.round(2 * half)
                            + " mm at the line to take the change away from; move the line or take another size.");
        }
        Path path = edge.path();
        Stretch gap = new Stretch(edge.name(), at - half, at + half);
        boolean upright = isUpright(path.part(gap.fromMm(), gap.toMm()));
        double growth = upright ? longerMm : gentle(path, gap).length() - gap.lengthMm();
        return new Crossing(edge, gap, upright, growth);
    }

    private static boolean isUpright(Path part) {
        return part.bounds().width() <= UPRIGHT;
    }

    /** The gentle line across the gap: whichever of its ends lies below the line has slid. */
    private Cubic gentle(Path path, Stretch gap) {
        Point a = slid(path.pointAt(gap.fromMm()));
        Point b = slid(path.pointAt(gap.toMm()));
        return Joining.smooth(a, path.tangentAt(gap.fromMm()), b, path.tangentAt(gap.toMm()));
    }

    private Point slid(Point p) {
        return p.y() < y ? p.plus(new Vec(0, -longerMm)) : p;
    }

    /** @param growthMm by how much the edges of each role grow; edges that are not named take their own */
    List<Step> steps(Map<EdgeRole, Double> growthMm) {
        List<Stretch> below = new ArrayList<>();
        List<Step.Join> joins = new ArrayList<>();
        List<Crossing> crossings = crossings();
        for (Edge edge : piece.edges()) {
            double from = 0;
            for (Crossing crossing : crossings) {
                if (crossing.edge().equals(edge)) {
                    addIfBelow(edge, from, crossing.gap().fromMm(), below);
                    joins.add(new Step.Join(
                            crossing.gap(),
                            form(
                                    crossing,
                                    Math.max(
                                            crossing.growthMm(),
                                            growthMm.getOrDefault(edge.role(), crossing.growthMm())))));
                    from = crossing.gap().toMm();
                }
            }
            addIfBelow(edge, from, edge.length(), below);
        }
        if (below.isEmpty()) {
            throw new AlterationException(
                    piece.name(), levelWord, longerMm, "nothing of the piece lies below this line.");
        }
        StepList list = new StepList(piece);
        list.add(new Step.Slide(0, -longerMm));
        list.add(new Step.Trace(below, false));
        list.add(new Step.TransferBelow(y));
        joins.forEach(list::add);
        return list.finished();
    }

    private JoinForm form(Crossing crossing, double growthMm) {
        // An upright line cannot be drawn fuller without a bend; where its partner leans, the seam's proof tells the
        // difference.
        if (crossing.upright()) {
            return JoinForm.STRAIGHT;
        }
        // On a short side a line may not bend as full as its partner asks: it is drawn gently then, and the walking
        // takes the rest.
        double growth = isReachable(crossing, growthMm) ? growthMm : crossing.growthMm();
        return JoinForm.curveOfLength(
                Direction.AS_DRAWN, Direction.AS_DRAWN, crossing.gap().lengthMm() + growth);
    }

    private boolean isReachable(Crossing crossing, double growthMm) {
        Path path = crossing.edge().path();
        Stretch gap = crossing.gap();
        Point a = slid(path.pointAt(gap.fromMm()));
        Point b = slid(path.pointAt(gap.toMm()));
        try {
            double wanted = gap.lengthMm() + growthMm;
            return Joining.smoothOfLength(a, path.tangentAt(gap.fromMm()), b, path.tangentAt(gap.toMm()), wanted)
                            .length()
                    > 0;
        } catch (LengthOutOfReachException e) {
            return false;
        }
    }

    private boolean isOfKimonoSleeve(Edge edge) {
        return piece.kind().isKimono()
                && switch (edge.role()) {
                    case UNDERARM, WRIST, OVERARM, SHOULDER -> true;
                    case CENTRE, NECK, ARMHOLE, SIDE, WAIST, HEM, CAP, INSEAM, CROTCH, PANEL, YOKE, RAGLAN, OTHER ->
                        false;
                };
    }

    private void addIfBelow(Edge edge, double from, double to, List<Stretch> below) {
        if (to > from
                && !isOfKimonoSleeve(edge)
                && edge.path().pointAt((from + to) / 2).y() < y) {
            below.add(new Stretch(edge.name(), from, to));
        }
    }

    /** No line is drawn new across the mouth of a dart. */
    private double lowest(Edge edge, double at) {
        double low = 0;
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (dart.toMm() <= at) {
                low = Math.max(low, dart.toMm());
            }
        }
        return low;
    }

    private double highest(Edge edge, double at) {
        double high = edge.length();
        for (Dart.EdgeDart dart : piece.dartsOn(edge.name())) {
            if (dart.fromMm() >= at) {
                high = Math.min(high, dart.fromMm());
            }
        }
        return high;
    }
}
