package trueseam.intake.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.dxf.RuleTable;

/** Brings the pieces of a file into another size by a table of grade rules. */
public final class Grading {

    /** More ruled points than any piece has make no piece but work for days. */
    private static final int MOST_POINTS = 1000;

    private Grading() {}

    /**
     * The drawing with its pieces in one size.
     *
     * <p>Laws: (1) a point with a rule moves by that rule, relative to the sample size, x along the grade reference line of its piece or along
     * the sheet; (2) between two ruled points the boundary moves in proportion to the way along it (the usual linear distribution); (3) a
     * stitching line without rules of its own goes with the boundary; (4) lines inside go by their own rules and with the edge that they meet.
     *
     * @param drawing a drawing whose file names its pieces, in the sample size
     * @param table the rules
     * @param size one of the table's sizes
     * @return the same with graded pieces only, and what could not be graded as findings
     * @throws DrawingException if there is no such size, no piece in the sample size, or a rule is missing in the table
     */
    public static Drawing inSize(Drawing drawing, RuleTable table, String size) {
        String file = drawing.file();
        if (!table.sizes().contains(size)) {
            throw new DrawingException(
                    file,
                    "",
                    (size.isBlank() ? "A size was expected" : "Size " + size + " is not in its rules")
                            + "; they are for " + String.join(", ", table.sizes()) + ".");
        }
        if (drawing.apparel().pieces().isEmpty()) {
            throw new DrawingException(
                    file,
                    "",
                    "It names no pieces, so rules say nothing of it; they go with a DXF file after ASTM D6673.");
        }
        List<ApparelPiece> sample = drawing.apparel().pieces().stream()
                .filter(p -> p.size().isBlank() || p.size().equalsIgnoreCase(table.sampleSize()))
                .toList();
        if (sample.isEmpty()) {
            throw new DrawingException(
                    file,
                    "",
                    "It has no pieces in size " + table.sampleSize() + ", which the rules start from; its sizes are "
                            + drawing.apparel().sizes() + ".");
        }
        List<Finding> findings = new ArrayList<>(drawing.findings());
        List<ApparelPiece> graded = new ArrayList<>();
        for (ApparelPiece piece : sample) {
            check(file, piece, table);
            graded.add(graded(file, piece, table, size, findings));
        }
        findings.add(Finding.note(
                file,
                "Its pieces were graded from size " + table.sampleSize() + " to " + size
                        + "; between points with a rule the edge moves in proportion to the way along it."));
        return new Drawing(
                file,
                drawing.strokes(),
                drawing.captions(),
                findings,
                new ApparelPieces(drawing.apparel().style(), graded));
    }

    private static void check(String file, ApparelPiece piece, RuleTable table) {
        String place = "piece " + piece.name();
        if (piece.gradePoints().size() > MOST_POINTS) {
            throw new DrawingException(file, place, "more than " + MOST_POINTS + " of its points have a rule.");
        }
        for (var point : piece.gradePoints()) {
            if (!table.rules().containsKey(point.rule())) {
                throw new DrawingException(
                        file,
                        place,
                        String.format(
                                Locale.ROOT,
                                "Rule %d at (%.1f, %.1f) is not in the table of rules; take the table that came with the file.",
                                point.rule(),
                                point.at().x(),
                                point.at().y()));
            }
        }
    }

    private static ApparelPiece graded(
            String file, ApparelPiece piece, RuleTable table, String size, List<Finding> findings) {
        GradedPiece grading = new GradedPiece(piece, table, size);
        if (!grading.isRuled()) {
            findings.add(Finding.warning(
                    piece.name(),
                    "No point of its boundary has a rule; it stays as in size " + table.sampleSize() + "."));
        }
        try {
            ApparelPiece graded = grading.graded();
            if (grading.isRuled() && grading.unmoved() > 0) {
                findings.add(Finding.warning(
                        piece.name(),
                        grading.unmoved()
                                + " of the lines and holes inside it have no rule and meet no edge; they stay as in"
                                + " size " + table.sampleSize() + "."));
            }
            return graded;
        } catch (GeometryException e) {
            throw new DrawingException(file, "piece " + piece.name(), "Its rules tear it apart: " + e.getMessage());
        }
    }
}
