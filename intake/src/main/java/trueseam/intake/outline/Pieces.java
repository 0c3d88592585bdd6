package trueseam.intake.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Bounds;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/**
 * The pieces of a drawing.
 *
 * @param pieces the pieces, the largest first
 * @param loose all lines that do not close
 * @param squares side lengths of test squares that were found, mm
 * @param findings gaps, copies, and what belongs to no piece
 */
public record Pieces(List<RawPiece> pieces, List<Stroke> loose, List<Double> squares, List<Finding> findings) {

    /** Smaller closed lines are holes, symbols and letters: a pocket flap has more. */
    private static final double LEAST_AREA_MM2 = 1500;

    /** A line this near to an outline, but not on it, may be its stitching line; a wider one is another thing. */
    private static final double WIDEST_ALLOWANCE_MM = 60;

    /** A nest of ten sizes of twenty pieces with both lines has 400. */
    private static final int MOST_OUTLINES = 500;

    /** No piece is wider or higher: a train has 5 m. */
    private static final double WIDEST_MM = 20_000;

    /** The outline of the largest piece, with room for scallops. */
    private static final double LONGEST_MM = 200_000;

    /** Outlines drawn as chords have some thousands. */
    private static final int MOST_STROKES = 10_000;

    private static final double[] SQUARES_MM = {20, 25, 25.4, 30, 40, 50, 50.8, 76.2, 100, 101.6};

    private static final double FLAT_MM = 0.2;

    /** Does not change. */
    public Pieces {
        pieces = List.copyOf(pieces);
        loose = List.copyOf(loose);
        squares = List.copyOf(squares);
        findings = List.copyOf(findings);
    }

    private record Closed(Stroke stroke, Region region, Bounds bounds) {}

