package trueseam.output.strips;

/** What a strip is for. */
enum StripKind {
    /** Taped into the tissue, which is cut apart along a line. */
    INSERT("cut the tissue along this line; tape its two edges to the dashed lines"),

    /** Laid on the tissue to show which part of it is folded out along a line. */
    FOLD_OUT("fold the tissue on the middle line: the lower dashed line comes up to the upper"),

    /** Taped on along the edge of the tissue. */
    TAPE_ON("tape on: dashed line to the edge of the tissue"),

    /** Laid over the edge of the tissue to show what is cut or folded away. */
    CUT_AWAY("fold or cut away the hatched part: dashed line to the edge of the tissue");

    private final String task;

    StripKind(String task) {
        this.task = task;
    }

    /** What is done with it. */
    String task() {
        return task;
    }

    /** Whether it lies on the tissue or beyond its edge, and not in place of it. */
    boolean isGuide() {
        return switch (this) {
            case FOLD_OUT, CUT_AWAY -> true;
            case INSERT, TAPE_ON -> false;
        };
    }
}
