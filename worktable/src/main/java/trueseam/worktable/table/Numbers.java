package trueseam.worktable.table;

/** Numbers for attributes of a drawing: to 1/1000 mm. */
final class Numbers {

    private Numbers() {}

    static double rounded(double value) {
        return Math.rint(value * 1000) / 1000 + 0.0;
    }

    static String text(double value) {
        double rounded = rounded(value);
        return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
    }
}