    /**
     * Finds the pieces.
     *
     * @param drawing the drawing
     * @return the pieces and what was found on the way
     */
    public static Pieces of(Drawing drawing) {
        List<Finding> findings = new ArrayList<>();
        Chains.Joined joined = Chains.of(possible(drawing, findings));
        findings.addAll(joined.findings());
        List<Double> squares = new ArrayList<>();
        List<Closed> closed = new ArrayList<>();
        int tangled = 0;
        for (Stroke stroke : joined.lines()) {
            if (!stroke.path().isClosed() || Math.abs(stroke.path().signedArea()) < 1 || !isPossible(stroke.path())) {
                continue;
            }
            Optional<Double> square = square(stroke.path());
            if (square.isPresent()) {
                squares.add(square.get());
            } else if (Math.abs(stroke.path().signedArea()) >= LEAST_AREA_MM2) {
                Optional<Closed> simple = closed(stroke);
                simple.ifPresent(closed::add);
                tangled += simple.isEmpty() ? 1 : 0;
            }
        }
        if (tangled > 0) {
            findings.add(Finding.warning(
                    drawing.file(),
                    tangled
                            + " closed lines of the size of a piece cross or touch themselves and were left out; draw each"
                            + " as one simple outline if it is a piece."));
        }
        if (closed.size() > MOST_OUTLINES) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "It has " + closed.size() + " outlines of the size of pieces, and at most " + MOST_OUTLINES
                            + " are taken; name a layer, or take out what is not the pattern.");
        }
        closed.sort(Comparator.comparingDouble((Closed c) -> c.region.areaMm2()).reversed());
        dropFrames(closed, drawing, findings);
        dropSmall(closed, drawing, findings);
        List<RawPiece> pieces = new ArrayList<>();
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int i = 0; i < closed.size(); i++) {
            Closed outer = closed.get(i);
            if (!used.add(outer.stroke)) {
                continue;
            }
            pieces.add(piece(outer, closed, joined.lines(), drawing.captions(), used));
        }
        List<Stroke> loose =
                joined.lines().stream().filter(s -> !s.path().isClosed()).toList();
        return new Pieces(pieces, loose, squares, findings);
    }

    /** A closed line and what lies within it; nothing where it crosses itself, so that in and out cannot be told. */
    private static Optional<Closed> closed(Stroke stroke) {
        try {
            return Optional.of(new Closed(
                    stroke, Region.within(stroke.path(), FLAT_MM), stroke.path().bounds()));
        } catch (GeometryException crossing) {
            return Optional.empty();
        }
    }

    /** The lines that a pattern can have; of others it is told how many they were. */
    private static List<Stroke> possible(Drawing drawing, List<Finding> findings) {
        List<Stroke> possible =
                drawing.strokes().stream().filter(s -> isPossible(s.path())).toList();
        int left = drawing.strokes().size() - possible.size();
        if (left > 0) {
            findings.add(Finding.warning(
                    drawing.file(),
                    String.format(
                            Locale.ROOT,
                            "%d of its lines are longer than %.0f m, wider than %.0f m or of more than %d strokes and were"
                                    + " left out; if they are the pattern, say its unit.",
                            left,
                            LONGEST_MM / 1000,
                            WIDEST_MM / 1000,
                            MOST_STROKES)));
        }
        return possible;
    }

    private static boolean isPossible(Path path) {
        return path.segments().size() <= MOST_STROKES
                && path.bounds().width() <= WIDEST_MM
                && path.bounds().height() <= WIDEST_MM
                && path.length() <= LONGEST_MM;
    }

    /** What has a fiftieth of the largest outline's area is a map of the sheets or a symbol: a cuff has a twelfth. */
    private static void dropSmall(List<Closed> closed, Drawing drawing, List<Finding> findings) {
        double largest = closed.isEmpty() ? 0 : closed.get(0).region.areaMm2();
        int before = closed.size();
        closed.removeIf(c -> c.region.areaMm2() < largest / 50);
        if (closed.size() < before) {
            findings.add(Finding.note(
                    drawing.file(),
                    before - closed.size()
                            + " outlines have less than a fiftieth of the largest one's area and were left out."));
        }
    }

    /** A frame round the page holds two pieces or more; it is no piece itself. */
    private static void dropFrames(List<Closed> closed, Drawing drawing, List<Finding> findings) {
        closed.removeIf(frame -> {
            if (!isRectangle(frame.stroke.path())) {
                return false;
            }
            List<Closed> within = closed.stream()
                    .filter(c -> !c.equals(frame) && frame.bounds.grown(0.1).meets(c.bounds, 0) && holds(frame, c))
                    .toList();
            long apart = within.stream()
                    .filter(c -> within.stream().noneMatch(o -> !o.equals(c) && holds(o, c)))
                    .count();
            if (apart >= 2) {
                findings.add(Finding.note(
                        drawing.file(),
                        String.format(
                                Locale.ROOT,
                                "A rectangle of %.0f by %.0f mm holds %d outlines and was taken for a frame.",
                                frame.bounds.width(),
                                frame.bounds.height(),
                                apart)));
                return true;
            }
            return false;
        });
    }

    private static boolean holds(Closed outer, Closed inner) {
        if (outer.region.areaMm2() <= inner.region.areaMm2() || !outer.bounds.meets(inner.bounds, 0)) {
            return false;
        }
        Path line = inner.stroke.path();
        for (int i = 0; i < 8; i++) {
            if (!outer.region.contains(line.pointAt(i * line.length() / 8))) {
                return false;
            }
        }
        return true;
    }

    private static RawPiece piece(
            Closed outer, List<Closed> closed, List<Stroke> lines, List<Caption> captions, Set<Stroke> used) {
        Optional<RawPiece.Beside> inner = Optional.empty();
        for (Closed candidate : closed) {
            if (!used.contains(candidate.stroke) && holds(outer, candidate)) {
                Optional<RawPiece.Beside> beside = beside(outer, candidate);
                if (beside.isPresent() && inner.isEmpty()) {
                    inner = beside;
                    used.add(candidate.stroke);
                }
            }
        }
        if (inner.isEmpty()) {
            Optional<Closed> onFold = onFold(outer, lines, used);
            inner = onFold.flatMap(candidate -> beside(outer, candidate));
            if (inner.isPresent()) {
                used.add(onFold.get().stroke);
            }
        }
        List<Stroke> inside = new ArrayList<>();
        for (Stroke line : lines) {
            if (!used.contains(line) && isIn(outer, line.path())) {
                inside.add(line);
                if (line.path().isClosed()) {
                    used.add(line);
                }
            }
        }
        List<Caption> written =
                captions.stream().filter(c -> outer.region.contains(c.at())).toList();
        return new RawPiece(outer.stroke.label(), outer.stroke, inner, inside, written);
    }

    /**
     * A line that runs inside a piece from its edge to its edge, most of the way round: the stitching line of a piece on the fold, where
     * stitching and cutting line are one. It is closed along the edge.
     */
    private static Optional<Closed> onFold(Closed outer, List<Stroke> lines, Set<Stroke> used) {
        Path edge = outer.stroke.path();
        return lines.stream()
                .filter(s ->
                        !used.contains(s) && !s.path().isClosed() && s.path().length() > edge.length() / 2)
                .filter(s -> isIn(outer, s.path()))
                .filter(s -> List.of(s.path().start(), s.path().end()).stream()
                        .allMatch(p -> edge.nearest(p).point().isNear(p, Chains.JOIN_MM)))
                .max(Comparator.comparingDouble(s -> s.path().length()))
                .flatMap(s -> {
                    Path line = Loops.endingAt(s.path(), s.path().end());
                    Path closed = line.then(Path.through(line.end(), line.start()));
                    Stroke stroke = new Stroke(closed, s.look(), s.layer(), s.label());
                    Optional<Closed> simple = closed(stroke);
                    simple.ifPresent(c -> used.add(s));
                    return simple;
                });
    }

    /** A notch is drawn across the line: its middle counts, and either end may. */
    private static boolean isIn(Closed outer, Path line) {
        return outer.bounds.grown(1).meets(line.bounds(), 0)
                && (outer.region.contains(line.pointAt(line.length() / 2))
                        || (line.length() < 40
                                && (outer.region.contains(line.start()) || outer.region.contains(line.end()))));
    }

    private static Optional<RawPiece.Beside> beside(Closed outer, Closed inner) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        Path line = inner.stroke.path();
        int n = (int) Math.max(24, line.length() / 10);
        for (int i = 0; i < n; i++) {
            Point p = line.pointAt(i * line.length() / n);
            double apart = outer.stroke.path().nearest(p).point().distanceTo(p);
            least = Math.min(least, apart);
            most = Math.max(most, apart);
        }
        boolean covers = inner.region.areaMm2()
                > outer.region.areaMm2() - 1.3 * most * outer.stroke.path().length();
        return most <= WIDEST_ALLOWANCE_MM && covers
                ? Optional.of(new RawPiece.Beside(line, least, most))
                : Optional.empty();
    }

    private static boolean isRectangle(Path path) {
        Bounds bounds = path.bounds();
        double area = Math.abs(path.signedArea());
        return Math.abs(area - bounds.width() * bounds.height()) < 1e-3 * area;
    }

    /** A square of a size that people print to check the scale with. */
    private static Optional<Double> square(Path path) {
        double side = Math.sqrt(Math.abs(path.signedArea()));
        if (!isRectangle(path) || Math.abs(path.length() - 4 * side) > 0.01 * side) {
            return Optional.empty();
        }
        for (double usual : SQUARES_MM) {
            if (Math.abs(side - usual) < 0.03 * usual) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }
}
