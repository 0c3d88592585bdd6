package trueseam.worktable.project;

/**
 * A drawing that was brought in, and what she says about it.
 *
 * @param file the shelf mark of its content; empty: none was brought
 * @param fileName what it was called
 * @param names what she says of its pieces, edges and seams, as a names file has it (docs/bring-in.md)
 * @param size which of the sizes drawn in it; {@link #ONE_SIZE} if what was taken for sizes is one
 * @param cutting how wide the seam allowance within its lines is, where they are cutting lines
 * @param square what its test square is to measure
 * @param page the one page of a PDF that is meant; empty: all that belong together
 * @param unit how long one unit of the drawing is, where she knows better than the file
 * @param confirmed whether the project's pattern is what comes of it now
 */
public record DrawingPart(
        String file,
        String fileName,
        String names,
        String size,
        String cutting,
        String square,
        String page,
        String unit,
        boolean confirmed) {

    /** Chosen where a second kind of line was taken for a second size. */
    public static final String ONE_SIZE = "one size";

    /** What is not there is empty. */
    public DrawingPart {
        file = file == null ? "" : file;
        fileName = fileName == null ? "" : fileName;
        names = names == null ? "" : names;
        size = size == null ? "" : size;
        cutting = cutting == null ? "" : cutting.strip();
        square = square == null ? "" : square.strip();
        page = page == null ? "" : page.strip();
        unit = unit == null ? "" : unit.strip();
    }

    /**
     * No drawing.
     *
     * @return none
     */
    public static DrawingPart empty() {
        return of("", "");
    }

    /**
     * A drawing about which nothing is said.
     *
     * @param mark the shelf mark of its content
     * @param called what it was called
     * @return the part
     */
    public static DrawingPart of(String mark, String called) {
        return new DrawingPart(mark, called, "", "", "", "", "", "", false);
    }

    /**
     * The same with other things said about its pieces; to be confirmed anew.
     *
     * @param other a names file
     * @return the part
     */
    public DrawingPart withNames(String other) {
        return new DrawingPart(file, fileName, other, size, cutting, square, page, unit, false);
    }

    /**
     * The same, found right.
     *
     * @return the part
     */
    public DrawingPart right() {
        return new DrawingPart(file, fileName, names, size, cutting, square, page, unit, true);
    }
}
