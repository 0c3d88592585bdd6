package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.geometry.Point;

/** Points that can be asked for by place, in squares as large as the tolerance. */
final class NearPoints {

    private record Square(long x, long y) {}

    private final Map<Square, List<Point>> squares = new HashMap<>();
    private final double toleranceMm;

    private NearPoints(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    static NearPoints of(List<Mark.Spot> spots, double toleranceMm) {
        NearPoints near = new NearPoints(toleranceMm);
        for (Mark.Spot spot : spots) {
            near.squares
                    .computeIfAbsent(near.square(spot.at(), 0, 0), s -> new ArrayList<>())
                    .add(spot.at());
        }
        return near;
    }

    boolean isEmpty() {
        return squares.isEmpty();
    }

    /** The nearest of the points that are within the tolerance. */
    Optional<Point> nearest(Point p) {
        Point nearest = null;
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (Point one : squares.getOrDefault(square(p, dx, dy), List.of())) {
                    boolean nearer = nearest == null || one.distanceTo(p) < nearest.distanceTo(p);
                    if (one.isNear(p, toleranceMm) && nearer) {
                        nearest = one;
                    }
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    private Square square(Point p, int dx, int dy) {
        return new Square((long) Math.floor(p.x() / toleranceMm) + dx, (long) Math.floor(p.y() / toleranceMm) + dy);
    }
}
