package trueseam.fitting.play;

import trueseam.geometry.Motion;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A movement of a sheet of paper from where it lies to where it comes to lie: a turn about one point of the table while that point
 * slides.
 *
 * <p>Laws: (1) {@code at(0)} is where it lay and {@code at(1)} where it comes to lie; (2) it is rigid at every moment; (3) a pivot
 * keeps its pin where it is.
 *
 * @param from where the paper lies before
 * @param about the point of the table that it turns about: the pin or the hinge, else the middle of the paper
 * @param turnRad how far it turns, radians, positive anticlockwise
 * @param slide how far that point goes
 */
public record Move(Motion from, Point about, double turnRad, Vec slide) {

    /**
     * The movement between two poses.
     *
     * @param from where the paper lies before
     * @param to where it comes to lie
     * @param about a point of the table to turn about
     * @return the movement
     */
    public static Move between(Motion from, Motion to, Point about) {
        Motion change = from.inverse().then(to);
        return new Move(from, about, change.turnRad(), change.apply(about).minus(about));
    }

    /**
     * Where the paper lies at a moment.
     *
     * @param share how much of the movement is done, 0 to 1
     * @return its pose
     */
    public Motion at(double share) {
        return from.then(Motion.pivot(about, share * turnRad)).then(Motion.slide(slide.times(share)));
    }

    /**
     * Whether anything moves.
     *
     * @return true if the paper comes to lie elsewhere
     */
    public boolean isMoving() {
        return turnRad != 0 || slide.length() > 0;
    }
}
