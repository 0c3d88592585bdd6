package trueseam.intake.tiles;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A page slid over the edge of another until a line of it takes up an end there.
 *
 * @param leaf the page that is slid
 * @param window what pages show
 * @param right whether to the right; else down
 */
record Slide(Leaf leaf, Bounds window, boolean right) {

    /** Nobody overlaps pages by more, mm. */
    private static final double WIDEST_MM = 45;

    /** An end that runs nearly square over the edge says nothing: it would be taken up anywhere. */
    private static final double SQUARE = 0.15;

    /** How wide the overlap would be, for every line that takes up an end. */
    List<Double> overlaps(List<Crossing> ends) {
        double near = right ? window.minX() : window.maxY();
        List<Double> overlaps = new ArrayList<>();
        for (Crossing end : ends) {
            double square = right ? Math.abs(Math.sin(end.angleRad())) : Math.abs(Math.cos(end.angleRad()));
            if (square < SQUARE) {
                continue;
            }
            Point through = right ? new Point(0, end.at()) : new Point(end.at(), 0);
            Vec along = right ? new Vec(1, 0) : new Vec(0, 1);
            for (Inked line : leaf.lines()) {
                Bounds b = line.bounds();
                boolean reached = right
                        ? b.minX() <= near + WIDEST_MM && b.minY() <= end.at() && end.at() <= b.maxY()
                        : b.maxY() >= near - WIDEST_MM && b.minX() <= end.at() && end.at() <= b.maxX();
                if (reached && line.stroke().look().equals(end.look())) {
                    for (PathPlace place : line.stroke().path().crossings(through, along)) {
                        double overlap = right
                                ? place.point().x() - near
                                : near - place.point().y();
                        double angle =
                                line.stroke().path().tangentAt(place.alongMm()).angle();
                        boolean on = Math.abs(Math.IEEEremainder(angle - end.angleRad(), Math.PI)) < 0.02;
                        if (on && -0.5 <= overlap && overlap <= WIDEST_MM) {
                            overlaps.add(overlap);
                        }
                    }
                }
            }
        }
        return overlaps;
    }
}
