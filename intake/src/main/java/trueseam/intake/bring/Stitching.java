package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.offset.Offset;
import trueseam.geometry.polygon.OutlineFault;
import trueseam.geometry.polygon.Region;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.Opposite;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.outline.RawPiece;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.PieceCorrection;

/**
 * Where a piece is sewn: the line that the file or a second line gives, else the drawn line itself, or one inside it.
 *
 * @param line the stitching line, closed
 * @param corners its corners, where the file marks them; none where they are to be found
 * @param taken which of the drawn lines is what
 * @param allowanceMm the seam allowance, mm; of two lines in the mean
 */
record Stitching(Path line, List<Point> corners, Sure<LineTaken> taken, double allowanceMm) {

    /** How sure it is that a second line is sewn, that a line is cut where the allowance was told, and that an only line is sewn. */
    private static final double TWO_LINES = 0.92;

    private static final double TOLD = 0.9;
    private static final double ONE_LINE = 0.5;

    /** Corners that are told are found again within this. */
    private static final double SAID_WITHIN_MM = 3;

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
            BringChoices choices,
            PieceCorrection said,
            String place,
            List<Finding> findings) {
        Stitching sewn = sewn(file, raw, told, choices, said, place, findings);
        List<Point> corners = told.filter(ApparelPiece::cornersMarked)
                .map(ApparelPiece::corners)
                .filter(marked -> marked.size() <= MOST_CORNERS)
                .map(marked -> beside(marked, told.orElseThrow().boundary(), sewn.line))
                .orElse(List.of());
        return new Stitching(sewn.line, corners, sewn.taken, sewn.allowanceMm);
    }

    private static List<Point> beside(List<Point> corners, Path boundary, Path line) {
        if (boundary.equals(line)) {
            return corners;
        }
        Opposite opposite = new Opposite(line);
        List<Point> all = new ArrayList<>(opposite.ownCorners());
        corners.forEach(corner -> all.add(opposite.ofCorner(corner)));
        return all;
    }

    private static Stitching sewn(
            String file,
            RawPiece raw,
            Optional<ApparelPiece> told,
            BringChoices choices,
            PieceCorrection said,
            String place,
            List<Finding> findings) {
        if (raw.inner().isPresent() && said.line().orElse(LineTaken.INNER) == LineTaken.INNER) {
            return inner(raw.inner().get(), told.isPresent(), said, place, findings);
        }
        Path outer = raw.outer().path();
        Optional<LineTaken> wanted = said.line().filter(l -> l != LineTaken.INNER);
        if (wanted.isEmpty() && said.line().isPresent()) {
            findings.add(Finding.warning(
                    place,
                    "An inner line is said to be its stitching line, and no second line runs inside the first; the drawn line is"
                            + " taken."));
        }
        LineTaken taken = wanted.orElse(choices.cutAllowanceMm().isPresent() ? LineTaken.CUTTING : LineTaken.STITCHING);
        double usual = taken == LineTaken.CUTTING
                ? choices.cutAllowanceMm().orElse(choices.allowanceMm())
                : choices.allowanceMm();
        double mm = said.allowanceMm().orElse(usual);
        if (taken == LineTaken.CUTTING) {
            Path line = inset(file, outer, told.flatMap(ApparelPiece::mirrorLine), mm, place, findings);
            return new Stitching(line, List.of(), sure(wanted, taken, TOLD), mm);
        }
        if (wanted.isEmpty()) {
            findings.add(Finding.warning(
                    place,
                    "It has one line only, taken for the stitching line; if it is the cutting line, say --cutting-lines with"
                            + " the seam allowance that it has."));
        }
        return new Stitching(outer, List.of(), sure(wanted, taken, ONE_LINE), mm);
    }

    private static Sure<LineTaken> sure(Optional<LineTaken> said, LineTaken taken, double confidence) {
        return said.isPresent() ? Sure.said(taken) : Sure.proposed(taken, confidence);
    }

    private static Stitching inner(
            RawPiece.Beside beside, boolean told, PieceCorrection said, String place, List<Finding> findings) {
        if (said.line().isEmpty()) {
            findings.add(Finding.note(
                    place,
                    String.format(
                            Locale.ROOT,
                            told
                                    ? "Its sew line runs %.1f to %.1f mm inside its boundary and is taken for the stitching line."
                                    : "A second line runs %.1f to %.1f mm inside the first: the inner one is taken for the"
                                            + " stitching line.",
                            beside.leastMm(),
                            beside.mostMm())));
        }
        return new Stitching(
                beside.line(),
                List.of(),
                sure(said.line(), LineTaken.INNER, TWO_LINES),
                Math.round(5 * (beside.leastMm() + beside.mostMm())) / 10.0);
    }

    /** How near to its line what is said must lie; corners that were told on the other line lie a mitre farther. */
    double saidWithinMm() {
        return taken.said() ? SAID_WITHIN_MM + 1.5 * allowanceMm : SAID_WITHIN_MM;
    }

    private static Path inset(
            String file, Path outer, Optional<Path> fold, double mm, String place, List<Finding> findings) {
        Path line = outer.signedArea() < 0 ? outer.reversed() : outer;
        try {
            // The exact search for crossings takes long on an outline that is a tangle.
            Optional<OutlineFault> fault = Region.faultOf(line, DRAWN_MM);
            if (fault.isPresent()) {
                throw new GeometryException(fault.get().sentence());
            }
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
