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

    /** A part of the pattern is cut out along chords: a notch so near to its outline is on it, mm. */
    private static final double ON_PAPER_MM = 0.2;

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
                for (Frame.Lying lying : frame.paper()) {
                    for (Path path : lying.now()) {
                        area = area.with(path.bounds());
                    }
                }
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

    /** The pattern as it was bought, before anything was done. */
    void original(Canvas canvas) {
        canvas.fill(List.of(outline), TableSymbols.PAPER_GRAY);
        canvas.stroke(outline, TableSymbols.KEPT);
        canvas.stroke(darts, TableSymbols.KEPT);
        notches(canvas, riding.ticks(), Motion.NONE, 0);
        grain(canvas, Motion.NONE);
    }

    /** What was in the hand where it lay before a movement, dashed. */
    void before(Canvas canvas, Frame frame, Motion pose) {
        for (Frame.Lying lying : frame.paper()) {
            if (lying.inHand()) {
                for (Path path : lying.outline()) {
                    canvas.stroke(path.moved(pose), TableSymbols.PATTERN_BEFORE);
                }
            }
        }
    }

    /** The pattern where it lies now, part by part. */
    void pattern(Canvas canvas, Frame frame) {
        for (Frame.Lying lying : frame.paper()) {
            canvas.fill(lying.now(), TableSymbols.PAPER_GRAY);
        }
        for (Frame.Lying lying : frame.paper()) {
            for (Path path : lying.now()) {
                canvas.stroke(path, TableSymbols.PATTERN);
            }
        }
        // The darts of a cut pattern are cut too; only a whole one shows them as drawn on it.
        if (frame.paper().size() == 1) {
            for (Path dart : darts) {
                canvas.stroke(dart.moved(frame.pose()), TableSymbols.PATTERN);
            }
        }
        for (Frame.Lying lying : frame.paper()) {
            notches(
                    canvas,
                    riding.ticks().stream()
                            .filter(tick -> isOn(lying, tick.at()))
                            .toList(),
                    lying.pose(),
                    TableSymbols.PATTERN.gray());
        }
    }

    private static boolean isOn(Frame.Lying lying, Point p) {
        for (Path path : lying.outline()) {
            if (path.nearest(p).point().distanceTo(p) < ON_PAPER_MM) {
                return true;
            }
        }
        return false;
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
