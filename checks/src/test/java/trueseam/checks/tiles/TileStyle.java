package trueseam.checks.tiles;

/**
 * A way of printing a pattern over pages, invented for the tests.
 *
 * @param name for messages
 * @param wide paper width, mm
 * @param high paper height, mm
 * @param margin from the paper's edge to what is printed, mm
 * @param overlap how much of the neighbour each page shows, mm
 * @param frame whether what is printed has a frame
 * @param marks what is drawn where pages meet
 * @param label what pages are called
 * @param cut whether lines are really cut; else the whole drawing is on every page behind a window
 * @param byRow whether pages follow each other row by row
 * @param blanksLeftOut whether pages that would be empty are left out
 * @param cover whether a page comes first with words and the whole pattern at a tenth of its size
 * @param quarters by how many quarters pages are turned in the file
 */
record TileStyle(
        String name,
        double wide,
        double high,
        double margin,
        double overlap,
        boolean frame,
        Marks marks,
        Label label,
        boolean cut,
        boolean byRow,
        boolean blanksLeftOut,
        boolean cover,
        int quarters) {

    enum Marks {
        NONE,
        HALF_DIAMONDS,
        CROSSES,
        NUMBERED_CIRCLES
    }

    enum Label {
        NONE,
        LETTER_ROW,
        LETTER_COLUMN,
        PAIR,
        WORDS,
        COUNTED
    }

    @Override
    public String toString() {
        return name;
    }

    double stepRight() {
        return wide - 2 * margin - overlap;
    }

    double stepDown() {
        return high - 2 * margin - overlap;
    }
}
