package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.fitting.play.Move;
import trueseam.fitting.play.Scene;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.output.picture.PiecePicture;
import trueseam.output.steps.StepWords;

/**
 * One piece of one alteration, to be played; y points down, angles are in degrees, clockwise as the screen turns.
 *
 * @param title the alteration
 * @param piece the piece
 * @param box what the whole play takes up: x, y, width, height
 * @param paper what is drawn on the pattern: darts, notches, grainline
 * @param scenes step by step
 */
public record StepsAnswer(String title, String piece, List<Double> box, PieceLines paper, List<SceneView> scenes) {

    /** Does not change. */
    public StepsAnswer {
        box = List.copyOf(box);
        scenes = List.copyOf(scenes);
    }

    /**
     * A step.
     *
     * @param words what is done
     * @param kind the kind of step, such as {@code pivot}
     * @param sheets the parts of the pattern
     * @param pin where the pin is after it: x, y; empty if it is out
     * @param marks the marks made so far
     * @param before the lines on the tissue before it
     * @param fresh the lines that it draws
     */
    public record SceneView(
            String words,
            String kind,
            List<SheetView> sheets,
            List<Double> pin,
            List<MarkView> marks,
            List<LineView> before,
            List<LineView> fresh) {

        /** Does not change. */
        public SceneView {
            sheets = List.copyOf(sheets);
            pin = List.copyOf(pin);
            marks = List.copyOf(marks);
            before = List.copyOf(before);
            fresh = List.copyOf(fresh);
        }
    }

    /**
     * A part of the pattern and how it moves: from a pose, a turn about a point, a slide.
     *
     * @param lines its outlines where it lay at first
     * @param from the pose before: the six numbers of an SVG matrix
     * @param about the point it turns about
     * @param turn how far, degrees
     * @param slide how far that point goes
     */
    public record SheetView(
            List<String> lines, List<Double> from, List<Double> about, double turn, List<Double> slide) {

        /** Does not change. */
        public SheetView {
            lines = List.copyOf(lines);
            from = List.copyOf(from);
            about = List.copyOf(about);
            slide = List.copyOf(slide);
        }
    }

    /**
     * A mark on the tissue.
     *
     * @param name what it is called
     * @param x where it is
     * @param y where it is
     */
    public record MarkView(String name, double x, double y) {}

    /**
     * A line on the tissue.
     *
     * @param line path text
     * @param kind {@code kept}, {@code carried} or {@code joined}
     */
    public record LineView(String line, String kind) {}

    static StepsAnswer of(Chapter chapter, LengthFormat show) {
        List<Scene> scenes = Scene.of(chapter);
        List<String> words = StepWords.of(chapter.before(), chapter.steps(), show);
        Bounds box = chapter.before().outline().bounds();
        List<SceneView> views = new ArrayList<>();
        for (int i = 0; i < scenes.size(); i++) {
            box = with(box, scenes.get(i));
            views.add(view(scenes.get(i), words.get(i)));
        }
        Bounds room = box.grown(25);
        return new StepsAnswer(
                chapter.title(),
                chapter.before().name(),
                List.of(room.minX(), -room.maxY(), room.width(), room.height()),
                PieceLines.of(chapter.before()),
                views);
    }

    private static Bounds with(Bounds box, Scene scene) {
        Bounds all = box;
        for (Scene.Sheet sheet : scene.paper()) {
            for (Path line : sheet.outline()) {
                all = all.with(line.moved(sheet.move().at(1)).bounds());
            }
        }
        for (Point mark : scene.marks().values()) {
            all = all.with(mark);
        }
        for (Frame.Drawn drawn : scene.fresh()) {
            all = all.with(drawn.path().bounds());
        }
        return all;
    }

    private static SceneView view(Scene scene, String words) {
        return new SceneView(
                words,
                scene.step().getClass().getSimpleName().toLowerCase(Locale.ROOT),
                scene.paper().stream().map(StepsAnswer::view).toList(),
                scene.pin().map(StepsAnswer::point).orElse(List.of()),
                scene.marks().entrySet().stream()
                        .map(mark -> new MarkView(
                                mark.getKey(),
                                Numbers.rounded(mark.getValue().x()),
                                Numbers.rounded(-mark.getValue().y())))
                        .toList(),
                scene.before().stream().map(StepsAnswer::view).toList(),
                scene.fresh().stream().map(StepsAnswer::view).toList());
    }

    private static SheetView view(Scene.Sheet sheet) {
        Move move = sheet.move();
        return new SheetView(
                sheet.outline().stream().map(PiecePicture::text).toList(),
                matrix(move.from(), false),
                point(move.about()),
                -Math.toDegrees(move.turnRad()),
                List.of(move.slide().x(), -move.slide().y()));
    }

    private static LineView view(Frame.Drawn drawn) {
        return new LineView(PiecePicture.text(drawn.path()), drawn.kind().name().toLowerCase(Locale.ROOT));
    }

    private static List<Double> point(Point p) {
        return List.of(p.x(), -p.y());
    }

    /** A motion of paper, first turned over if asked, as the matrix of an SVG whose y points down. */
    static List<Double> matrix(Motion m, boolean turnedOver) {
        double flip = turnedOver ? -1 : 1;
        return List.of(flip * m.cos(), -flip * m.sin(), m.sin(), m.cos(), m.dx(), -m.dy());
    }
}
