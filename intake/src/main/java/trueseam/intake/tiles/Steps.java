package trueseam.intake.tiles;

/**
 * How far it is from a page to the next.
 *
 * @param right mm
 * @param down mm
 * @param doubt whether another distance would do as well, by all that is on the pages
 */
record Steps(double right, double down, boolean doubt) {

    /**
     * In one direction.
     *
     * @param mm the distance
     * @param doubt whether another would do as well
     */
    record Step(double mm, boolean doubt) {}

    static Steps of(Step right, Step down) {
        return new Steps(right.mm(), down.mm(), right.doubt() || down.doubt());
    }
}
