package trueseam.intake.tiles;

import java.util.List;
import trueseam.intake.drawing.Caption;

/**
 * One page of a file: a sheet of paper as its maker printed it.
 *
 * @param number its place in the file, 1 for the first
 * @param widthMm width of the paper as it is looked at, mm
 * @param heightMm height, mm
 * @param lines its lines, mm from its lower left corner
 * @param captions what is written on it and seen
 * @param unseen what is written in the file at this page and cut off
 * @param pictures how many pictures and shadings it has: these have no lines
 */
public record Page(
        int number,
        double widthMm,
        double heightMm,
        List<Inked> lines,
        List<Caption> captions,
        List<Caption> unseen,
        int pictures) {

    /** Does not change. */
    public Page {
        lines = List.copyOf(lines);
        captions = List.copyOf(captions);
        unseen = List.copyOf(unseen);
    }

    /**
     * Whether it shows any line.
     *
     * @return false for text, pictures, or nothing
     */
    public boolean hasLines() {
        return lines.stream().anyMatch(Inked::isSeen);
    }
}
