package trueseam.fitting.play;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.work.Chapter;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * One step of an alteration, to be played forward and back: the paper before and after it, and what it left on the tissue.
 *
 * @param step the step
 * @param paper every part of the pattern, what was never cut loose first
 * @param pin where the pin is after the step, if it is in
 * @param marks the marks made so far, by name
 * @param before the lines on the tissue before the step
 * @param fresh the lines that this step draws, in the direction of the outline
 */
public record Scene(
        Step step,
        List<Sheet> paper,
        Optional<Point> pin,
        Map<String, Point> marks,
        List<Frame.Drawn> before,
        List<Frame.Drawn> fresh) {

    // Immutable, marks in the order they were made.
    public Scene {
        paper = List.copyOf(paper);
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
        before = List.copyOf(before);
        fresh = List.copyOf(fresh);
    }

    /**
     * A part of the pattern in a step.
     *
     * @param outline its outline where the pattern lay at first
     * @param move from where to where it goes in this step
     * @param inHand whether it is what this step moves
     */
    public record Sheet(List<Path> outline, Move move, boolean inHand) {

        // Immutable.
        public Sheet {
            outline = List.copyOf(outline);
        }
    }

    /**
     * The scenes of a chapter.
     *
     * @param chapter one piece of one alteration
     * @return one for each step, in order
     * @throws trueseam.fitting.tissue.TissueException if the steps cannot be carried out
     */
    public static List<Scene> of(Chapter chapter) {
        List<Scene> scenes = new ArrayList<>();
        Optional<Frame> last = Optional.empty();
        for (Frame frame : Tissue.play(chapter.before(), chapter.steps())) {
            scenes.add(scene(last, frame));
            last = Optional.of(frame);
        }
        return List.copyOf(scenes);
    }

    private static Scene scene(Optional<Frame> last, Frame frame) {
        List<Frame.Drawn> before = last.map(Frame::drawn).orElse(List.of());
        List<Frame.Drawn> fresh = new ArrayList<>(frame.drawn());
        fresh.removeAll(before);
        List<Sheet> paper = new ArrayList<>();
        for (int i = 0; i < frame.paper().size(); i++) {
            Frame.Lying lying = frame.paper().get(i);
            paper.add(new Sheet(lying.outline(), move(last, frame, i), lying.inHand()));
        }
        return new Scene(frame.step(), paper, frame.pin(), frame.marks(), before, fresh);
    }

    /** A part that was just cut loose lies where it lies: cutting moves nothing. */
    private static Move move(Optional<Frame> last, Frame frame, int part) {
        Frame.Lying lying = frame.paper().get(part);
        Motion from = lying.pose();
        if (last.isEmpty() && part == 0) {
            from = Motion.NONE;
        } else if (last.isPresent() && part < last.get().paper().size()) {
            from = last.get().paper().get(part).pose();
        }
        return Move.between(from, lying.pose(), about(last, frame, from, lying));
    }

    /** The pin that was in while the paper moved; the hinge of a part; else the middle of the paper, as a hand would lay it back. */
    private static Point about(Optional<Frame> last, Frame frame, Motion from, Frame.Lying lying) {
        if (frame.step() instanceof Step.Spread spread) {
            return from.apply(spread.hinge().at());
        }
        if (frame.step() instanceof Step.Pivot
                && last.isPresent()
                && last.get().pin().isPresent()) {
            return last.get().pin().get();
        }
        Bounds bounds = null;
        for (Path outline : lying.outline()) {
            bounds = bounds == null ? outline.bounds() : bounds.with(outline.bounds());
        }
        return bounds == null ? Point.ORIGIN : from.apply(bounds.centre());
    }
}
