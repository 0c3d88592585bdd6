package trueseam.fitting.tissue;

import java.util.OptionalDouble;

/** The kind of line that closes a gap between two traced lines. */
public sealed interface JoinForm {

    /** A ruler's line. */
    record Straight() implements JoinForm {}

    /**
     * A smooth curve.
     *
     * @param start how it sets out
     * @param end how it arrives
     * @param lengthMm its length, mm, where a seam must walk; else the gentlest curve
     */
    record Curve(Direction start, Direction end, OptionalDouble lengthMm) implements JoinForm {}

    /** The line that was there, fitted between the new ends: for the mouth of a dart whose intake changes a little. */
    record Refit() implements JoinForm {}

    /** {@link Refit}. */
    JoinForm REFIT = new Refit();

    /** {@link Straight}. */
    JoinForm STRAIGHT = new Straight();

    /**
     * The gentlest curve.
     *
     * @param start how it sets out
     * @param end how it arrives
     * @return the form
     */
    static JoinForm curve(Direction start, Direction end) {
        return new Curve(start, end, OptionalDouble.empty());
    }

    /**
     * A smooth curve of a given length.
     *
     * @param start how it sets out
     * @param end how it arrives
     * @param lengthMm its length, mm
     * @return the form
     */
    static JoinForm curveOfLength(Direction start, Direction end, double lengthMm) {
        return new Curve(start, end, OptionalDouble.of(lengthMm));
    }
}
