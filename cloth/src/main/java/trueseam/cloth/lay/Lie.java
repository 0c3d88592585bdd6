package trueseam.cloth.lay;

import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;

/**
 * How a piece lies on the cloth: perhaps turned over on its face, then moved.
 *
 * @param mirrored whether it lies on its face: mirrored in the x axis first
 * @param motion turn and shift after that
 */
public record Lie(boolean mirrored, Motion motion) {

    private static final Motion HALF_TURN = new Motion(-1, 0, 0, 0);

    /**
     * Where a point comes to lie.
     *
     * @param p a point of the piece
     * @return the point on the cloth
     */
    public Point apply(Point p) {
        return motion.apply(mirrored ? new Point(p.x(), -p.y()) : p);
    }

    /**
     * Where a line comes to lie.
     *
     * @param path a line of the piece
     * @return the line on the cloth
     */
    public Path apply(Path path) {
        return (mirrored ? Mirror.of(path).moved(HALF_TURN) : path).moved(motion);
    }

    /** This, then turned over about the x axis. */
    Lie turnedOver() {
        return new Lie(!mirrored, new Motion(motion.cos(), -motion.sin(), motion.dx(), -motion.dy()));
    }

    /** This, then turned about the origin and shifted. */
    Lie then(double turnRad, double dx, double dy) {
        Motion turn = Motion.pivot(new Point(0, 0), turnRad);
        return new Lie(mirrored, motion.then(turn).then(Motion.slide(new Vec(dx, dy))));
    }
}
