package trueseam.output.print;

import java.util.Set;
import trueseam.garment.length.LengthFormat;

/**
 * How a pattern is printed.
 *
 * @param paper what is printed on
 * @param overlapMm how far neighbouring sheets show the same, mm, 6 to 30
 * @param lines which lines are printed: at least one of stitching and cutting, and at least one of original and altered
 * @param lengths how lengths are shown
 * @param label what the dressmaker calls the person or the trial, or empty
 */
public record PrintOptions(Paper paper, double overlapMm, Set<PrintedLine> lines, LengthFormat lengths, String label) {

    /** The usual overlap: room for a finger's breadth of glue, mm. */
    public static final double USUAL_OVERLAP_MM = 12;

    // Lines that nobody can see cannot be cut.
    public PrintOptions {
        lines = Set.copyOf(lines);
        if (!(6 <= overlapMm && overlapMm <= 30)) {
            throw new IllegalArgumentException("An overlap of " + overlapMm + " mm is not possible; give 6 to 30 mm.");
        }
        if (!lines.contains(PrintedLine.STITCHING) && !lines.contains(PrintedLine.CUTTING)) {
            throw new IllegalArgumentException(
                    "Neither stitching nor cutting lines were asked for; choose one or both.");
        }
        if (!lines.contains(PrintedLine.ORIGINAL) && !lines.contains(PrintedLine.ALTERED)) {
            throw new IllegalArgumentException(
                    "Neither the original nor the altered outline was asked for; choose one or both.");
        }
    }

    /**
     * All lines, with the usual overlap.
     *
     * @param paper what is printed on
     * @param lengths how lengths are shown
     * @param label what the dressmaker calls the person or the trial, or empty
     * @return those options
     */
    public static PrintOptions usual(Paper paper, LengthFormat lengths, String label) {
        return new PrintOptions(paper, USUAL_OVERLAP_MM, Set.of(PrintedLine.values()), lengths, label);
    }

    boolean has(PrintedLine line) {
        return lines.contains(line);
    }
}
