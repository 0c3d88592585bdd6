package trueseam.intake.apparel;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.offset.Offset;

/** Where a corner of a boundary has its like on the line that runs beside it. */
public final class Opposite {

    /** A sew line bends by more where it has a corner. */
    private static final double BEND_RAD = Math.toRadians(8);

    /** Edges meet at more; chords of a curve turn less. */
    private static final double CORNER_RAD = Math.toRadians(20);

    /** The corner of a cutting line lies up to so many allowances from that of the stitching line: it is mitred to that. */
    private static final double CORNER_WITHIN = Offset.MITRE_LIMIT;

    /** Bends nearer than this to a corner may be its like, even where the two lines touch. */
    private static final double TOUCHING_MM = 1;

    private static final double SPECK_MM = 0.01;

    private final Path line;
    private final List<Point> bends;

    /**
     * A line beside boundaries.
     *
     * @param line closed, such as a stitching line
     */
    public Opposite(Path line) {
        this.line = line;
        this.bends = bends(line, BEND_RAD);
    }

    private static List<Point> bends(Path line, double leastRad) {
        List<Segment> strokes =
                line.segments().stream().filter(s -> s.length() > SPECK_MM).toList();
        List<Point> bends = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            Segment before = strokes.get(i == 0 ? strokes.size() - 1 : i - 1);
            if (Math.abs(before.tangent(1).angleTo(strokes.get(i).tangent(0))) > leastRad) {
                bends.add(strokes.get(i).start());
            }
        }
        return bends;
    }

    /**
     * The corners of the line itself: where its like in the boundary was cut round, nothing else tells them.
     *
     * @return where it bends as edges do that meet
     */
    public List<Point> ownCorners() {
        return bends(line, CORNER_RAD);
    }

    /**
     * The like of a corner.
     *
     * @param corner a corner of the boundary, mm
     * @return the bend of the line that is nearest to it, if one is near enough to be mitred; else the nearest point of the line
     */
    public Point ofCorner(Point corner) {
        Point best = line.nearest(corner).point();
        double nearest = CORNER_WITHIN * best.distanceTo(corner) + TOUCHING_MM;
        for (Point bend : bends) {
            if (bend.distanceTo(corner) < nearest) {
                nearest = bend.distanceTo(corner);
                best = bend;
            }
        }
        return best;
    }
}
