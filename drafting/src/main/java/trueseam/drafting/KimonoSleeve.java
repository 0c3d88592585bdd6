package trueseam.drafting;

import trueseam.garment.flat.Overarm;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * The half of a kimono sleeve that hangs on one piece: the shoulder line carried straight on to the wrist, and under it the seam from the
 * underarm point, which rises out of the side in a curve and then runs straight to the wrist.
 *
 * <pre>{@code
 *   N---S--------------------T     S shoulder point, T top of the wrist, U underarm point.
 *       |    _Q______________|     Q: square to the overarm, 2 in below U; from there the
 *       |   /                L     seam tapers straight to L. The wrist meets both seams
 *       |  U                       square, as an arc about the place where they would meet.
 * }</pre>
 */
final class KimonoSleeve {

    private static final int ROUNDS = 60;

    private final Point shoulderPoint;
    private final Vec out; // along the overarm, from the shoulder to the wrist
    private final Vec down; // square to it
    private final Point underarmPoint;
    private final Vec sideUp;

    private Path underarm;
    private Path wrist;
    private Path overarm;

    /**
     * @param shoulder the shoulder of the piece
     * @param underarmPoint where the side ends
     * @param sideUp direction of the side there
     */
    KimonoSleeve(ShoulderLine shoulder, Point underarmPoint, Vec sideUp) {
        this.shoulderPoint = shoulder.shoulderPoint();
        this.out = shoulder.inwards().reversed().unit();
        this.down = out.right();
        this.underarmPoint = underarmPoint;
        this.sideUp = sideUp;
    }

    /** How far the underarm point lies below the overarm line, square to it, mm. */
    double depthMm() {
        return underarmPoint.minus(shoulderPoint).dot(down);
    }

    /**
     * Draws the seams.
     *
     * @param armMm half of the upper arm
     * @param wristMm half of the wrist, along its edge
     * @param lengthMm shoulder point to wrist
     */
    void draw(double armMm, double wristMm, double lengthMm) {
        double along = underarmPoint.minus(shoulderPoint).dot(out) + Overarm.BELOW_UNDERARM_MM;
        Point turned = shoulderPoint.plus(out.times(along)).plus(down.times(armMm));
        Point top = shoulderPoint.plus(out.times(lengthMm));
        double width = wristMm;
        double beyond = 0;
        for (int i = 0; i < ROUNDS; i++) {
            Point low = top.plus(down.times(width)).plus(out.times(beyond));
            Vec taper = low.minus(turned).unit();
            wrist = Path.of(Joining.smooth(low, taper.left(), top, out.left()));
            underarm = Path.of(Joining.smooth(underarmPoint, sideUp, turned, taper))
                    .then(Path.through(turned, low));
            width += wristMm - wrist.length();
            beyond = width * Math.tan(taper.angleTo(out) / -2);
        }
        overarm = Path.through(top, shoulderPoint);
    }

    /** From the underarm point to the wrist. */
    Path underarm() {
        return underarm;
    }

    /** From the seam under the arm to the overarm. */
    Path wrist() {
        return wrist;
    }

    /** From the wrist to the shoulder point. */
    Path overarm() {
        return overarm;
    }
}
