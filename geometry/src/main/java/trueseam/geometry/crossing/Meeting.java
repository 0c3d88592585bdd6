package trueseam.geometry.crossing;

/**
 * Parameters at which two strokes share a point.
 *
 * @param kind a point or an end of a shared stretch
 * @param t on the first stroke
 * @param u on the second stroke
 */
record Meeting(Crossing.Kind kind, double t, double u) {

    Meeting swapped() {
        return new Meeting(kind, u, t);
    }
}
