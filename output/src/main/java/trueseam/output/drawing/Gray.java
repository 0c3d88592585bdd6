package trueseam.output.drawing;

/** The one rule of greys. */
final class Gray {

    private Gray() {}

    static void check(double gray) {
        if (!(0 <= gray && gray <= 1)) {
            throw new IllegalArgumentException("gray is not between 0, black, and 1, white: " + gray);
        }
    }
}
