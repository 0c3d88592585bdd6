package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Cubic;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.convert.Affine;
import trueseam.geometry.convert.PathData;
import trueseam.geometry.convert.Subpath;

/**
 * A drawn element of a piece, and where it lies in the piece.
 *
 * @param node the element
 * @param placing from the element's coordinates to those of its piece, y still downwards
 * @param what what it is called in sentences, such as {@code edge "side" of piece "front"}
 */
record Drawn(SvgNode node, Affine placing, String what) {

    /** Editors round coordinates: ends no farther apart than this are one point. */
    static final double JOIN_MM = 0.1;

    /** Its line in the piece's coordinates, y up; its parts joined where they meet. */
    Path path(Reading reading) {
        List<Path> parts = parts(reading);
        if (parts.isEmpty()) {
            throw reading.refused(
                    node, what, "Its line is missing; expected a path with at least one stroke; draw it.");
        }
        Path whole = parts.get(0);
        for (Path next : parts.subList(1, parts.size())) {
            double gap = whole.end().distanceTo(next.start());
            if (gap > JOIN_MM) {
                throw reading.refused(
                        node,
                        what,
                        "Its line falls into parts " + gap + " mm apart; expected one line; join them or delete the"
                                + " stray part.");
            }
            whole = (gap <= Path.CHAIN_MM ? whole : endingAt(whole, next.start())).then(next);
        }
        return whole;
    }

    /** Its connected lines in the piece's coordinates, y up; none if it has no strokes. */
    List<Path> parts(Reading reading) {
        try {
            List<Path> all = new ArrayList<>();
            Affine up = placing.then(Affine.UPSIDE_DOWN);
            for (Subpath part : PathData.read(data(reading))) {
                all.add(up.apply(part.path()));
            }
            return all;
        } catch (GeometryException e) {
            throw reading.refused(node, what, e.getMessage() + " Correct the line in a vector editor.");
        }
    }

    private String data(Reading reading) {
        return switch (node.name()) {
            case "path" -> text("d");
            case "line" ->
                "M" + text("x1", "0") + " " + text("y1", "0") + " L" + text("x2", "0") + " " + text("y2", "0");
            case "polyline" -> "M" + text("points");
            case "polygon" -> "M" + text("points") + "Z";
            default ->
                throw reading.refused(
                        node,
                        what,
                        "It is drawn as " + node.name()
                                + "; expected path, line, polyline or polygon; convert it to a path.");
        };
    }

    private String text(String attribute) {
        return text(attribute, "");
    }

    private String text(String attribute, String missing) {
        return node.attribute(attribute).orElse(missing);
    }

    /** Where it stands: the place of a use, the centre of a circle, the start of a line; y up. */
    Optional<Point> point(Reading reading) {
        Optional<Point> drawn =
                switch (node.name()) {
                    case "use", "text" -> coordinates(reading, "x", "y");
                    case "circle", "ellipse" -> coordinates(reading, "cx", "cy");
                    case "path", "line", "polyline", "polygon" -> {
                        List<Path> parts = parts(reading);
                        yield parts.isEmpty()
                                ? Optional.empty()
                                : Optional.of(parts.get(0).start());
                    }
                    default -> Optional.empty();
                };
        return drawn;
    }

    private Optional<Point> coordinates(Reading reading, String across, String down) {
        double x = reading.number(node, across, what).orElse(0.0);
        double y = reading.number(node, down, what).orElse(0.0);
        try {
            return Optional.of(placing.then(Affine.UPSIDE_DOWN).apply(new Point(x, y)));
        } catch (GeometryException e) {
            throw reading.refused(node, what, e.getMessage());
        }
    }

    /** The path with its end moved by rounding. */
    static Path endingAt(Path path, Point end) {
        List<Segment> strokes = new ArrayList<>(path.segments());
        Segment last = strokes.get(strokes.size() - 1);
        Segment moved = last instanceof Cubic c
                ? new Cubic(c.start(), c.handle1(), c.handle2().plus(end.minus(c.end())), end)
                : new Line(last.start(), end);
        strokes.set(strokes.size() - 1, moved);
        return Path.of(strokes);
    }
}
