package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trueseam.garment.pattern.Marking;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Stroke;

/** The lines drawn inside a piece, as they lie upright; what is taken for something is taken out. One piece, one thread. */
final class InnerLines {

    private final List<Path> lying = new ArrayList<>();
    private final List<String> called = new ArrayList<>();
    private final List<Boolean> used = new ArrayList<>();

    /** Lines named by what their layer means; others are lines. */
    InnerLines(List<Stroke> strokes, Upright upright, boolean byConvention) {
        for (Stroke stroke : strokes) {
            lying.add(upright.apply(stroke.path()));
            called.add(byConvention ? byLayer(stroke.layer()) : "line");
            used.add(false);
        }
    }

    private static String byLayer(String layer) {
        return switch (layer) {
            case "8" -> "line";
            case "11" -> "cut-out";
            case "14" -> "sew line";
            default -> "line of layer " + layer;
        };
    }

    /** All of them, by number. */
    List<Path> all() {
        return List.copyOf(lying);
    }

    /** Whether a line was not taken for anything yet. */
    boolean isLeft(int number) {
        return !used.get(number);
    }

    /** Takes a line for something. */
    void use(int number) {
        used.set(number, true);
    }

    /** What is left, kept as it is drawn. */
    List<Marking> rest() {
        List<Marking> rest = new ArrayList<>();
        Map<String, Integer> counts = new HashMap<>();
        for (int i = 0; i < lying.size(); i++) {
            if (isLeft(i)) {
                int count = counts.merge(called.get(i), 1, Integer::sum);
                rest.add(new Marking(called.get(i) + " " + count, lying.get(i)));
            }
        }
        return rest;
    }
}
