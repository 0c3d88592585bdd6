package trueseam.drafting;

import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;
import trueseam.geometry.join.Joining;

/**
 * A sleeve cap over a line from underarm to underarm, its crown above the origin.
 *
 * <pre>{@code
 *          _ crown _           Each half is hollow below and round above, joined at its
 *        /           \         middle; it leaves the underarm square to the seam there
 *      /               \       and reaches the crown level.
 *    _/                 \_
 *   back      0        front
 * }</pre>
 *
 * <p>Crown height and underarm places are solved so that both halves have wanted lengths over a wanted width. The length
 * of a half is nearly a constant times its chord, and two chords over a width make a triangle: so the triangle is built,
 * the halves are drawn and measured, and the constants are put right, round by round. A working object of one draft.
 */
final class Cap {

    private static final Vec TO_BACK = new Vec(-1, 0);

    /** How much steeper than its chord a half is at its middle; the front is hollowed more (common practice). */
    private static final double FRONT_STEEPER_RAD = Math.toRadians(13);

    private static final double BACK_STEEPER_RAD = Math.toRadians(10);
    private static final double FRONT_MIDDLE = 0.48;
    private static final double BACK_MIDDLE = 0.5;

    private final double widthMm;
    private final double frontMm;
    private final double backMm;
    private double perFront = 1.05;
    private double perBack = 1.05;
    private Path front;
    private Path back;

    /**
     * Nothing is drawn yet.
     *
     * @param widthMm from underarm to underarm
     * @param frontMm wanted length of the front half
     * @param backMm wanted length of the back half
     */
    Cap(double widthMm, double frontMm, double backMm) {
        this.widthMm = widthMm;
        this.frontMm = frontMm;
        this.backMm = backMm;
    }

    /**
     * Draws both halves and corrects for the next round.
     *
     * @param seamLean how the seam leans at the underarm, as a slope outwards
     * @return the larger miss of the two lengths, mm; not a number if the halves do not reach over the width
     */
    double round(double seamLean) {
        double p = frontMm / perFront;
        double q = backMm / perBack;
        double frontX = (widthMm + (p * p - q * q) / widthMm) / 2;
        double height2 = p * p - frontX * frontX;
        if (!(height2 > 1 && 0 < frontX && frontX < widthMm)) {
            return Double.NaN;
        }
        double height = Math.sqrt(height2);
        front = half(frontX, height, seamLean, FRONT_MIDDLE, FRONT_STEEPER_RAD);
        // The back is drawn like a front and mirrored.
        back = Mirror.of(half(widthMm - frontX, height, seamLean, BACK_MIDDLE, BACK_STEEPER_RAD))
                .reversed();
        double frontIs = front.length();
        double backIs = back.length();
        perFront = frontIs / p;
        perBack = backIs / q;
        return Math.max(Math.abs(frontIs - frontMm), Math.abs(backIs - backMm));
    }

    private static Path half(double x, double height, double seamLean, double middleShare, double steeperRad) {
        Point underarm = new Point(x, 0);
        Point crown = new Point(0, height);
        Point middle = underarm.towards(crown, middleShare);
        Vec steep = crown.minus(underarm).turned(-steeperRad);
        return Path.of(
                Joining.smooth(underarm, new Vec(-1, seamLean), middle, steep),
                Joining.smooth(middle, steep, crown, TO_BACK));
    }

    /**
     * How high a cap would become, nearly: after a few rounds, with a usual lean of the seam.
     *
     * @return mm; 0 if the halves do not reach over the width
     */
    static double heightMm(double widthMm, double frontMm, double backMm) {
        Cap cap = new Cap(widthMm, frontMm, backMm);
        for (int i = 0; i < 4; i++) {
            if (Double.isNaN(cap.round(0.1))) {
                return 0;
            }
        }
        return cap.crown().y();
    }

    /** From the front underarm to the crown. */
    Path front() {
        return front;
    }

    /** From the crown to the back underarm. */
    Path back() {
        return back;
    }

    Point crown() {
        return front.end();
    }

    Point frontUnderarm() {
        return front.start();
    }

    Point backUnderarm() {
        return back.end();
    }
}
