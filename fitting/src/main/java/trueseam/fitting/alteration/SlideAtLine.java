package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Lengthens or shortens a piece at a line across the grain: all below the line slides along the grain, and the edges that
 * cross the line are joined again, tapering from the old line to the slid one.
 *
 * <pre>{@code
 *      |    \          |    \        Each crossing edge grows by just the slide,
 *      |     \         |     )       so edges that are sewn together still walk.
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

    private static final double STRAIGHT_RAD = 1e-6;

    private final Piece piece;
    private final double y;
    private final double longerMm;
    private final String levelWord;

    SlideAtLine(Piece piece, LevelName level, double longerMm) {
        this.piece = piece;
        this.longerMm = longerMm;
        this.levelWord = level.word() + " line";
        this.y = piece.level(level)
                .orElseThrow(() -> new AlterationException(
                        piece.name(), levelWord, longerMm, "the piece has no such line; mark it on the piece."));
    }

    List<Step> steps() {
        List<Stretch> below = new ArrayList<>();
        List<Step.Join> joins = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            cut(edge, below, joins);
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

    private void cut(Edge edge, List<Stretch> below, List<Step.Join> joins) {
        double from = 0;
        List<PathPlace> crossings = edge.path().crossings(new Point(0, y), new Vec(1, 0));
        for (PathPlace crossing : crossings) {
            if (crossing.alongMm() <= 1e-6 || crossing.alongMm() >= edge.length() - 1e-6) {
                continue;
            }
            Step.Join join = join(edge, crossing);
            addIfBelow(edge, from, join.gap().fromMm(), below);
            joins.add(join);
            from = join.gap().toMm();
        }
        addIfBelow(edge, from, edge.length(), below);
    }

    private void addIfBelow(Edge edge, double from, double to, List<Stretch> below) {
        if (to > from && edge.path().pointAt((from + to) / 2).y() < y) {
            below.add(new Stretch(edge.name(), from, to));
        }
    }

    private Step.Join join(Edge edge, PathPlace crossing) {
        double at = crossing.alongMm();
        boolean upright = edge.role() == EdgeRole.CENTRE
                || Math.abs(edge.path().tangentAt(at).x()) <= STRAIGHT_RAD;
        if (upright && longerMm > 0) {
            return new Step.Join(new Stretch(edge.name(), at, at), JoinForm.STRAIGHT);
        }
        double reach = Math.max(BLEND_MM, Math.abs(longerMm));
        double low = Math.max(lowest(edge, at), at - reach);
        double high = Math.min(highest(edge, at), at + reach);
        double half = Math.min(at - low, high - at);
        double gap = 2 * half;
        if (gap + longerMm < 1) {
            throw new AlterationException(
                    piece.name(),
                    levelWord,
                    longerMm,
                    "edge " + edge.name() + " leaves only " + Math.round(gap)
                            + " mm at the line to take the change away from; move the line or take another size.");
        }
        Stretch stretch = new Stretch(edge.name(), at - half, at + half);
        return new Step.Join(
                stretch,
                upright
                        ? JoinForm.STRAIGHT
                        : JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, gap + longerMm));
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
