package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.naming.Outline;

/** A long straight strip: a band. Gores and panels are never exact rectangles so long (common practice). */
final class BandShape {

    /** So many times as long as wide, at least: a flat straight waistband of 3 in for a waist of 24 in is eight times. */
    private static final double LONG = 3;

    /** What is shorter goes round a wrist, what is longer round a waist, mm (a wrist of 140 to 230, ISO 8559-2 sizes). */
    private static final double WRIST_MM = 360;

    private static final double SHORTEST_MM = 130;
    private static final double LONGEST_MM = 1800;

    /** How far a corner may lie off the rectangle, as part of its width. */
    private static final double SQUARE = 0.005;

    private static final double STRAIGHT_MM = 0.05;

    private BandShape() {}

    /** What kind of band it is, by its measures and by what is written in it; nothing where it is no strip or is said to be something else. */
    static Optional<PieceKind> of(Outline outline) {
        Optional<Double> longSide = longSide(outline.line());
        if (longSide.isEmpty()) {
            return Optional.empty();
        }
        for (String words : outline.words()) {
            Set<PieceKind> named = NamedKinds.of(words);
            if (!named.isEmpty()) {
                return named.stream().filter(PieceKind::isBand).findFirst();
            }
        }
        return Optional.of(longSide.get() < WRIST_MM ? PieceKind.CUFF : PieceKind.WAISTBAND);
    }

    private static Optional<Double> longSide(Path line) {
        List<Point> corners = corners(line);
        if (corners.size() != 4) {
            return Optional.empty();
        }
        double a = corners.get(0).distanceTo(corners.get(1));
        double b = corners.get(1).distanceTo(corners.get(2));
        double wide = Math.min(a, b);
        double longer = Math.max(a, b);
        double skew = Math.abs(
                corners.get(0).distanceTo(corners.get(2)) - corners.get(1).distanceTo(corners.get(3)));
        double uneven = Math.max(
                Math.abs(a - corners.get(2).distanceTo(corners.get(3))),
                Math.abs(b - corners.get(3).distanceTo(corners.get(0))));
        boolean square = skew <= SQUARE * wide && uneven <= SQUARE * wide;
        return square && longer >= LONG * wide && longer >= SHORTEST_MM && longer <= LONGEST_MM
                ? Optional.of(longer)
                : Optional.empty();
    }

    /** The corners of a line of straight strokes; places where it runs straight on are none. */
    private static List<Point> corners(Path line) {
        List<Point> points = new ArrayList<>(line.flattened(STRAIGHT_MM));
        if (points.size() > 1 && points.get(0).isNear(points.get(points.size() - 1), STRAIGHT_MM)) {
            points.remove(points.size() - 1);
        }
        for (int i = points.size() - 1; i >= 0 && points.size() > 3; i--) {
            Point before = points.get((i + points.size() - 1) % points.size());
            Point after = points.get((i + 1) % points.size());
            double ux = after.x() - before.x();
            double uy = after.y() - before.y();
            double length = Math.hypot(ux, uy);
            double off = Math.abs(
                    ux * (points.get(i).y() - before.y()) - uy * (points.get(i).x() - before.x()));
            if (length < STRAIGHT_MM || off / length < STRAIGHT_MM) {
                points.remove(i);
            }
        }
        return points;
    }
}
