package trueseam.fitting.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Small marks inside a piece after its alteration (common practice): buttonholes keep their distance from the ends of the opening and
 * from bust and waist level, and are spaced evenly between; a pocket goes with the level or the waist that it hangs on and with its side
 * seam; the opening in a seam keeps its length from the waist.
 */
final class SmallMarks {

    /** A mark that is off by less than this is where it belongs. */
    private static final double THERE_MM = 0.05;

    /** A buttonhole this near to bust or waist level was set there. */
    private static final double AT_LEVEL_MM = 12.7;

    /** A pocket this near to the side seam is set by it. */
    private static final double BY_THE_SIDE_MM = 80;

    /** A mark this near to an edge is set on it. */
    private static final double ON_EDGE_MM = 3;

    private final Piece before;
    private final Piece after;
    private final StepList list;

    private SmallMarks(Piece before, Piece after) {
        this.before = before;
        this.after = after;
        this.list = new StepList(after);
    }

    static List<PieceWork> work(Pattern original, Pattern altered) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : original.pieces()) {
            Piece now = altered.piece(piece.name());
            if (!piece.kind().isFollower() && !now.equals(piece)) {
                SmallMarks marks = new SmallMarks(piece, now);
                marks.buttonholes();
                marks.pockets();
                marks.plackets();
                if (!marks.list.isEmpty()) {
                    work.add(new PieceWork(piece.name(), marks.list.finished()));
                }
            }
        }
        return work;
    }

    private static List<Marking> all(Piece piece, String kind) {
        return piece.markings().stream().filter(marking -> marking.is(kind)).toList();
    }

    private static double heightOf(Marking marking) {
        return middle(marking).y();
    }

    private static Point middle(Marking marking) {
        return marking.path().pointAt(marking.path().length() / 2);
    }

    private Marking now(Marking marking) {
        return after.markings().stream()
                .filter(other -> other.name().equals(marking.name()))
                .findFirst()
                .orElse(marking);
    }

    private void setAnew(Marking marking, double acrossMm, double alongMm) {
        if (Math.abs(acrossMm) > THERE_MM || Math.abs(alongMm) > THERE_MM) {
            list.add(new Step.Remark(Step.Inside.MARKING, marking.name(), acrossMm, alongMm));
        }
    }

    private void buttonholes() {
        List<Marking> holes = all(before, Marking.BUTTONHOLE).stream()
                .sorted(Comparator.comparingDouble(SmallMarks::heightOf).reversed())
                .toList();
        Optional<Edge> centre = before.firstOf(EdgeRole.CENTRE);
        if (holes.size() < 2 || centre.isEmpty()) {
            return;
        }
        int last = holes.size() - 1;
        List<Integer> kept = new ArrayList<>(List.of(0));
        for (LevelName level : List.of(LevelName.BUST, LevelName.WAIST)) {
            keptAt(holes, level)
                    .filter(i -> 0 < i && i < last && !kept.contains(i))
                    .ifPresent(kept::add);
        }
        kept.add(last);
        kept.sort(Comparator.naturalOrder());
        for (int k = 1; k < kept.size(); k++) {
            double from = wanted(holes, kept.get(k - 1));
            double to = wanted(holes, kept.get(k));
            int gaps = kept.get(k) - kept.get(k - 1);
            for (int i = k == 1 ? 0 : 1; i <= gaps; i++) {
                Marking hole = holes.get(kept.get(k - 1) + i);
                setAnew(hole, 0, from + (to - from) * i / gaps - heightOf(now(hole)));
            }
        }
    }

    /** The buttonhole that was set at a level, and stays there. */
    private Optional<Integer> keptAt(List<Marking> holes, LevelName level) {
        if (before.level(level).isEmpty()) {
            return Optional.empty();
        }
        double y = before.level(level).getAsDouble();
        int nearest = 0;
        for (int i = 1; i < holes.size(); i++) {
            if (Math.abs(heightOf(holes.get(i)) - y) < Math.abs(heightOf(holes.get(nearest)) - y)) {
                nearest = i;
            }
        }
        return Math.abs(heightOf(holes.get(nearest)) - y) <= AT_LEVEL_MM ? Optional.of(nearest) : Optional.empty();
    }

    /** Where a kept buttonhole belongs: at its level, or as far from its end of the opening as before. */
    private double wanted(List<Marking> holes, int i) {
        double y = heightOf(holes.get(i));
        for (LevelName level : List.of(LevelName.BUST, LevelName.WAIST)) {
            if (keptAt(holes, level).equals(Optional.of(i))) {
                return after.level(level).orElseThrow()
                        + y
                        - before.level(level).orElseThrow();
            }
        }
        return i == 0 ? centreTop(after) + y - centreTop(before) : centreBottom(after) + y - centreBottom(before);
    }

    private static double centreTop(Piece piece) {
        return piece.firstOf(EdgeRole.CENTRE).orElseThrow().path().bounds().maxY();
    }

    private static double centreBottom(Piece piece) {
        return piece.firstOf(EdgeRole.CENTRE).orElseThrow().path().bounds().minY();
    }

    private void pockets() {
        for (Marking pocket : all(before, Marking.POCKET)) {
            Point was = middle(pocket);
            Point is = middle(now(pocket));
            double along = shiftOfNearest(pocket.path().bounds().maxY()) + was.y() - is.y();
            setAnew(pocket, besideTheSide(was, is, along), along);
        }
    }

    /** How far the line that a pocket hangs on has gone up: the nearest of the levels and the waist. */
    private double shiftOfNearest(double y) {
        double nearest = Double.POSITIVE_INFINITY;
        double shift = 0;
        for (Level level : before.levels()) {
            if (!level.name().isLengthLine() && Math.abs(level.y() - y) < nearest) {
                nearest = Math.abs(level.y() - y);
                shift = after.level(level.name()).orElseThrow() - level.y();
            }
        }
        if (before.kind().isSkirt() || before.kind().isTrouser()) {
            double waist = before.only(EdgeRole.SIDE).path().bounds().maxY();
            if (Math.abs(waist - y) < nearest) {
                shift = after.only(EdgeRole.SIDE).path().bounds().maxY() - waist;
            }
        }
        return shift;
    }

    /** How far a pocket goes across so that it is as far from its side seam as before. */
    private double besideTheSide(Point was, Point is, double alongMm) {
        Optional<Double> side = sideAt(before, was.y());
        Optional<Double> sideNow = sideAt(after, is.y() + alongMm);
        return side.isPresent() && sideNow.isPresent() && Math.abs(side.get() - was.x()) <= BY_THE_SIDE_MM
                ? sideNow.get() + was.x() - side.get() - is.x()
                : 0;
    }

    private static Optional<Double> sideAt(Piece piece, double y) {
        return piece.firstOf(EdgeRole.SIDE)
                .flatMap(side -> side.path().atLevel(y))
                .map(place -> place.point().x());
    }

    private void plackets() {
        for (Marking end : all(before, Marking.PLACKET)) {
            Point was = end.path().start();
            for (Edge edge : before.edges()) {
                PathPlace place = edge.path().nearest(was);
                boolean isSeam = edge.role() == EdgeRole.SIDE || edge.role() == EdgeRole.CENTRE;
                if (isSeam && place.point().distanceTo(was) <= ON_EDGE_MM) {
                    Vec by = atTop(after.edge(edge.name()).path(), topLength(edge.path(), place.alongMm()))
                            .minus(now(end).path().start())
                            .plus(was.minus(place.point()));
                    setAnew(end, by.x(), by.y());
                }
            }
        }
    }

    private static boolean isUpwards(Path path) {
        return path.end().y() > path.start().y();
    }

    private static double topLength(Path path, double alongMm) {
        return isUpwards(path) ? path.length() - alongMm : alongMm;
    }

    private static Point atTop(Path path, double mm) {
        return path.pointAt(isUpwards(path) ? path.length() - mm : mm);
    }
}
