package trueseam.output.strips;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.polygon.Region;
import trueseam.output.print.CuttingLine;

/**
 * One connected part of the paper in which the old and the new cutting line of a piece differ, or a part of that.
 *
 * @param piece the altered piece
 * @param oldLine the cutting line of the tissue
 * @param added whether it is taped on; else it is folded or cut away
 * @param area the sliver itself
 * @param paper the sliver and, beyond the old cutting line, the margin that lies on the tissue
 * @param joins where it meets the other parts it was cut from
 */
record Sliver(Piece piece, Path oldLine, boolean added, Region area, Region paper, List<Join> joins) {

    /** Thinner ones are thinner than the lines of the tissue and left out, mm. */
    static final double THINNEST_MM = 0.3;

    /** Width of what is printed beyond the old cutting line: room for a strip of tape (common practice), mm. */
    static final double MARGIN_MM = 10;

    /** How far chords may lie from a cutting line, mm. */
    static final double TOLERANCE_MM = 0.02;

    /** A place at which two parts of a sliver meet, with the number both bear. */
    record Join(int number, Point at) {}

    // Immutable.
    Sliver {
        joins = List.copyOf(joins);
    }

    /** All slivers of a piece. */
    static List<Sliver> of(AlteredPiece altered) {
        List<Sliver> all = new ArrayList<>();
        if (altered.isAltered()) {
            Path oldLine = CuttingLine.of(altered.original());
            Region before = Region.within(oldLine, TOLERANCE_MM);
            Region after = Region.within(CuttingLine.of(altered.now()), TOLERANCE_MM);
            for (Region area : parts(after.difference(before))) {
                Region under = area.grown(MARGIN_MM).intersection(before);
                all.add(new Sliver(altered.now(), oldLine, true, area, area.union(under), List.of()));
            }
            for (Region area : parts(before.difference(after))) {
                Region beyond = area.grown(MARGIN_MM).difference(before);
                all.add(new Sliver(altered.now(), oldLine, false, area, area.union(beyond), List.of()));
            }
            all.removeIf(s -> s.thicknessMm() < THINNEST_MM);
        }
        return all;
    }

    /** The connected parts of an area. */
    static List<Region> parts(Region region) {
        List<Region> parts = new ArrayList<>();
        for (Path outline : region.outlines()) {
            // Overlays can leave crumbs that have an outline only by rounding.
            if (outline.signedArea() > 0
                    && Region.faultOf(outline, TOLERANCE_MM).isEmpty()) {
                parts.add(region.intersection(Region.withinAny(List.of(outline), 0.001)));
            }
        }
        return parts;
    }

    /** Its mean thickness: its area over its length, which is half the way round it. */
    double thicknessMm() {
        double round = area.outlines().stream().mapToDouble(Path::length).sum();
        return 2 * area.areaMm2() / round;
    }

    /** The edge of the piece that most of the sliver lies along. */
    String edge() {
        Map<String, Double> along = new HashMap<>();
        for (Path outline : area.outlines()) {
            for (Segment s : outline.segments()) {
                Point middle = s.start().towards(s.end(), 0.5);
                along.merge(nearest(middle), s.start().distanceTo(s.end()), Double::sum);
            }
        }
        String most = piece.edges().get(0).name();
        for (Edge e : piece.edges()) {
            if (along.getOrDefault(e.name(), 0.0) > along.getOrDefault(most, 0.0)) {
                most = e.name();
            }
        }
        return most;
    }

    private String nearest(Point p) {
        Edge best = piece.edges().get(0);
        double least = Double.MAX_VALUE;
        for (Edge e : piece.edges()) {
            double far = Math.abs(e.path().nearest(p).point().distanceTo(p) - e.allowanceMm());
            if (far < least) {
                least = far;
                best = e;
            }
        }
        return best.name();
    }

    /** Where it is laid on the tissue: the parts of its outline that are the old cutting line. */
    List<Path> onOldLine() {
        List<Path> found = new ArrayList<>();
        for (Path outline : area.outlines()) {
            List<Point> run = new ArrayList<>();
            for (Segment s : outline.segments()) {
                Point middle = s.start().towards(s.end(), 0.5);
                boolean on = oldLine.nearest(middle).point().distanceTo(middle) < 2 * TOLERANCE_MM;
                if (on && run.isEmpty()) {
                    run.add(s.start());
                }
                if (on) {
                    run.add(s.end());
                } else if (!run.isEmpty()) {
                    found.add(Path.through(run.toArray(Point[]::new)));
                    run.clear();
                }
            }
            if (!run.isEmpty()) {
                found.add(Path.through(run.toArray(Point[]::new)));
            }
        }
        return found;
    }

    /** Which piece and edge it belongs to. */
    String place() {
        return piece.name() + ", " + edge() + ":";
    }

    /** What is done with it. */
    String task() {
        return added
                ? "tape on, dashed line to the old cutting line"
                : "fold or cut away, dashed line on the old cutting line";
    }
}
