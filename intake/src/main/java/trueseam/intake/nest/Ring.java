package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Bounds;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.outline.Outlines;

/**
 * A closed line of the size of a pattern piece.
 *
 * @param style what the lines that it is made of have in common
 * @param stroke the line, closed
 * @param region what it encloses
 * @param bounds the rectangle round it
 */
record Ring(String style, Stroke stroke, Region region, Bounds bounds) {

    /** As of pieces: a pocket flap has more. */
    private static final double LEAST_AREA_MM2 = 1500;

    private static final double FLAT_MM = 0.2;

    /** Ends of lines within this of another line touch it: as wide as gaps are closed. */
    static final double TOUCH_MM = 0.6;

    /** A size drawn from the centre round to the centre is so many times as long as the piece of centre that closes it. */
    private static final double ROUND = 1.4;

    private static final double LONG_MM = 100;

    /** Of the lesser of two outlines of one piece in two sizes so much lies in the other. */
    private static final double SHARED_AREA = 0.8;

    /** Two sizes of a nest that lie next to each other differ in area by less. */
    private static final double AREA_RATIO = 0.75;

    static List<Ring> of(String style, List<Stroke> strokes) {
        List<Ring> rings = new ArrayList<>();
        List<Stroke> left = new ArrayList<>(strokes);
        for (Stroke common : strokes) {
            List<Stroke> round = strokes.stream()
                    .filter(s -> !closedAlong(s.path(), common.path()).isEmpty())
                    .toList();
            // One line alone may be a piece in two strokes; several that close on one line share it.
            if (round.size() > 1 && left.containsAll(round)) {
                left.removeAll(round);
                round.forEach(s -> add(
                        rings,
                        style,
                        new Stroke(closedAlong(s.path(), common.path()).get(0), s.look(), s.layer(), s.label())));
            }
        }
        List<Stroke> open = new ArrayList<>();
        for (Stroke stroke : Outlines.joined(left)) {
            if (!stroke.path().isClosed()) {
                open.add(stroke);
            } else {
                add(rings, style, stroke);
            }
        }
        List<Ring> closedByOthers = new ArrayList<>();
        for (Stroke stroke : open) {
            rings.stream()
                    .flatMap(ring -> closedAlong(stroke.path(), ring.path()).stream())
                    .findFirst()
                    .ifPresent(path -> add(
                            closedByOthers, style, new Stroke(path, stroke.look(), stroke.layer(), stroke.label())));
        }
        rings.addAll(closedByOthers);
        return rings;
    }

    /** Long lines that do not close among themselves: another style's lines may close them. */
    static List<Stroke> loose(List<Stroke> own) {
        return Outlines.joined(own).stream()
                .filter(s -> !s.path().isClosed() && s.path().length() >= LONG_MM)
                .toList();
    }

    /** Small ones and such as cross themselves are no outlines of pieces. */
    private static void add(List<Ring> rings, String style, Stroke stroke) {
        Path path = stroke.path();
        if (Math.abs(path.signedArea()) >= LEAST_AREA_MM2
                && Region.faultOf(path, FLAT_MM).isEmpty()) {
            rings.add(new Ring(style, stroke, Region.within(path, FLAT_MM), path.bounds()));
        }
    }

    /** Whether another line closes this one, which goes most of the way round. */
    static boolean closes(Path other, Path line) {
        return !closedAlong(line, other).isEmpty();
    }

    /** A line whose ends lie on another outline and that goes most of the way round: closed along that outline. */
    private static List<Path> closedAlong(Path line, Path outline) {
        if (line.isClosed() || line.equals(outline) || line.length() < Math.max(LONG_MM, outline.length() / 2)) {
            return List.of();
        }
        var from = outline.nearest(line.end());
        var to = outline.nearest(line.start());
        if (!from.point().isNear(line.end(), TOUCH_MM) || !to.point().isNear(line.start(), TOUCH_MM)) {
            return List.of();
        }
        double a = Math.min(from.alongMm(), to.alongMm());
        double b = Math.max(from.alongMm(), to.alongMm());
        Path within = !outline.isClosed() || b - a <= outline.length() / 2
                ? outline.part(a, b)
                : outline.part(b, outline.length()).then(outline.part(0, a));
        if (within.length() * ROUND > line.length()) {
            return List.of();
        }
        Path back = within.start().isNear(line.end(), 2 * TOUCH_MM) ? within : within.reversed();
        List<trueseam.geometry.Segment> all = new ArrayList<>(line.segments());
        bridge(all, line.end(), back.start());
        all.addAll(back.segments());
        bridge(all, back.end(), line.start());
        return List.of(Path.of(all));
    }

    private static void bridge(List<trueseam.geometry.Segment> all, Point from, Point to) {
        if (!from.isNear(to, 1e-9)) {
            all.add(new Line(from, to));
        }
    }

    Path path() {
        return stroke.path();
    }

    double areaMm2() {
        return region.areaMm2();
    }

    /** Whether both are likely one piece in two sizes: they lie over each other nearly wholly. */
    boolean isKin(Ring other) {
        double least = Math.min(areaMm2(), other.areaMm2());
        double most = Math.max(areaMm2(), other.areaMm2());
        return bounds.meets(other.bounds, 0)
                && least > AREA_RATIO * most
                && isRectangle() == other.isRectangle()
                && region.intersection(other.region).areaMm2() > SHARED_AREA * least;
    }

    /** Guides are drawn as rectangles round a piece; a band is a rectangle in every size. */
    private boolean isRectangle() {
        return areaMm2() > 0.999 * bounds.width() * bounds.height();
    }

    /**
     * Whether the one runs inside the other at the seam allowances of a single size: one distance, or a few, each kept for a stretch, and
     * none but along one straight edge, the fold. Sizes lie apart by ever changing amounts, and touch where they are laid together.
     */
    boolean isAllowanceOf(Ring other) {
        Path inner = areaMm2() < other.areaMm2() ? path() : other.path();
        Path outer = areaMm2() < other.areaMm2() ? other.path() : path();
        return Apart.from(inner, List.of(outer)).isAllowance();
    }
}
