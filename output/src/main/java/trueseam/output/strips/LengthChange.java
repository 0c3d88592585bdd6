package trueseam.output.strips;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.work.Chapter;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Piece;
import trueseam.output.words.LineWords;

/**
 * A piece made longer or shorter at a line across the grain: with hands, one insert or one tuck.
 *
 * @param before the piece as it lay then
 * @param line what the line is called, for example {@code bodice length line}
 * @param levelY how high the line lies on that piece, mm
 * @param longerMm longer by so much, mm; minus for shorter
 */
record LengthChange(Piece before, String line, double levelY, double longerMm) {

    private static final double SAME_LEVEL_MM = 1e-3;

    /** The changes of a piece's length in the order of work; truing moves parts of a piece, not all below a line. */
    static List<LengthChange> of(WorkedPattern worked, String piece) {
        List<LengthChange> changes = new ArrayList<>();
        for (Chapter chapter : worked.chapters()) {
            if (chapter.before().name().equals(piece) && !chapter.truing()) {
                add(chapter, changes);
            }
        }
        return changes;
    }

    /** All below a line is slid along the grain and the marks below it are copied there. */
    private static void add(Chapter chapter, List<LengthChange> changes) {
        double up = 0;
        for (Step step : chapter.steps()) {
            if (step instanceof Step.Slide slide) {
                up += slide.alongMm();
            } else if (step instanceof Step.LayBack) {
                up = 0;
            } else if (step instanceof Step.TransferBelow below && up != 0) {
                changes.add(new LengthChange(
                        chapter.before(), line(chapter.before(), below.levelY()), below.levelY(), -up));
            }
        }
    }

    private static String line(Piece piece, double y) {
        for (Level level : piece.levels()) {
            if (Math.abs(level.y() - y) <= SAME_LEVEL_MM) {
                return LineWords.of(level.name());
            }
        }
        return "line for lengthening or shortening";
    }
}
