package trueseam.fitting.tissue;

/** When a pivot stops. */
public sealed interface Until {

    /**
     * When a place is as far across the grain as a mark.
     *
     * @param place the place of the pattern
     * @param mark the mark's name
     */
    record MeetsAcross(Place place, String mark) implements Until {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.meetsAcross(this);
        }
    }

    /**
     * When a place is as high along the grain as a mark.
     *
     * @param place the place of the pattern
     * @param mark the mark's name
     */
    record MeetsAlong(Place place, String mark) implements Until {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.meetsAlong(this);
        }
    }

    /** When the pattern's grainline stands upright again. */
    record GrainUpright() implements Until {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.grainUpright(this);
        }
    }

    /**
     * When a spot has moved so far across the grain.
     *
     * @param spot the spot of the pattern
     * @param acrossMm how far, mm, positive to the right
     */
    record MovesAcross(Spot spot, double acrossMm) implements Until {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.movesAcross(this);
        }
    }

    /**
     * When a spot has moved so far along the grain.
     *
     * @param spot the spot of the pattern
     * @param alongMm how far, mm, positive towards the head
     */
    record MovesAlong(Spot spot, double alongMm) implements Until {
        @Override
        public <R> R read(Reader<R> reader) {
            return reader.movesAlong(this);
        }
    }

    /**
     * Does one thing with every way to stop.
     *
     * @param <R> what comes of it
     */
    interface Reader<R> {

        /**
         * For a place that comes as far across the grain as a mark.
         *
         * @param until when to stop
         * @return what comes of it
         */
        R meetsAcross(MeetsAcross until);

        /**
         * For a place that comes as high along the grain as a mark.
         *
         * @param until when to stop
         * @return what comes of it
         */
        R meetsAlong(MeetsAlong until);

        /**
         * For a grainline that stands upright again.
         *
         * @param until when to stop
         * @return what comes of it
         */
        R grainUpright(GrainUpright until);

        /**
         * For a spot that goes so far across the grain.
         *
         * @param until when to stop
         * @return what comes of it
         */
        R movesAcross(MovesAcross until);

        /**
         * For a spot that goes so far along the grain.
         *
         * @param until when to stop
         * @return what comes of it
         */
        R movesAlong(MovesAlong until);
    }

    /**
     * Hands it to the reader's method for its kind.
     *
     * @param reader carries it out or puts it into words
     * @param <R> what comes of it
     * @return what came of it
     */
    <R> R read(Reader<R> reader);
}
