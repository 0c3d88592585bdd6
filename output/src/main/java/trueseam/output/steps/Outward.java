package trueseam.output.steps;

import java.util.List;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Vec;

/** Which way is out of a piece at a place of its outline: to the right of the way round, which is anticlockwise. */
final class Outward {

    /** Where the outside lies nearly along the grain, "out" says nothing about a movement across it. */
    private static final double CLEAR = 0.2;

    private static final double CORNER_MM = 1e-6;

    private final Piece piece;

    Outward(Piece piece) {
        this.piece = piece;
    }

    /** At a corner the mean of both edges. */
    Vec at(Place place) {
        Edge edge = piece.edge(place.edge());
        int n = piece.edges().size();
        int i = piece.indexOf(place.edge());
        Vec before;
        Vec after;
        if (place.alongMm() <= CORNER_MM) {
            before = piece.edges().get((i + n - 1) % n).path().endTangent();
            after = edge.path().startTangent();
        } else if (place.alongMm() >= edge.length() - CORNER_MM) {
            before = edge.path().endTangent();
            after = piece.edges().get((i + 1) % n).path().startTangent();
        } else {
            before = edge.path().tangentAt(place.alongMm());
            after = before;
        }
        return before.right().plus(after.right());
    }

    /** Of several stretches the mean, each by its length. */
    Vec of(List<Stretch> stretches) {
        Vec sum = Vec.ZERO;
        for (Stretch stretch : stretches) {
            Path path = piece.edge(stretch.edge()).path();
            sum = sum.plus(path.pointAt(stretch.toMm())
                    .minus(path.pointAt(stretch.fromMm()))
                    .right());
        }
        double longest = stretches.stream().mapToDouble(Stretch::lengthMm).sum();
        return longest > 0 ? sum.times(1 / longest) : sum;
    }

    /** {@code out}, {@code inwards}, or the side where out is not across the grain. */
    static String across(double mm, Vec outward) {
        if (Math.abs(outward.x()) < CLEAR) {
            return side(mm);
        }
        return (mm > 0) == (outward.x() > 0) ? "out" : "inwards";
    }

    static String side(double mm) {
        return mm > 0 ? "to the right" : "to the left";
    }

    static String along(double mm) {
        return mm > 0 ? "up" : "down";
    }
}
