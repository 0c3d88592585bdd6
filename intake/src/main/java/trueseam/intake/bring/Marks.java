package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.outline.Pieces;
import trueseam.intake.outline.RawPiece;

/**
 * Stretches of two outlines that a drawing marks in one and the same way, such as by a broad line in one colour: they are meant to be sewn
 * together.
 *
 * @param marks by the piece's place, what is marked on it
 */
record Marks(Map<Integer, List<Mark>> marks) {

    static final Marks NONE = new Marks(Map.of());

    /** A mark lies on the line that it marks. */
    private static final double ON_MM = 1;

    private static final double SHORTEST_MM = 40;

    /** How sure it is that two stretches marked alike are sewn together: somebody meant it, but a third mark may be missing. */
    private static final double MARKED = 0.85;

    /** A mark is a broad stroke, as of a felt pen. */
    private static final double BROAD_MM = 2.5;

    /**
     * A marked stretch.
     *
     * @param look how it is marked
     * @param line where it runs, as drawn
     */
    record Mark(Look look, Path line) {}

    static Marks of(Pieces found) {
        Map<Look, Map<Integer, List<Mark>>> byLook = new LinkedHashMap<>();
        for (int i = 0; i < found.pieces().size(); i++) {
            RawPiece piece = found.pieces().get(i);
            for (Stroke stroke : found.loose()) {
                boolean other = stroke.look().widthMm() >= BROAD_MM
                        && stroke.look().widthMm() > 2 * piece.outer().look().widthMm();
                if (other
                        && stroke.path().length() > SHORTEST_MM
                        && (liesOn(stroke.path(), piece.outer().path()) || cuts(stroke.path(), piece))) {
                    byLook.computeIfAbsent(stroke.look(), k -> new LinkedHashMap<>())
                            .computeIfAbsent(i, k -> new ArrayList<>())
                            .add(new Mark(stroke.look(), stroke.path()));
                }
            }
        }
        Map<Integer, List<Mark>> marks = new LinkedHashMap<>();
        for (Map<Integer, List<Mark>> alike : byLook.values()) {
            boolean pair = alike.size() == 2 && alike.values().stream().allMatch(m -> m.size() == 1);
            if (pair) {
                alike.forEach((piece, mark) ->
                        marks.computeIfAbsent(piece, k -> new ArrayList<>()).addAll(mark));
            }
        }
        return new Marks(marks);
    }

    private static boolean liesOn(Path mark, Path outline) {
        for (int i = 0; i <= 10; i++) {
            Point p = mark.pointAt(i * mark.length() / 10);
            if (outline.nearest(p).point().distanceTo(p) > ON_MM) {
                return false;
            }
        }
        return true;
    }

    /** A line across a piece, from edge to edge. */
    private static boolean cuts(Path mark, RawPiece piece) {
        return piece.inside().stream().anyMatch(s -> s.path().equals(mark))
                && List.of(mark.start(), mark.end()).stream()
                        .allMatch(p -> piece.outer().path().nearest(p).point().isNear(p, ON_MM));
    }

    /** The outline of a piece without what a mark across it cuts off: the larger part stays. */
    Path outline(int piece, Path line) {
        Path outline = line;
        for (Path mark : on(piece)) {
            if (!liesOn(mark, outline)) {
                double a = outline.nearest(mark.start()).alongMm();
                double b = outline.nearest(mark.end()).alongMm();
                Path one = closed(stretch(outline, b, a), mark);
                Path other = closed(stretch(outline, a, b), mark.reversed());
                outline = Math.abs(one.signedArea()) >= Math.abs(other.signedArea()) ? one : other;
            }
        }
        return outline;
    }

    private static Path stretch(Path outline, double from, double to) {
        return from < to
                ? outline.part(from, to)
                : outline.part(from, outline.length()).then(outline.part(0, to));
    }

    /** The stretch, and on along the mark, which begins where the stretch ends but for the pen's width. */
    private static Path closed(Path stretch, Path mark) {
        List<Segment> all = new ArrayList<>(stretch.segments());
        bridge(all, stretch.end(), mark.start());
        all.addAll(mark.segments());
        bridge(all, mark.end(), stretch.start());
        return Path.of(all);
    }

    private static void bridge(List<Segment> line, Point from, Point to) {
        if (!from.isNear(to, 1e-9)) {
            line.add(new Line(from, to));
        }
    }

    List<Path> on(int piece) {
        return marks.getOrDefault(piece, List.of()).stream().map(Mark::line).toList();
    }

    /** The seams that the marks mean: no ease, since nothing says that one side is to be longer. */
    List<BroughtSeam> seams(List<BroughtPiece> pieces, List<Finding> findings) {
        Map<Look, List<EdgeRef>> byLook = new LinkedHashMap<>();
        marks.forEach((at, all) -> {
            for (Mark mark : all) {
                Optional<Piece> marked = pieces.get(at).piece();
                marked.stream()
                        .flatMap(piece -> piece.edges().stream())
                        .min(java.util.Comparator.comparingDouble(
                                (Edge e) -> Math.abs(e.length() - mark.line().length())))
                        .ifPresent(e -> byLook.computeIfAbsent(mark.look(), k -> new ArrayList<>())
                                .add(new EdgeRef(marked.orElseThrow().name(), e.name())));
            }
        });
        List<BroughtSeam> seams = new ArrayList<>();
        for (List<EdgeRef> pair : byLook.values()) {
            if (pair.size() < 2) {
                continue; // one of the two pieces is left out
            }
            double a = length(pieces, pair.get(0));
            double b = length(pieces, pair.get(1));
            String name = "marked seam" + (seams.isEmpty() ? "" : " " + (seams.size() + 1));
            Seam seam = new Seam(name, List.of(pair.get(0)), List.of(pair.get(1)), 0);
            seams.add(new BroughtSeam(Sure.proposed(seam, MARKED), a, b, "both are marked in one way"));
            findings.add(Finding.note(
                    name,
                    String.format(
                            Locale.ROOT,
                            "%s (%.1f mm) and %s (%.1f mm) are marked alike and taken to be sewn together%s.",
                            pair.get(0),
                            a,
                            pair.get(1),
                            b,
                            Math.abs(a - b) > 0.1
                                    ? String.format(Locale.ROOT, "; they differ by %.1f mm", Math.abs(a - b))
                                    : "")));
        }
        return seams;
    }

    private static double length(List<BroughtPiece> pieces, EdgeRef ref) {
        return pieces.stream()
                .flatMap(p -> p.piece().stream())
                .filter(p -> p.name().equals(ref.piece()))
                .findFirst()
                .orElseThrow()
                .edge(ref.edge())
                .length();
    }
}
