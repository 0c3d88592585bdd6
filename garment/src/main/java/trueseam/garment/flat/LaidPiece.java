package trueseam.garment.flat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;

/**
 * A piece with the heights of the garment laid on it.
 *
 * @param piece the piece
 * @param ties where heights of the garment lie on it
 * @param times how often its width counts in the girth
 * @param withFork whether what trousers have between the legs counts: round a leg it does, round the trunk not
 */
record LaidPiece(Piece piece, HeightTies ties, int times, boolean withFork) {

    /** Its share of the girth at a height; nothing where the piece does not reach. */
    OptionalDouble girthMm(double heightMm) {
        double y = ties.y(heightMm);
        return Span.at(piece, y)
                .map(span -> OptionalDouble.of(times * (span.widthMm() - forkMm(span, y))))
                .orElse(OptionalDouble.empty());
    }

    /**
     * What trousers have below the hip level for the fork: it goes between the legs and not round the body. Read from the upright
     * through the crotch seam at hip level.
     */
    private double forkMm(Span span, double y) {
        OptionalDouble hip = piece.level(LevelName.HIP);
        Optional<Edge> crotch = piece.firstOf(EdgeRole.CROTCH);
        if (withFork || crotch.isEmpty() || hip.isEmpty() || y >= hip.getAsDouble()) {
            return 0;
        }
        Optional<PathPlace> seam = crotch.get().path().atLevel(hip.getAsDouble());
        if (seam.isEmpty()) {
            return 0;
        }
        double x = seam.get().point().x();
        double beyondLeft = x - span.left().x();
        double beyondRight = span.right().x() - x;
        return Math.max(0, Math.min(beyondLeft, beyondRight));
    }

    /** The height of the upper end of its first edge of a role, where it has one. */
    OptionalDouble topMm(EdgeRole role) {
        return piece.firstOf(role)
                .map(edge -> OptionalDouble.of(ties.heightMm(upper(edge.path()).y())))
                .orElse(OptionalDouble.empty());
    }

    /** The lowest and highest height of its edges of a role; empty without such an edge. */
    Optional<double[]> reach(EdgeRole role) {
        List<Edge> edges = piece.edgesOf(role);
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Edge edge : edges) {
            low = Math.min(low, ties.heightMm(edge.path().bounds().minY()));
            high = Math.max(high, ties.heightMm(edge.path().bounds().maxY()));
        }
        return Optional.of(new double[] {low, high});
    }

    /** The height at which so much of a seam from top to bottom lies below the waist; nothing where the seam is shorter. */
    OptionalDouble downTheSideMm(EdgeRole seam, double lengthMm) {
        Optional<Edge> side = piece.firstOf(seam);
        if (side.isEmpty()) {
            return OptionalDouble.empty();
        }
        Path path = side.get().path();
        Path down = upper(path).equals(path.start()) ? path : path.reversed();
        double waist = down.atLevel(ties.y(0)).map(PathPlace::alongMm).orElse(0.0);
        double along = waist + lengthMm;
        return along <= down.length()
                ? OptionalDouble.of(ties.heightMm(down.pointAt(along).y()))
                : OptionalDouble.empty();
    }

    private static Point upper(Path path) {
        return path.start().y() >= path.end().y() ? path.start() : path.end();
    }
}
