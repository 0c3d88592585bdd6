package trueseam.intake.scale;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.finding.Finding;
import trueseam.geometry.convert.Affine;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/** Checks printed dimensions against what is drawn, and scales a drawing by the one that the user confirms. */
public final class TrueScale {

    private static final String PLACE = "test square";

    /** No printer and no program shrinks by more: beyond it another thing was taken for the square. */
    private static final double MOST = 3;

    private final Drawing drawing;
    private final List<ScaleMark> marks = new ArrayList<>();

    private TrueScale(Drawing drawing, List<Drawing> others) {
        this.drawing = drawing;
        marks.addAll(ScaleMarks.of(drawing));
        others.forEach(other -> marks.addAll(ScaleMarks.of(other)));
    }

    /**
     * The drawing with what its printed dimensions say of its scale.
     *
     * @param drawing a drawing
     * @param others other sheets of the same file at the same scale, such as a cover with a test square
     * @param squareMm what the printed square, or a printed dimension, is to measure, mm, if the user confirms it: then the drawing is scaled
     *     by that, each direction by itself
     * @return the drawing, scaled if asked
     * @throws DrawingException if nothing of about that size is found, or the correction would be absurd
     */
    public static Drawing of(Drawing drawing, List<Drawing> others, OptionalDouble squareMm) {
        TrueScale scale = new TrueScale(drawing, others);
        return squareMm.isPresent() ? scale.corrected(squareMm.getAsDouble()) : scale.checked();
    }

    private Drawing checked() {
        List<Finding> findings = new ArrayList<>(drawing.findings());
        List<ScaleMark> squares =
                marks.stream().filter(m -> m.isSquare() && m.isSaid()).toList();
        squares.forEach(square -> findings.add(told(square)));
        List<ScaleMark> lines = marks.stream().filter(m -> !m.isSquare()).toList();
        if (!lines.isEmpty()) {
            findings.add(told(lines));
        }
        if (squares.isEmpty()) {
            for (ScaleMark square : marks) {
                if (square.isSquare()) {
                    findings.add(Finding.note(
                            PLACE,
                            "A square of " + square.drawn()
                                    + " is drawn, without a size that can be read; if it is to measure something else, say what"
                                    + " with --test-square."));
                }
            }
        }
        return new Drawing(drawing.file(), drawing.strokes(), drawing.captions(), findings, drawing.apparel());
    }

    private static Finding told(ScaleMark square) {
        String both = "\"" + square.text() + "\" is printed at a square that is drawn " + square.drawn();
        if (square.agrees()) {
            return Finding.note(PLACE, both + ": the drawing is at true scale.");
        }
        return Finding.warning(
                PLACE,
                both
                        + String.format(
                                Locale.ROOT,
                                ": the drawing is not at true scale (%.1f %% across, %.1f %% up).",
                                100 / square.right(),
                                100 / square.up())
                        + " If that square is to measure what is printed, say --test-square \"" + length(square)
                        + "\", and the whole drawing is scaled by it.");
    }

    /** Dimension lines round to the mm and may measure a slope: many that agree tell, one that does not is no proof. */
    private static Finding told(List<ScaleMark> lines) {
        long agree = lines.stream().filter(ScaleMark::agrees).count();
        if (2 * agree >= lines.size()) {
            return Finding.note(
                    "printed dimensions",
                    agree + " of " + lines.size()
                            + " dimensions that are printed at lines agree with what is drawn: the drawing is at true scale.");
        }
        double[] factors = lines.stream()
                .mapToDouble(l -> Math.max(l.right(), l.up()))
                .sorted()
                .toArray();
        double middle = factors[factors.length / 2];
        Optional<ScaleMark> typical = lines.stream()
                .filter(l -> Math.abs(Math.max(l.right(), l.up()) / middle - 1) < 0.005)
                .max(Comparator.comparingDouble(l -> Math.max(l.acrossMm(), l.upMm())));
        ScaleMark line = typical.orElse(lines.get(0));
        return Finding.warning(
                "printed dimensions",
                String.format(
                        Locale.ROOT,
                        "Of %d dimensions that are printed at lines only %d agree with what is drawn: \"%s\" is drawn %s. If that"
                                + " line is to measure what is printed, say --test-square \"%s\", and the whole drawing is scaled by"
                                + " it.",
                        lines.size(),
                        agree,
                        line.text(),
                        line.drawn(),
                        length(line)));
    }

