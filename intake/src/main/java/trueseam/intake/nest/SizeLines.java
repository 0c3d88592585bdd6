package trueseam.intake.nest;

import java.util.List;
import java.util.Set;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.drawing.Stroke;

/**
 * The lines of one size.
 *
 * @param size which
 * @param strokes its own lines
 * @param rings the outlines of its pieces
 * @param layers the layers that are this size's alone; empty where sizes are not told by layers
 */
record SizeLines(NestSize size, List<Stroke> strokes, List<Ring> rings, Set<String> layers) {

    /** A notch or a dart leg is drawn up to the line that it belongs to. */
    private static final double ON_MM = 1;

    /** Lines of neighbouring sizes may run as near to each other. */
    private static final double CLEARLY_MM = 0.15;

    /** A crossing this near to an end of a line is its end. */
    private static final double INSIDE_MM = 1.5;

    private static final double STRAIGHT = 1.001;

    SizeLines {
        strokes = List.copyOf(strokes);
        rings = List.copyOf(rings);
        layers = Set.copyOf(layers);
    }

    boolean isOnlyIn(String layer) {
        return layers.contains(layer);
    }

    /**
     * Whether a line that bears no size is this one's too: it ends on no size's outline, or on this one's, or it runs across it and others.
     */
    boolean takes(Stroke stroke, List<SizeLines> others) {
        Path line = stroke.path();
        if (line.isClosed()) {
            return true;
        }
        if (crosses(line) && others.stream().anyMatch(o -> o.crosses(line))) {
            return true;
        }
        Point middle = line.pointAt(line.length() / 2);
        List<Point> decisive = isOn(middle, others) ? List.of(middle) : List.of(line.start(), line.end());
        return decisive.stream().filter(p -> isOn(p, others)).allMatch(p -> {
            double other =
                    others.stream().mapToDouble(o -> o.distanceTo(p)).min().orElse(Double.POSITIVE_INFINITY);
            return distanceTo(p) <= other + CLEARLY_MM;
        });
    }

    private boolean isOn(Point p, List<SizeLines> others) {
        return distanceTo(p) <= ON_MM || others.stream().anyMatch(o -> o.distanceTo(p) <= ON_MM);
    }

    /** A straight line, such as a long notch, that runs across an outline with both its ends off it. */
    private boolean crosses(Path line) {
        Vec chord = line.end().minus(line.start());
        if (line.length() > STRAIGHT * chord.length()) {
            return false;
        }
        return rings.stream()
                .filter(r -> r.bounds().meets(line.bounds(), 0))
                .flatMap(r -> r.path().crossings(line.start(), chord).stream())
                .mapToDouble(c -> chord.unit().dot(c.point().minus(line.start())))
                .anyMatch(along -> INSIDE_MM < along && along < chord.length() - INSIDE_MM);
    }

    private double distanceTo(Point p) {
        return distance(p, rings);
    }

    private static double distance(Point p, List<Ring> rings) {
        return rings.stream()
                .filter(r -> r.bounds().grown(2 * ON_MM).meets(Bounds.of(p, p), 0))
                .mapToDouble(r -> r.path().nearest(p).point().distanceTo(p))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether neither its ends nor its middle lie on an outline. */
    static boolean isFree(Path line, List<Ring> rings) {
        return List.of(line.start(), line.end(), line.pointAt(line.length() / 2)).stream()
                .allMatch(p -> distance(p, rings) > ON_MM);
    }
}
