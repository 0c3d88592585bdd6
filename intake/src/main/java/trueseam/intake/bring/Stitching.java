package trueseam.intake.bring;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.offset.Offset;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.Opposite;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.outline.RawPiece;

/**
 * Where a piece is sewn: the line that the file or a second line gives, else the drawn line itself, or one inside it.
 *
 * @param line the stitching line, closed
 * @param corners its corners, where the file marks them; none where they are to be found
 */
record Stitching(Path line, List<Point> corners) {

    /** An inset is checked by offsetting it back: the lines agree within this. */
    private static final double INSET_MM = 0.1;

    private static final double DRAWN_MM = 0.01;

    private static final int CHECKED_PLACES = 200;

    /** A file that marks every vertex as a corner says nothing. */
    private static final int MOST_CORNERS = 100;

    static Stitching of(
            String file,
            RawPiece raw,
            Optional<ApparelPiece> told,
            OptionalDouble cutAllowanceMm,
            String place,
            List<Finding> findings) {
        Path line = line(file, raw, told, cutAllowanceMm, place, findings);
        List<Point> corners = told.filter(ApparelPiece::cornersMarked)
                .map(ApparelPiece::corners)
                .filter(marked -> marked.size() <= MOST_CORNERS)
                .map(marked -> beside(marked, told.orElseThrow().boundary(), line))
                .orElse(List.of());
        return new Stitching(line, corners);
    }

    private static List<Point> beside(List<Point> corners, Path boundary, Path line) {
        Opposite opposite = new Opposite(line);
        return boundary.equals(line)
                ? corners
                : corners.stream().map(opposite::ofCorner).toList();
    }

    private static Path line(
            String file,
            RawPiece raw,
            Optional<ApparelPiece> told,
            OptionalDouble cutAllowanceMm,
            String place,
            List<Finding> findings) {
        if (raw.inner().isPresent()) {
            RawPiece.Beside beside = raw.inner().get();
            findings.add(Finding.note(
                    place,
                    String.format(
                            Locale.ROOT,
                            told.isPresent()
                                    ? "Its sew line runs %.1f to %.1f mm inside its boundary and is taken for the stitching line."
                                    : "A second line runs %.1f to %.1f mm inside the first: the inner one is taken for the"
                                            + " stitching line.",
                            beside.leastMm(),
                            beside.mostMm())));
            return beside.line();
        }
        Path outer = raw.outer().path();
        if (cutAllowanceMm.isEmpty()) {
            findings.add(Finding.warning(
                    place,
                    "It has one line only, taken for the stitching line; if it is the cutting line, say --cutting-lines with"
                            + " the seam allowance that it has."));
            return outer;
        }
        return inset(
                file, outer, told.flatMap(ApparelPiece::mirrorLine), cutAllowanceMm.getAsDouble(), place, findings);
    }

    private static Path inset(
            String file, Path outer, Optional<Path> fold, double mm, String place, List<Finding> findings) {
        Path line = outer.signedArea() < 0 ? outer.reversed() : outer;
        try {
            Optional<OnFold> half = fold.flatMap(f -> OnFold.of(line, f));
            Path whole = half.map(OnFold::unfolded).orElse(line);
            Path inner = Offset.of(whole, -mm, DRAWN_MM);
            double worst = off(Offset.of(inner, mm, DRAWN_MM), whole);
            if (worst > INSET_MM) {
                findings.add(Finding.warning(
                        place,
                        String.format(
                                Locale.ROOT,
                                "Its stitching line, %.1f mm inside, does not give the drawn line back everywhere (%.1f mm off at"
                                        + " the worst place): its corners are not mitred, or its allowances differ.",
                                mm,
                                worst)));
            }
            return half.isPresent() ? half.get().folded(inner) : inner;
        } catch (GeometryException e) {
            throw new DrawingException(
                    file, place, String.format(Locale.ROOT, "No line lies %.1f mm inside it: %s", mm, e.getMessage()));
        }
    }

    private static double off(Path line, Path meant) {
        double worst = 0;
        for (int i = 0; i < CHECKED_PLACES; i++) {
            Point p = line.pointAt(i * line.length() / CHECKED_PLACES);
            worst = Math.max(worst, meant.nearest(p).point().distanceTo(p));
        }
        return worst;
    }
}
