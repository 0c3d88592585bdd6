package trueseam.cloth.lay;

import java.util.List;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * The fold of a half piece. One that runs with the grain, such as a centre front, can lie at a lengthwise fold of the cloth; one that runs across
 * it, such as the centre front of a waistband that is cut along the cloth, cannot: that piece is laid opened.
 *
 * @param from where it begins, in the piece
 * @param to where it ends
 */
record FoldLine(Point from, Point to) {

    /** A fold so much off the grain is on it still: 1 mm in a metre. */
    private static final double WITH_GRAIN = 0.001;

    /** The fold of a piece that has one. */
    static FoldLine of(Piece piece) {
        Path fold = piece.edge(piece.fold().orElseThrow()).path();
        return new FoldLine(fold.start(), fold.end());
    }

    static boolean withGrain(Piece piece) {
        if (piece.fold().isEmpty()) {
            return false;
        }
        FoldLine fold = of(piece);
        Vec f = fold.to.minus(fold.from);
        Vec g = piece.grain().to().minus(piece.grain().from());
        return Math.abs(f.cross(g)) <= WITH_GRAIN * f.length() * g.length();
    }

    /** Turns and shifts a piece so that its fold runs along y = 0 and the piece lies above it. */
    static Motion toAxis(Piece piece) {
        FoldLine fold = of(piece);
        Motion one = fold.alongX();
        return middleY(piece, one) >= 0 ? one : new FoldLine(fold.to, fold.from).alongX();
    }

    private Motion alongX() {
        double length = from.distanceTo(to);
        Motion turn = new Motion((to.x() - from.x()) / length, -(to.y() - from.y()) / length, 0, 0);
        return turn.then(Motion.slide(Point.ORIGIN.minus(turn.apply(from))));
    }

    private static double middleY(Piece piece, Motion motion) {
        List<Point> outline = CuttingLine.of(piece).flattened(1);
        return outline.stream().mapToDouble(p -> motion.apply(p).y()).average().orElseThrow();
    }
}
