package trueseam.drafting;

import java.util.List;
import trueseam.garment.pattern.Dart;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A shoulder seam from the shoulder point to the neck point, straight when its dart is sewn.
 *
 * @param path from shoulder point to neck point, over the cap of the dart
 * @param darts the dart at the back, none in front
 */
record ShoulderLine(Path path, List<Dart> darts) {

    /** Common practice: a back shoulder dart takes up half an inch and is about three inches long. */
    private static final double INTAKE_MM = 12.7;

    private static final double LENGTH_MM = 78;

    /** The dart begins so far along the shoulder from the neck. */
    static final double DART_SHARE = 0.42;

    static final String DART = "shoulder dart";

    /**
     * A plain shoulder.
     *
     * @param neck the neck point
     * @param slopeRad below the level
     * @param mm its length
     */
    static ShoulderLine plain(Point neck, double slopeRad, double mm) {
        return new ShoulderLine(Path.through(neck.plus(Vec.atAngle(-slopeRad).times(mm)), neck), List.of());
    }

    /**
     * A shoulder with a dart towards the shoulder blade. The part outside the dart is turned outwards about its apex, so
     * closing the dart brings it back into one straight line.
     *
     * @param neck the neck point
     * @param slopeRad below the level, of the line from end to end
     * @param mm its length, dart sewn
     * @param blade the shoulder blade point
     */
    static ShoulderLine darted(Point neck, double slopeRad, double mm, Point blade) {
        double slope = slopeRad;
        Vec along = Vec.atAngle(-slope);
        Point inner = neck.plus(along.times(DART_SHARE * mm));
        double legMm = Math.min(LENGTH_MM, 0.85 * inner.distanceTo(blade));
        double turn = 2 * Math.asin(INTAKE_MM / 2 / legMm);
        // Opening the dart turns the outer part down; lying the closed line flatter by as much keeps the whole slope.
        slope -= (1 - DART_SHARE) * turn;
        along = Vec.atAngle(-slope);
        inner = neck.plus(along.times(DART_SHARE * mm));
        Point apex = inner.plus(blade.minus(inner).unit().times(legMm));
        Motion open = Motion.pivot(apex, -turn);
        Point outer = open.apply(inner);
        Point cap = DartCap.point(apex, inner, along.reversed(), -turn / 2);
        Point end = open.apply(neck.plus(along.times(mm)));
        Path path = Path.through(end, outer, cap, inner, neck);
        double from = end.distanceTo(outer);
        double to = from + outer.distanceTo(cap) + cap.distanceTo(inner);
        return new ShoulderLine(path, List.of(new Dart.EdgeDart(DART, "shoulder", from, to, apex)));
    }

    Point shoulderPoint() {
        return path.start();
    }

    Point neckPoint() {
        return path.end();
    }

    /** From the shoulder point inwards. */
    Vec inwards() {
        return path.startTangent();
    }
}
