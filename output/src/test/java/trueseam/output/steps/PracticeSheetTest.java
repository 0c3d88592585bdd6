package trueseam.output.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.words.MeasureWords;

/** Practice in quarter scale, measured on the rendered page. */
class PracticeSheetTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);

    /** Ten pixels a millimetre. */
    private static final int DPI = 254;

    private static final FitResult FIT = Fits.fit(INCHES);

    private static List<Chapter> toPractise() {
        return FIT.worked().chapters().stream()
                .filter(chapter -> !chapter.truing())
                .toList();
    }

    private static BufferedImage page(byte[] pdf, int page) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return new PDFRenderer(read).renderImageWithDPI(page, DPI, ImageType.GRAY);
        }
    }

    /** Where upright lines of at least so many pixels stand in the top of the page, in mm from the left edge of the paper. */
    private static List<Double> uprightLines(BufferedImage page, int atLeast, int highPixels) {
        List<Double> lines = new ArrayList<>();
        int from = -1;
        for (int x = 0; x < page.getWidth(); x++) {
            int column = x;
            boolean line = longestRun(highPixels, y -> ink(page, column, y) < 120) >= atLeast;
            if (line && from < 0) {
                from = x;
            } else if (!line && from >= 0) {
                lines.add((from + x - 1) / 20.0);
                from = -1;
            }
        }
        return lines;
    }

    private static int ink(BufferedImage page, int x, int y) {
        return page.getRaster().getSample(x, y, 0);
    }

    private static int longestRun(int length, IntPredicate inked) {
        int longest = 0;
        int run = 0;
        for (int i = 0; i < length; i++) {
            run = inked.test(i) ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /** The gray of the paper pattern, 0.93, with gray all round it: the edge of a letter is a pixel wide. */
    private static boolean isGray(BufferedImage page, int x, int y) {
        for (int dx = -3; dx <= 3; dx += 3) {
            for (int dy = -3; dy <= 3; dy += 3) {
                int u = Math.min(Math.max(0, x + dx), page.getWidth() - 1);
                int v = Math.min(Math.max(0, y + dy), page.getHeight() - 1);
                if (Math.abs(ink(page, u, v) - 237) > 2) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How far the gray reaches, in mm. */
    private static double extent(int across, int along, IntBinaryPredicate gray) {
        List<Integer> found = IntStream.range(0, across)
                .filter(i -> longestRun(along, j -> gray.test(i, j)) >= 1)
                .boxed()
                .toList();
        return (found.get(found.size() - 1) - found.get(0) + 1) / 10.0;
    }

    private interface IntBinaryPredicate {
        boolean test(int i, int j);
    }

    @Test
    void theTestSquaresAreAQuarterOfTwoInchesAndOfFiftyMillimetres() throws IOException {
        // An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
        BufferedImage first = page(PracticeSheet.forStudent(FIT, SheetPaper.A4, 1, 1), 0);
        List<Double> sides = uprightLines(first, 115, 500);
        assertThat(sides).hasSize(6); // of two squares and of the ruler
        assertThat(sides.get(1) - sides.get(0)).isCloseTo(2 * 25.4 / 4, within(0.11));
        assertThat(sides.get(3) - sides.get(2)).isCloseTo(50 / 4.0, within(0.11));
        assertThat(sides.get(5) - sides.get(4)).isCloseTo(16 * 25.4 / 4, within(0.11));
    }

    @Test
    void aPieceIsAQuarterOfItsSize() throws IOException {
        byte[] pdf = PracticeSheet.forStudent(FIT, SheetPaper.A4, 1, 1);
        int measured = 0;
        for (int at = 0; at < PdfText.pages(pdf); at++) {
            String text = PdfText.of(pdf, at);
            List<Chapter> here = toPractise().stream()
                    .filter(chapter -> text.contains(heading(chapter)))
                    .toList();
            if (here.size() == 1 && !text.contains("join here")) {
                BufferedImage page = page(pdf, at);
                Bounds outline = here.get(0).before().outline().bounds();
                double wide = extent(page.getWidth(), page.getHeight(), (x, y) -> isGray(page, x, y));
                double high = extent(page.getHeight(), page.getWidth(), (y, x) -> isGray(page, x, y));
                // Three pixels at each edge do not count, nor does half of a line that lies on it; corners are a little
                // short.
                assertThat(wide).isCloseTo(outline.width() / 4 - 0.8, within(0.6));
                // The highest and lowest points are corners, whose tips are too narrow to count.
                assertThat(high).isBetween(outline.height() / 4 - 3, outline.height() / 4);
                measured++;
            }
        }
        assertThat(measured).isPositive();
    }

    private static String heading(Chapter chapter) {
        return MeasureWords.capital(chapter.before().name()) + ": " + chapter.title();
    }

    @Test
    void everyStepIsThereAndOnlyTheTeachersCopyIsWorked() {
        String student = PdfText.of(PracticeSheet.forStudent(FIT, SheetPaper.LETTER, 3, 12));
        String teacher = PdfText.of(PracticeSheet.forTeacher(FIT, SheetPaper.LETTER));
        assertThat(toPractise()).isNotEmpty();
        for (Chapter chapter : toPractise()) {
            assertThat(student).contains(chapter.title());
            for (String words : StepWords.of(chapter.before(), chapter.steps(), INCHES)) {
                assertThat(student).contains(words);
                assertThat(teacher).contains(words);
            }
        }
        assertThat(student).contains("student 3 of 12", "Name: ____", "__________");
        assertThat(teacher).contains("the teacher's copy, worked").doesNotContain("_____");
        FIT.needs().stream()
                .filter(need -> need.decision().isAltered())
                .map(need -> INCHES.showSigned(need.needMm()))
                .forEach(need -> assertThat(teacher).contains(need));
    }
}
