package trueseam.intake.tiles;

/**
 * How well lines go on over edges.
 *
 * @param met lines that go on
 * @param missed ends that meet nothing though a page lies there
 * @param loose ends at edges where no page lies
 */
record Met(int met, int missed, int loose) {

    static final Met NONE = new Met(0, 0, 0);

    Met plus(Met o) {
        return new Met(met + o.met, missed + o.missed, loose + o.loose);
    }

    /** For comparing layouts: a line that goes on speaks for one, an end that meets nothing against it. */
    double worth() {
        return 2.0 * met - missed - 0.6 * loose;
    }

    /** The share of ends that go on, 0 to 1; 1 if there are none. */
    double share() {
        double ends = 2.0 * met + missed + 0.6 * loose;
        return ends == 0 ? 1 : 2.0 * met / ends;
    }

    /** Whether two pages are neighbours by their lines alone. */
    boolean joins() {
        return met >= 1 && missed <= met / 2;
    }
}
