package trueseam.worktable.project;

/**
 * A drawing that was brought in, and what she says about it.
 *
 * @param file the shelf mark of its content; empty: none was brought
 * @param fileName what it was called
 * @param names what she says of its pieces, edges and seams, as a names file has it (docs/bring-in.md)
 * @param size which of the sizes drawn in it
 * @param cutting how wide the seam allowance within its lines is, where they are cutting lines
 * @param confirmed whether the project's pattern is what comes of it now
 */
public record DrawingPart(String file, String fileName, String names, String size, String cutting, boolean confirmed) {

    /** What is not there is empty. */
    public DrawingPart {
        file = file == null ? "" : file;
        fileName = fileName == null ? "" : fileName;
        names = names == null ? "" : names;
        size = size == null ? "" : size;
        cutting = cutting == null ? "" : cutting;
    }

    /**
     * No drawing.
     *
     * @return none
     */
    public static DrawingPart empty() {
        return new DrawingPart("", "", "", "", "", false);
    }

    /**
     * The same with other things said about its pieces; to be confirmed anew.
     *
     * @param other a names file
     * @return the part
     */
    public DrawingPart withNames(String other) {
        return new DrawingPart(file, fileName, other, size, cutting, false);
    }

    /**
     * The same read otherwise; to be confirmed anew.
     *
     * @param otherSize which of its sizes
     * @param otherCutting the allowance within its lines
     * @return the part
     */
    public DrawingPart read(String otherSize, String otherCutting) {
        return new DrawingPart(file, fileName, names, otherSize, otherCutting, false);
    }

    /**
     * The same, found right.
     *
     * @return the part
     */
    public DrawingPart right() {
        return new DrawingPart(file, fileName, names, size, cutting, true);
    }
}
