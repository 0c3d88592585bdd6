package trueseam.output.steps;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Step;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;

/** Draws the table after a step: the pattern where it lies, the lines on the tissue, marks, the pin. */
final class TableDrawing {

    private final Piece piece;
    private final Path outline;
    private final List<Path> darts;
    private final Set<String> levelMarks;
    private final RidingMarks riding;
    private final List<Frame> frames = new ArrayList<>();

    /** All pictures of a chapter, in order. */
    TableDrawing(Piece piece, List<Step> steps, List<StepCell> cells) {
        this.piece = piece;
        this.riding = new RidingMarks(piece);
        for (StepCell cell : cells) {
            frames.addAll(cell.frames());
        }
        this.outline = piece.outline();
        this.darts = dartLines(piece);
        this.levelMarks = levelMarks(steps);
    }

    private static List<Path> dartLines(Piece piece) {
        List<Path> lines = new ArrayList<>();
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.EdgeDart d) {
                Edge edge = piece.edge(d.edge());
                lines.add(Path.through(
                        edge.path().pointAt(d.fromMm()),
                        d.apex(),
                        edge.path().pointAt(Math.min(d.toMm(), edge.length()))));
            } else if (dart instanceof Dart.DiamondDart d) {
                lines.add(Path.through(d.top(), d.left(), d.bottom(), d.right(), d.top()));
            }
        }
        return lines;
    }

    private static Set<String> levelMarks(List<Step> steps) {
        Set<String> names = new HashSet<>();
        for (Step step : steps) {
            NamedPlace.levelMark(step).ifPresent(names::add);
        }
        return names;
    }

    /** Everything that the pictures of a chapter show, so that all have one scale and lie alike. */
    Bounds area(List<StepCell> cells) {
        Bounds area = outline.bounds();
        for (StepCell cell : cells) {
            for (Frame frame : cell.frames()) {
                area = area.with(outline.moved(frame.pose()).bounds());
                for (Point mark : frame.marks().values()) {
                    area = area.with(mark);
                }
                for (Frame.Drawn drawn : frame.drawn()) {
                    area = area.with(drawn.path().bounds());
                }
            }
        }
        return area;
    }

    /** The pattern where it lay before a movement, dashed. */
    void before(Canvas canvas, Motion pose) {
        canvas.stroke(outline.moved(pose), TableSymbols.PATTERN_BEFORE);
    }

    /** The pattern where it lies now. */
    void pattern(Canvas canvas, Motion pose) {
        Path lies = outline.moved(pose);
        canvas.fill(List.of(lies), TableSymbols.PAPER_GRAY);
        canvas.stroke(lies, TableSymbols.PATTERN);
        for (Path dart : darts) {
            canvas.stroke(dart.moved(pose), TableSymbols.PATTERN);
        }
        notches(canvas, riding.ticks(), pose, TableSymbols.PATTERN.gray());
    }

    private static void notches(Canvas canvas, List<RidingMarks.Tick> ticks, Motion pose, double gray) {
        for (RidingMarks.Tick tick : ticks) {
            TableSymbols.notch(canvas, pose.apply(tick.at()), pose.apply(tick.outward()), tick.cuts(), gray);
        }
    }

    /** Its grainline. */
    void grain(Canvas canvas, Motion pose) {
        TableSymbols.grain(
                canvas,
                pose.apply(piece.grain().from()),
                pose.apply(piece.grain().to()));
    }

    /** What is on the tissue: lines, marks, the pin. */
    void tissue(Canvas canvas, Frame frame) {
        for (Frame.Drawn drawn : frame.drawn()) {
            canvas.stroke(
                    drawn.path(),
                    switch (drawn.kind()) {
                        case KEPT -> TableSymbols.KEPT;
                        case CARRIED -> TableSymbols.CARRIED;
                        case JOINED -> TableSymbols.JOINED;
                    });
        }
        copiedNotches(canvas, frame);
        for (Map.Entry<String, Point> mark : frame.marks().entrySet()) {
            TableSymbols.mark(canvas, mark.getValue(), levelMarks.contains(mark.getKey()));
        }
        frame.pin().ifPresent(at -> TableSymbols.pin(canvas, at));
    }

    /** Notches are copied with the line that they ride on. */
    private void copiedNotches(Canvas canvas, Frame now) {
        for (Frame frame : frames.subList(0, frames.indexOf(now) + 1)) {
            if (frame.step() instanceof Step.Trace trace) {
                notches(canvas, riding.ticks(trace.stretches()), frame.pose(), 0);
            }
        }
    }
}
