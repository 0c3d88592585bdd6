package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.Unbroken;

/**
 * One picture of the step sheet: a step, or a few that one picture shows as well as several would.
 *
 * @param first number of its first step in the chapter, from 1
 * @param frames the table after each of its steps
 * @param words what each of them says
 */
record StepCell(int first, List<Frame> frames, List<String> words) {

    StepCell {
        frames = List.copyOf(frames);
        words = List.copyOf(words);
    }

    /** The table as the picture shows it. */
    Frame last() {
        return frames.get(frames.size() - 1);
    }

    /** What is written below the picture, a line or more for each step. */
    List<String> caption() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            lines.add(Unbroken.lengths((first + i) + ". " + words.get(i)));
        }
        return lines;
    }

    /**
     * The pictures of a chapter.
     *
     * @param most how many details may share a picture, at least 1
     */
    static List<StepCell> of(Chapter chapter, LengthFormat show, int most) {
        List<Frame> frames = Tissue.play(chapter.before(), chapter.steps());
        List<String> words = StepWords.ofFrames(chapter.before(), frames, show);
        List<StepCell> cells = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= frames.size(); to++) {
            if (to == frames.size()
                    || !shares(frames.subList(from, to), frames.get(to).step(), most)) {
                cells.add(new StepCell(from + 1, frames.subList(from, to), words.subList(from, to)));
                from = to;
            }
        }
        return List.copyOf(cells);
    }

    /** Marks share a picture, and joins, and tracings of one lie; a pin is shown with the pivot about it, copied marks with the tracing. */
    private static boolean shares(List<Frame> before, Step next, int most) {
        Step last = before.get(before.size() - 1).step();
        boolean marks = last instanceof Step.Mark && next instanceof Step.Mark;
        boolean joins = last instanceof Step.Join && next instanceof Step.Join;
        boolean pivot = last instanceof Step.Pin && next instanceof Step.Pivot;
        boolean traces = last instanceof Step.Trace first && !first.kept() && next instanceof Step.Trace;
        boolean copies = last instanceof Step.Trace && next instanceof Step.TransferBelow;
        return pivot || copies || ((marks || joins || traces) && before.size() < most);
    }
}
