package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.polygon.Region;
import trueseam.output.drawing.Shapes;

/** Cuts slivers that are too long for a sheet, or that go round a corner of the piece, and numbers where the parts meet. */
final class Cutting {

    /** A part that fits on a sheet, how it is turned to stand upright, and its bounds then. */
    record Strip(Sliver sliver, Motion turn, Bounds bounds) {}

    /** Wider ones are cut unless they fill their box: they go round a corner. */
    private static final double WIDEST_MM = 70;

    /** Crumbs of no use to anybody, mm². */
    private static final double CRUMB_MM2 = 0.5;

    private static final double FAR_MM = 10_000;

    private final double width;
    private final double height;
    private final List<Strip> strips = new ArrayList<>();
    private int joins;

    private Cutting(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Strips no larger than a sheet's room. */
    static List<Strip> toFit(List<Sliver> slivers, double width, double height) {
        Cutting cutting = new Cutting(width, height);
        slivers.forEach(cutting::add);
        return List.copyOf(cutting.strips);
    }

    private void add(Sliver sliver) {
        Motion turn = upright(sliver.paper());
        Bounds b = bounds(sliver.paper(), turn);
        boolean fits = b.width() <= width && b.height() <= height;
        if (fits && (b.width() <= WIDEST_MM || sliver.paper().areaMm2() > b.width() * b.height() / 2)) {
            strips.add(new Strip(sliver, turn, b));
            return;
        }
        double y = b.centre().y();
        Motion back = turn.inverse();
        List<Sliver.Join> marks = new ArrayList<>(sliver.joins());
        Region cut = sliver.paper().intersection(slab(y - 0.01, y + 0.01, back));
        for (Region crossing : Sliver.parts(cut)) {
            joins++;
            marks.add(new Sliver.Join(joins, back.apply(bounds(crossing, turn).centre())));
        }
        for (Region half : List.of(slab(-FAR_MM, y, back), slab(y, FAR_MM, back))) {
            for (Region paper : Sliver.parts(sliver.paper().intersection(half))) {
                Region area = sliver.area().intersection(paper);
                if (area.areaMm2() > CRUMB_MM2) {
                    Region near = paper.grown(0.1);
                    List<Sliver.Join> here =
                            marks.stream().filter(m -> near.contains(m.at())).toList();
                    add(new Sliver(sliver.piece(), sliver.oldLine(), sliver.added(), area, paper, here));
                }
            }
        }
    }

    private static Region slab(double low, double high, Motion back) {
        return Region.within(
                Shapes.rectangle(new Bounds(-FAR_MM, low, FAR_MM, high)).moved(back), 0.001);
    }

    /** The turn, to two degrees, after which an area is narrowest. */
    private static Motion upright(Region region) {
        Motion best = Motion.NONE;
        double least = Double.MAX_VALUE;
        for (int degrees = 0; degrees < 180; degrees += 2) {
            Motion turn = Motion.pivot(Point.ORIGIN, Math.toRadians(degrees));
            Bounds b = bounds(region, turn);
            if (b.width() < least) {
                least = b.width();
                best = turn;
            }
        }
        return best;
    }

    private static Bounds bounds(Region region, Motion turn) {
        Bounds all = null;
        for (Path outline : region.outlines()) {
            for (Segment s : outline.segments()) {
                Point p = turn.apply(s.start());
                all = all == null ? Bounds.of(p, p) : all.with(p);
            }
        }
        return all;
    }
}
