package trueseam.intake.dxf;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Affine;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;

/** Lays blocks where they are placed, blocks in blocks too, within bounds that no pattern comes near. */
final class Placer {

    private static final int DEEPEST = 16;
    private static final int MOST_STROKES = 200_000;
    private static final int MOST_SEGMENTS = 500_000;
    private static final int MOST_PLACINGS = 50_000;

    /** Half an arm of the cross that shows a point. */
    private static final double CROSS_MM = 1;

    final List<Stroke> strokes = new ArrayList<>();
    final List<Caption> captions = new ArrayList<>();

    private final String file;
    private final Map<String, Drawn> blocks = new HashMap<>();
    private final Looks looks;
    private final Notes notes;
    private final boolean apparel;
    private final Set<String> missing = new HashSet<>();
    private final Deque<String> within = new ArrayDeque<>();
    private int placings;
    private int segments;

    /** A block as read: its marks with its base point at the origin. */
    record Drawn(Block block, Affine toBase, List<Mark> marks) {}

    Placer(String file, List<Drawn> drawn, Looks looks, Notes notes, boolean apparel) {
        this.file = file;
        this.looks = looks;
        this.notes = notes;
        this.apparel = apparel;
        for (Drawn one : drawn) {
            if (blocks.putIfAbsent(Sections.key(one.block().name()), one) != null) {
                notes.warn(
                        "two blocks are named \"" + one.block().name() + "\"; where it is placed the first is drawn.");
            }
        }
    }

    /** Draws what lies on the sheet itself. */
    void place(List<Mark> marks) {
        place(marks, Affine.NONE, "", Look.PLAIN, "0");
    }

    /** Draws a block that nothing places, where it was drawn. */
    void place(Drawn drawn) {
        within.push(Sections.key(drawn.block().name()));
        place(drawn.marks(), Affine.NONE, drawn.block().name() + "/", Look.PLAIN, "0");
        within.pop();
    }

    private void place(List<Mark> marks, Affine to, String group, Look insert, String insertLayer) {
        for (Mark mark : marks) {
            String own = mark.trait().layer();
            String layer = own.equals("0") ? insertLayer : own;
            Look look = looks.of(mark.trait(), layer, insert);
            try {
                if (mark instanceof Mark.Placing p) {
                    place(p, to, group, look, layer);
                } else {
                    draw(mark, to, group + layer, look);
                }
            } catch (GeometryException offThePaper) {
                notes.say(Finding.failure(
                        file + ", line " + mark.trait().line(), "this was left out: " + offThePaper.getMessage()));
            }
        }
    }

    private void draw(Mark mark, Affine to, String layer, Look look) {
        String label = "line " + mark.trait().line();
        if (mark instanceof Mark.Stroke s) {
            stroke(to.apply(s.path()), look, layer, label);
        } else if (mark instanceof Mark.Words w) {
            Vec up = new Vec(to.c(), to.d());
            captions.add(new Caption(w.text(), to.apply(w.at()), w.heightMm() * up.length(), layer));
            count(1);
        } else if (mark instanceof Mark.Spot s) {
            if (!(apparel && ApparelLayer.of(mark.trait().layer()).isVertexMark())) {
                Point at = to.apply(s.at());
                Vec across = new Vec(CROSS_MM, 0);
                stroke(Path.of(new Line(at.minus(across), at.plus(across))), look, layer, label);
                stroke(Path.of(new Line(at.minus(across.left()), at.plus(across.left()))), look, layer, label);
            }
        }
    }

    private void stroke(Path path, Look look, String layer, String label) {
        count(path.segments().size());
        strokes.add(new Stroke(path, look, layer, label));
    }

    private void count(int more) {
        segments += more;
        if (segments > MOST_SEGMENTS || strokes.size() + captions.size() > MOST_STROKES) {
            throw new DrawingException(
                    file,
                    "",
                    "more than " + MOST_STROKES + " lines or " + MOST_SEGMENTS
                            + " strokes are drawn; that is no pattern. " + "Export the pieces alone.");
        }
    }

    private void place(Mark.Placing placing, Affine to, String group, Look look, String layer) {
        String key = Sections.key(placing.block());
        String where = "line " + placing.trait().line();
        placings++;
        if (placings > MOST_PLACINGS) {
            throw new DrawingException(
                    file, where, "more than " + MOST_PLACINGS + " blocks are placed; that is no pattern.");
        }
        if (within.contains(key)) {
            throw new DrawingException(
                    file,
                    where,
                    "block \"" + placing.block()
                            + "\" is placed inside itself; such a drawing has no end. Draw it without "
                            + "that insert.");
        }
        if (within.size() >= DEEPEST) {
            throw new DrawingException(
                    file, where, "blocks lie in blocks more than " + DEEPEST + " deep; export the pieces alone.");
        }
        Drawn drawn = blocks.get(key);
        if (drawn == null) {
            if (missing.add(key)) {
                notes.say(Finding.failure(
                        file + ", " + where,
                        "block \"" + placing.block() + "\" is placed and not in the file; it was left out."));
            }
            return;
        }
        within.push(key);
        Affine there = drawn.toBase().then(placing.placing()).then(to);
        place(drawn.marks(), there, group + drawn.block().name() + "/", look, layer);
        within.pop();
    }
}
