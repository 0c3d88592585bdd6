package trueseam.intake.pdf;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Caption;

/**
 * Words of a page out of single letters: files set a line in many small strings, kerned or not. Letters that stand one behind the other on
 * one base line are one caption. One page, one thread.
 */
final class PageWords {

    /** A wider gap than this share of the letters' height begins another caption. */
    private static final double SAME_LINE = 0.7;

    /** A wider gap than this share of the letters' height is a space. */
    private static final double SPACE = 0.17;

    private record Word(Caption caption, boolean seen) {}

    private final List<Word> words = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private Caption first = new Caption("", Point.ORIGIN, 0, "");
    private Point end = Point.ORIGIN;
    private Vec along = new Vec(1, 0);
    private boolean seen;

    /**
     * Takes a letter.
     *
     * @param said the letter
     * @param standing where it begins, and how it is written
     * @param to where it ends on its base line
     * @param visible whether it is seen
     */
    void letter(String said, Caption standing, Point to, boolean visible) {
        if (!follows(standing)) {
            finish();
            first = standing;
            seen = false;
        } else if (standing.at().distanceTo(end) > SPACE * first.heightMm()
                && !text.toString().endsWith(" ")) {
            text.append(' ');
        }
        text.append(said);
        end = to;
        seen |= visible;
        Vec step = to.minus(standing.at());
        if (step.length() > 1e-9) {
            along = step.unit();
        }
    }

    private boolean follows(Caption next) {
        double size = first.heightMm();
        if (text.isEmpty()
                || Math.abs(next.heightMm() - size) > 0.05 * size
                || !next.layer().equals(first.layer())
                || !next.colour().equals(first.colour())) {
            return false;
        }
        Vec gap = next.at().minus(end);
        return Math.abs(along.cross(gap)) < 0.1 * size
                && -0.3 * size < along.dot(gap)
                && along.dot(gap) < SAME_LINE * size;
    }

    private void finish() {
        String line = text.toString().replaceAll("\\s+", " ").strip();
        if (!line.isEmpty()) {
            words.add(new Word(new Caption(line, first.at(), first.heightMm(), first.layer(), first.colour()), seen));
        }
        text.setLength(0);
    }

    List<Caption> seen(boolean wanted) {
        finish();
        return words.stream().filter(w -> w.seen == wanted).map(Word::caption).toList();
    }
}
