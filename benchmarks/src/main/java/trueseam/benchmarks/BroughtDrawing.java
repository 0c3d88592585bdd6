package trueseam.benchmarks;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.size.SizeTables;
import trueseam.intake.svg.SvgDrawing;

/**
 * How long does it take to make a pattern of an SVG drawing, from its text to named pieces, on one thread? The design allows 0.5 s for 2,000
 * segments.
 *
 * <p>The drawing has the three pieces of a bodice in misses' size 14, their stitching lines cut into straight segments of one length, either as
 * one line round each piece or as so many loose lines that have to be put together first. Read the numbers as milliseconds for the whole drawing.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class BroughtDrawing {

    private static final double BESIDE_MM = 600;

    /** How many segments all outlines have together. */
    @Param({"500", "2000", "8000"})
    private int segments;

    /** Whether every segment is a line of its own. */
    @Param({"false", "true"})
    private boolean loose;

    private String text = "";

    /** For the harness. */
    public BroughtDrawing() {}

    /** Draws the drawing and looks that three pieces come of it. */
    @Setup
    public void draw() {
        Pattern bodice = Garment.bodice.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
        double around = bodice.pieces().stream()
                .mapToDouble(piece -> piece.outline().length())
                .sum();
        StringBuilder lines = new StringBuilder();
        double right = 0;
        for (Piece piece : bodice.pieces()) {
            Path outline = piece.outline();
            lines(lines, outline, (int) Math.round(segments * outline.length() / around), right);
            right += BESIDE_MM;
        }
        text = "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='1500mm' viewBox='0 -1000 2000 1500'>"
                + lines + "</svg>";
        if (broughtIn().pattern().pieces().size() != bodice.pieces().size()) {
            throw new IllegalStateException("the drawing does not come back as its pieces");
        }
    }

    private void lines(StringBuilder lines, Path outline, int count, double right) {
        StringBuilder data = new StringBuilder();
        for (int i = 0; i <= count; i++) {
            Point p = outline.pointAt(i % count * outline.length() / count);
            String at = String.format(Locale.ROOT, "%.4f %.4f", p.x() + right, -p.y());
            if (loose && i > 0) {
                data.append('L')
                        .append(at)
                        .append("'/><path fill='none' stroke='black' d='M")
                        .append(at);
            } else {
                data.append(i == 0 ? "M" : "L").append(at);
            }
        }
        lines.append("<path fill='none' stroke='black' d='").append(data).append("'/>");
    }

    /**
     * From the text to the pattern.
     *
     * @return the pattern and what was guessed
     */
    @Benchmark
    public Brought broughtIn() {
        return Bringing.of(SvgDrawing.read("drawing.svg", text, OptionalDouble.empty()), BringChoices.usual(15.875));
    }
}
