package trueseam.fitting.tissue;

import java.util.OptionalDouble;

/** The kind of line that closes a gap between two traced lines. */
public sealed interface JoinForm {

    /** A ruler's line. */
    record Straight() implements JoinForm {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.straight(this);
        }
    }

    /**
     * A smooth curve.
     *
     * @param start how it sets out
     * @param end how it arrives
     * @param lengthMm its length, mm, where a seam must walk; else the gentlest curve
     */
    record Curve(Direction start, Direction end, OptionalDouble lengthMm) implements JoinForm {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.curve(this);
        }
    }

    /** The line that was there, fitted between the new ends: for the mouth of a dart whose intake changes a little. */
    record Refit() implements JoinForm {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.refit(this);
        }
    }

    /**
     * Does one thing with every kind of line.
     *
     * @param <R> what comes of it
     */
    interface Reader<R> {

        /**
         * For a ruler's line.
         *
         * @param form the form
         * @return what comes of it
         */
        R straight(Straight form);

        /**
         * For a smooth curve.
         *
         * @param form the form
         * @return what comes of it
         */
        R curve(Curve form);

        /**
         * For the line that was there.
         *
         * @param form the form
         * @return what comes of it
         */
        R refit(Refit form);
    }

    /**
     * Hands the form to the reader's method for its kind.
     *
     * @param reader draws it or puts it into words
     * @param <R> what comes of it
     * @return what came of it
     */
    <R> R read(Reader<R> reader);

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
