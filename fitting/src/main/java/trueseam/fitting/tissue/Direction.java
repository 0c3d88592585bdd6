package trueseam.fitting.tissue;

import trueseam.geometry.Vec;

/** How a joined line sets out from, or arrives at, the traced line beside it. */
public sealed interface Direction {

    /** The direction that the edge had there, carried with the traced line beside it: corners keep their angle. */
    record AsDrawn() implements Direction {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.asDrawn(this);
        }
    }

    /** Any direction: the line runs as straight as the other end lets it. */
    record Free() implements Direction {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.free(this);
        }
    }

    /**
     * A given direction on the tissue.
     *
     * @param tangent direction of travel
     */
    record Towards(Vec tangent) implements Direction {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.towards(this);
        }
    }

    /** {@link AsDrawn}. */
    Direction AS_DRAWN = new AsDrawn();

    /** {@link Free}. */
    Direction FREE = new Free();

    /**
     * Does one thing with every kind of direction.
     *
     * @param <R> what comes of it
     */
    interface Reader<R> {

        /**
         * For the direction that was drawn.
         *
         * @param direction the direction
         * @return what comes of it
         */
        R asDrawn(AsDrawn direction);

        /**
         * For any direction.
         *
         * @param direction the direction
         * @return what comes of it
         */
        R free(Free direction);

        /**
         * For a given direction.
         *
         * @param direction the direction
         * @return what comes of it
         */
        R towards(Towards direction);
    }

    /**
     * Hands it to the reader's method for its kind.
     *
     * @param reader draws by it or tells it
     * @param <R> what comes of it
     * @return what came of it
     */
    <R> R read(Reader<R> reader);
}
