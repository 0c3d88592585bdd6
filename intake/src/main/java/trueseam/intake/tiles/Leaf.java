package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A page with what is the pattern's on it: what is printed on every page alike is left out.
 *
 * @param page the page
 * @param lines the pattern's lines on it that are seen
 */
record Leaf(Page page, List<Inked> lines) {

    /** Lines are looked at so far inside an edge, mm: a line that was cut ends a little before it or behind it. */
    private static final double INSIDE_MM = 0.3;

    /** A line that runs nearly along an edge has no place where it crosses it: below this sine. */
    private static final double ALONG = 0.1;

    Leaf {
        lines = List.copyOf(lines);
    }

    /**
     * The lines that run over an edge of its own part.
     *
     * @param upright whether the edge is upright
     * @param edge where it lies, mm
     * @param inward 1 where the page's part begins there, -1 where it ends
     * @return in the order along the edge
     */
    List<Crossing> over(boolean upright, double edge, int inward) {
        double look = edge + inward * INSIDE_MM;
        List<Crossing> over = new ArrayList<>();
        for (Inked line : lines) {
            double lo = upright ? line.bounds().minX() : line.bounds().minY();
            double hi = upright ? line.bounds().maxX() : line.bounds().maxY();
            if (look < lo || hi < look) {
                continue;
            }
            Path path = line.stroke().path();
            Point through = upright ? new Point(look, 0) : new Point(0, look);
            for (PathPlace place : path.crossings(through, upright ? new Vec(0, 1) : new Vec(1, 0))) {
                Point p = place.point();
                Vec along = path.tangentAt(Math.max(0, Math.min(path.length(), place.alongMm())));
                double across = upright ? along.x() : along.y();
                double aside = upright ? along.y() : along.x();
                boolean seen = line.visible().meets(trueseam.geometry.Bounds.of(p, p), 0.01);
                if (seen && Math.abs(across) > ALONG) {
                    double at = (upright ? p.y() : p.x()) - inward * INSIDE_MM * aside / across;
                    over.add(new Crossing(
                            at,
                            Math.floorMod(Math.round(along.angle() * 1e9), Math.round(Math.PI * 1e9)) / 1e9,
                            line.stroke().look()));
                }
            }
        }
        over.sort(Comparator.comparingDouble(Crossing::at));
        return List.copyOf(over);
    }
}
