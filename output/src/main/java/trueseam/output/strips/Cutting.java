package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.drawing.Shapes;

/** Cuts strips that are too long for a sheet, or that go round a corner of the piece, and numbers where the parts meet. */
final class Cutting {

    /** A part that fits on a sheet, how it is turned to stand upright, and its bounds then. */
    record Strip(Sliver sliver, Motion turn, Bounds bounds) {}

    /** Wider ones are cut at the corners they go round, unless they fill their box. */
    private static final double WIDEST_MM = 70;

    /** Crumbs of no use to anybody, mm². */
    private static final double CRUMB_MM2 = 0.5;

    /** A long strip is cut where the sheet ends, so that the rests fill the sheets up; but no rest is shorter, mm. */
    private static final double SHORTEST_MM = 60;

    private static final double SLACK_MM = 0.1;
    private static final double FAR_MM = 10_000;

    private final double width;
    private final double height;
    private final Map<String, List<Corners.Cut>> corners;
    private final List<Strip> strips = new ArrayList<>();
    private int joins;

    private Cutting(double width, double height, Map<String, List<Corners.Cut>> corners) {
        this.width = width;
        this.height = height;
        this.corners = corners;
    }

    /**
     * Strips no larger than a sheet's room.
     *
     * @param corners the cuts at the corners of each piece
     */
    static List<Strip> toFit(
            List<Sliver> slivers, double width, double height, Map<String, List<Corners.Cut>> corners) {
        Cutting cutting = new Cutting(width, height, corners);
        slivers.forEach(cutting::add);
        return List.copyOf(cutting.strips);
    }

    private void add(Sliver sliver) {
        Motion turn = upright(sliver.paper());
        Bounds b = bounds(sliver.paper(), turn);
        boolean fits = b.width() <= width && b.height() <= height;
        boolean slim = b.width() <= WIDEST_MM || sliver.paper().areaMm2() > b.width() * b.height() / 2;
        if (fits && slim) {
            strips.add(new Strip(sliver, turn, b));
            return;
        }
        for (Corners.Cut cut : corners.getOrDefault(sliver.piece(), List.of())) {
            List<Region> parts = worthwhile(sliver, Sliver.parts(sliver.paper().difference(cut.slit())));
            if (parts.size() > 1) {
                addParts(sliver, cut, parts);
                return;
            }
        }
        if (fits) {
            strips.add(new Strip(sliver, turn, b));
            return;
        }
        shorten(sliver, turn, b);
    }

    /** The parts, if each holds enough of the sliver to be a strip of its own. */
    private static List<Region> worthwhile(Sliver sliver, List<Region> parts) {
        for (Region part : parts) {
            Region area = sliver.area().intersection(part);
            if (area.areaMm2() <= CRUMB_MM2) {
                return List.of();
            }
            Bounds b = bounds(area, upright(area));
            if (b.height() < SHORTEST_MM) {
                return List.of();
            }
        }
        return parts;
    }

    private void addParts(Sliver sliver, Corners.Cut cut, List<Region> parts) {
        List<Sliver.Join> marks = marked(sliver, cut);
        for (Region part : parts) {
            add(sliver.within(part, marks));
        }
    }

    /** The joins there are and a new one at each crossing of a cut. */
    private List<Sliver.Join> marked(Sliver sliver, Corners.Cut cut) {
        List<Sliver.Join> marks = new ArrayList<>(sliver.joins());
        Motion along = Motion.pivot(Point.ORIGIN, -cut.across().angle());
        for (Region crossing : Sliver.parts(sliver.paper().intersection(cut.slit()))) {
            joins++;
            Point middle = along.inverse().apply(bounds(crossing, along).centre());
            marks.add(new Sliver.Join(joins, middle, cut.across()));
        }
        return marks;
    }

    private void shorten(Sliver sliver, Motion turn, Bounds b) {
        boolean across = b.height() > height;
        double at = across
                ? Math.min(b.minY() + height - SLACK_MM, b.maxY() - SHORTEST_MM)
                : b.centre().x();
        Vec over = turn.inverse().apply(across ? new Vec(0, 1) : new Vec(1, 0));
        Corners.Cut cut = new Corners.Cut(slab(across, at - 0.01, at + 0.01, turn.inverse()), over);
        List<Sliver.Join> marks = marked(sliver, cut);
        for (Region half :
                List.of(slab(across, at, FAR_MM, turn.inverse()), slab(across, -FAR_MM, at, turn.inverse()))) {
            for (Region part : Sliver.parts(sliver.paper().intersection(half))) {
                if (sliver.area().intersection(part).areaMm2() > CRUMB_MM2) {
                    add(sliver.within(part, marks));
                }
            }
        }
    }

    private static Region slab(boolean across, double low, double high, Motion back) {
        Bounds area = across ? new Bounds(-FAR_MM, low, FAR_MM, high) : new Bounds(low, -FAR_MM, high, FAR_MM);
        return Region.within(Shapes.rectangle(area).moved(back), 0.001);
    }

    /** The turn, to two degrees, after which an area is narrowest. */
    private static Motion upright(Region region) {
        List<Point> corners = new ArrayList<>();
        for (Path outline : region.outlines()) {
            outline.segments().forEach(segment -> corners.add(segment.start()));
        }
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int degrees = 0; degrees < 180; degrees += 2) {
            double width = width(corners, Math.toRadians(degrees));
            if (width < least) {
                least = width;
                best = degrees;
            }
        }
        return best == 0 ? Motion.NONE : Motion.pivot(Point.ORIGIN, Math.toRadians(best));
    }

    private static double width(List<Point> corners, double turnRad) {
        double cos = Math.cos(turnRad);
        double sin = Math.sin(turnRad);
        double min = Double.MAX_VALUE;
        double max = -Double.MAX_VALUE;
        for (Point p : corners) {
            double across = p.x() * cos - p.y() * sin;
            min = Math.min(min, across);
            max = Math.max(max, across);
        }
        return max - min;
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
