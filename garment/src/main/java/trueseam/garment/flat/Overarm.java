package trueseam.garment.flat;

import java.util.Comparator;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * The sleeve of a kimono piece, measured along and square to its overarm seam.
 *
 * <pre>{@code
 *    N--S_______________       S: shoulder point, U: where the side turns into the sleeve
 *    |     |   |        |      F: square over U; the upper arm is read 2 in below F
 *    |     F  _|__......|      (common practice: the arm is fullest a hand below the armpit)
 *    |    U /
 *    |     |
 * }</pre>
 */
public final class Overarm {

    /** The upper arm is read so far below the underarm point: 2 in. */
    public static final double BELOW_UNDERARM_MM = 50.8;

    private Overarm() {}

    /**
     * Where the upper arm is read on the seam under the arm.
     *
     * @param piece a kimono piece
     * @return the place, or nothing where an edge is missing or the square does not meet the seam
     */
    public static Optional<PathPlace> upperArmPlace(Piece piece) {
        return upperArmAlongMm(piece).flatMap(along -> {
            Path down = down(piece.firstOf(EdgeRole.OVERARM).orElseThrow().path(), piece);
            double on = Math.max(0, Math.min(down.length(), along));
            Point top = down.pointAt(on);
            return piece
                    .firstOf(EdgeRole.UNDERARM)
                    .orElseThrow()
                    .path()
                    .crossings(top, down.tangentAt(on).left())
                    .stream()
                    .min(Comparator.comparingDouble(place -> place.point().distanceTo(top)));
        });
    }

    private static Optional<Double> upperArmAlongMm(Piece piece) {
        Optional<Edge> over = piece.firstOf(EdgeRole.OVERARM);
        Optional<Edge> under = piece.firstOf(EdgeRole.UNDERARM);
        if (over.isEmpty() || under.isEmpty()) {
            return Optional.empty();
        }
        Path down = down(over.get().path(), piece);
        Point underarm = underarmPoint(piece, under.get().path());
        // The foot may lie beyond the shoulder point, on the line carried on.
        double along = underarm.minus(down.start()).dot(down.startTangent());
        return Optional.of(along + BELOW_UNDERARM_MM);
    }

    /** The upper arm of one piece; nothing where the square does not meet the seam under the arm. */
    static Optional<FlatPart> upperArm(Piece piece) {
        return upperArmAlongMm(piece).flatMap(along -> {
            Path down = down(piece.firstOf(EdgeRole.OVERARM).orElseThrow().path(), piece);
            Point top = down.pointAt(Math.max(0, Math.min(down.length(), along)));
            return upperArmPlace(piece)
                    .map(place -> new FlatPart(
                            piece.name(),
                            "square to the overarm, 2 in below the underarm point",
                            place.point().distanceTo(top),
                            1));
        });
    }

    /** From the centre back to the wrist. */
    static Optional<FlatPart> fromNape(Piece back) {
        Optional<Edge> over = back.firstOf(EdgeRole.OVERARM);
        Optional<Edge> centre = back.firstOf(EdgeRole.CENTRE);
        if (over.isEmpty() || centre.isEmpty()) {
            return Optional.empty();
        }
        Path line = centre.get().path();
        Point nape = line.start().y() > line.end().y() ? line.start() : line.end();
        Point shoulder = down(over.get().path(), back).start();
        double mm = nape.distanceTo(shoulder) + back.sewnLength(over.get().name());
        return Optional.of(new FlatPart(back.name(), "centre back over the shoulder point to the wrist", mm, 1));
    }

    /** The overarm seam from the shoulder point to the wrist. */
    private static Path down(Path over, Piece piece) {
        Point shoulder = piece.firstOf(EdgeRole.SHOULDER)
                .map(edge -> edge.path().start())
                .orElse(over.end());
        boolean atStart = over.start().distanceTo(shoulder) < over.end().distanceTo(shoulder);
        return atStart ? over : over.reversed();
    }

    private static Point underarmPoint(Piece piece, Path under) {
        Path side = piece.firstOf(EdgeRole.SIDE).map(Edge::path).orElse(under);
        boolean atStart = Math.min(
                        under.start().distanceTo(side.start()), under.start().distanceTo(side.end()))
                <= Math.min(under.end().distanceTo(side.start()), under.end().distanceTo(side.end()));
        return atStart ? under.start() : under.end();
    }
}
