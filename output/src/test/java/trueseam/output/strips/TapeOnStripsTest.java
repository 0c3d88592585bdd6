package trueseam.output.strips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.print.CuttingLine;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;
import trueseam.output.print.Scan;
import trueseam.output.print.Words;

class TapeOnStripsTest {

    private static final FitResult FIT = Fits.fit(LengthFormat.inches(8));

    private static PrintOptions on(Paper paper) {
        return PrintOptions.usual(paper, LengthFormat.inches(8), "Anna");
    }

    @Test
    void stripsTogetherAreWhereTheOldAndTheNewCuttingLinesDiffer() {
        List<Cutting.Strip> strips = Cutting.toFit(TapeOnStrips.slivers(FIT), 176, 271);
        double differ = 0;
        double gained = 0;
        for (AlteredPiece piece : FIT.worked().pieces()) {
            Region before = Region.within(CuttingLine.of(piece.original()), 0.01);
            Region after = Region.within(CuttingLine.of(piece.now()), 0.01);
            differ += before.symmetricDifference(after).areaMm2();
            // Green's theorem on the curves themselves, with no overlay and no chords.
            gained += CuttingLine.of(piece.now()).signedArea()
                    - CuttingLine.of(piece.original()).signedArea();
        }
        double added = strips.stream()
                .filter(s -> s.sliver().added())
                .mapToDouble(s -> s.sliver().area().areaMm2())
                .sum();
        double away = strips.stream()
                .filter(s -> !s.sliver().added())
                .mapToDouble(s -> s.sliver().area().areaMm2())
                .sum();
        assertThat(differ).isGreaterThan(1000);
        assertThat(added + away).isCloseTo(differ, within(differ * 0.01));
        assertThat(added - away).isCloseTo(gained, within(differ * 0.01));
        assertThat(strips).allMatch(s -> s.bounds().width() <= 176 && s.bounds().height() <= 271);
    }

    @Test
    void theTestSquareMeasuresFiftyMillimetres() throws IOException {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            try (PDDocument read = Loader.loadPDF(TapeOnStrips.pdf(FIT, on(paper)))) {
                Point words = Words.of(read, 0).stream()
                        .filter(w -> w.text().equals("50 mm"))
                        .findFirst()
                        .orElseThrow()
                        .at();
                Bounds around = new Bounds(words.x(), words.y(), words.x(), words.y()).grown(45);
                Scan scan = Scan.of(read, 0, around, 600);
                Point from = words.plus(new Vec(5, 12));
                double across = scan.firstLine(from, new Vec(-1, 0), 42) + scan.firstLine(from, new Vec(1, 0), 42);
                assertThat(across).isCloseTo(50, within(0.05));
            }
        }
    }

    @Test
    void thePrintSaysWhatToDoWithEachStrip() {
        byte[] pdf = TapeOnStrips.pdf(FIT, on(Paper.A4));
        assertThat(PdfText.of(pdf)).contains("50 mm", "2 in", "trial garment", "flame safety");
        // The reader finds blanks between the letters of upright lines, so all blanks are left out.
        assertThat(PdfText.of(pdf).replace(" ", ""))
                .contains("bodicefront,side:tapeon,dashedlinetotheoldcuttingline")
                .contains("join1");
        assertThat(TapeOnStrips.pdf(FIT, on(Paper.A0))).isEqualTo(pdf);
    }

    @Test
    void aPatternThatStaysGivesOnePageThatSaysSo() {
        FitResult same = with(WorkedPattern.of(FIT.worked().original()));
        byte[] pdf = TapeOnStrips.pdf(same, on(Paper.LETTER));
        assertThat(PdfText.pages(pdf)).isEqualTo(1);
        assertThat(PdfText.of(pdf)).contains("Nothing changes");
    }

    @Test
    void draftedPiecesThatOnlyShowTheStepsGiveNoStrips() {
        byte[] pdf = TapeOnStrips.pdf(Fits.onPaper(LengthFormat.inches(8)), on(Paper.A4));
        assertThat(PdfText.pages(pdf)).isEqualTo(1);
        assertThat(PdfText.of(pdf)).contains("no digital pattern");
    }

    private static FitResult with(WorkedPattern worked) {
        return new FitResult(
                FIT.body(),
                FIT.kind(),
                FIT.size(),
                FIT.choices(),
                FIT.needs(),
                FIT.changes(),
                FIT.amounts(),
                worked,
                FIT.report(),
                FIT.findings(),
                FIT.schematic());
    }
}