    /** As it is typed: in inches where it is a whole number of sixteenths and no round number of mm. */
    private static String length(ScaleMark mark) {
        double mm = Math.max(mark.saidAcrossMm(), mark.saidUpMm());
        double sixteenths = mm / 25.4 * 16;
        boolean metric = Math.abs(mm - Math.rint(mm)) < 1e-6;
        boolean inches = !metric && Math.abs(sixteenths - Math.rint(sixteenths)) < 1e-6;
        return inches
                ? String.format(Locale.ROOT, "%s in", trimmed(mm / 25.4))
                : mm % 10 == 0 ? trimmed(mm / 10) + " cm" : trimmed(mm) + " mm";
    }

    private static String trimmed(double number) {
        String text = String.format(Locale.ROOT, "%.4f", number);
        return text.replaceAll("\\.?0+$", "");
    }

    private Drawing corrected(double mm) {
        if (!drawing.apparel().pieces().isEmpty()) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    "It names its pieces itself, in a unit; if that is wrong say --unit instead of --test-square.");
        }
        ScaleMark mark = meant(mm);
        double right = mark.acrossMm() > 0 ? mm / mark.acrossMm() : mm / mark.upMm();
        double up = mark.upMm() > 0 ? mm / mark.upMm() : right;
        Affine scale = new Affine(right, 0, 0, up, 0, 0);
        List<Stroke> strokes = drawing.strokes().stream()
                .map(s -> new Stroke(scale.apply(s.path()), s.look(), s.layer(), s.label()))
                .toList();
        List<Caption> captions = drawing.captions().stream()
                .map(c -> new Caption(c.text(), scale.apply(c.at()), c.heightMm() * up, c.layer(), c.colour()))
                .toList();
        List<Finding> findings = new ArrayList<>(drawing.findings());
        findings.add(Finding.note(
                PLACE,
                String.format(
                        Locale.ROOT,
                        "Scaled as you said: what is drawn %s%s measures %.2f mm now; the drawing was made %.2f %% as wide and"
                                + " %.2f %% as high.",
                        mark.drawn(),
                        mark.text().isEmpty() ? "" : " (\"" + mark.text() + "\")",
                        mm,
                        100 * right,
                        100 * up)));
        return new Drawing(drawing.file(), strokes, captions, findings);
    }

    /** What has that size printed at it; else the square nearest to it. */
    private ScaleMark meant(double mm) {
        Optional<ScaleMark> said = marks.stream()
                .filter(m -> Math.abs(Math.max(m.saidAcrossMm(), m.saidUpMm()) / mm - 1) < 1e-4)
                .min(Comparator.comparing((ScaleMark m) -> m.isSquare() ? 0 : 1)
                        .thenComparingDouble(m -> -Math.max(m.acrossMm(), m.upMm())));
        ScaleMark mark = said.orElseGet(() -> marks.stream()
                .filter(ScaleMark::isSquare)
                .min(Comparator.comparingDouble(m -> Math.abs(Math.log(mm / m.acrossMm()))))
                .orElseThrow(() -> new DrawingException(
                        drawing.file(),
                        "",
                        "There is no test square in it, and no line with that dimension, to scale it by; leave --test-square"
                                + " out, or say how long one unit of the drawing is with --unit.")));
        double factor = mm / Math.max(mark.acrossMm(), mark.upMm());
        if (!(1 / MOST <= factor && factor <= MOST)) {
            throw new DrawingException(
                    drawing.file(),
                    "",
                    String.format(
                            Locale.ROOT,
                            "The nearest square is drawn %s; to make it %.1f mm the drawing would be scaled by %.2f, which no"
                                    + " printer does. Measure that very square on the print, and say what it is to measure.",
                            mark.drawn(),
                            mm,
                            factor));
        }
        return mark;
    }
}
