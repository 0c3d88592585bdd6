package trueseam.output.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.work.Chapter;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.drawing.PdfBook;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.words.RulerLength;

class StepSheetTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);
    private static final int NOT_WHITE = 250;
    private static final int DARK = 180;

    @ParameterizedTest
    @EnumSource(SheetPaper.class)
    void everyStepIsOnTheSheetInItsWords(SheetPaper paper) {
        FitResult fit = Fits.fit(INCHES);
        String text = PdfText.of(StepSheet.pdf(fit, paper));
        assertThat(fit.worked().chapters()).isNotEmpty();
        for (Chapter chapter : fit.worked().chapters()) {
            for (String words : StepWords.of(chapter.before(), chapter.steps(), INCHES)) {
                assertThat(text).contains(words);
            }
            assertThat(text).contains(chapter.title());
        }
    }

    @Test
    void symbolsAreExplainedAndCautionsStandAtTheFootOfEveryPage() {
        byte[] pdf = StepSheet.pdf(Fits.fit(INCHES), SheetPaper.A4);
        String text = PdfText.of(pdf);
        assertThat(text).contains("the pin", "traced after moving the pattern", "drawn new, to join");
        assertThat(text.split("measure the test square of the full-size print", -1))
                .hasSize(PdfText.pages(pdf) + 1);
        assertThat(text).contains("sew a trial garment first", "flame safety: follow your local rules");
        assertThat(text).doesNotContain("schematic");
    }

    @Test
    void schematicDrawingsSaySo() {
        assertThat(PdfText.of(StepSheet.pdf(Fits.onPaper(INCHES), SheetPaper.LETTER)))
                .contains("The drawings are schematic");
    }

    @Test
    void thePagesAreThoseOfThePaper() throws IOException {
        try (PDDocument read = Loader.loadPDF(StepSheet.pdf(Fits.fit(INCHES), SheetPaper.LETTER))) {
            // US Letter is 8 1/2 by 11 in, 612 by 792 points (ANSI/ASME Y14.1, size A).
            assertThat(read.getPage(0).getMediaBox().getWidth()).isEqualTo(792f);
            assertThat(read.getPage(0).getMediaBox().getHeight()).isEqualTo(612f);
        }
    }

    /** Each picture on a page of its own: the outline alone is longer than the page is wide, so a good part of it is inked. */
    @Test
    void noPictureIsBlankAndNoneRunsOutOfItsFrame() throws IOException {
        List<Chapter> chapters = new ArrayList<>(Fits.fit(INCHES).worked().chapters());
        chapters.addAll(Fits.trousers(INCHES).worked().chapters());
        double margin = 4;
        Bounds room = new Bounds(margin, margin, margin + 65, margin + 48);
        List<String> drawn = new ArrayList<>();
        PdfBook book = PdfBook.titled("pictures", "for a test");
        for (Chapter chapter : chapters) {
            List<StepCell> cells = StepCell.of(chapter, INCHES, 2);
            CellDrawing drawing = new CellDrawing(chapter.before(), chapter.steps(), cells, new RulerLength(INCHES));
            for (StepCell cell : cells) {
                drawing.draw(book.page(room.maxX() + margin, room.maxY() + margin), room, cell);
                drawn.add(chapter.before().name() + ", " + cell.caption());
            }
        }
        try (PDDocument read = Loader.loadPDF(book.finished())) {
            PDFRenderer renderer = new PDFRenderer(read);
            for (int i = 0; i < drawn.size(); i++) {
                BufferedImage image = renderer.renderImageWithDPI(i, 101.6f, ImageType.GRAY); // 4 pixels a mm
                // The pattern's grey paper covers a good part (a leg is 8 by 40 mm, 5,000 pixels), and lines or marks
                // lie on it.
                assertThat(below(NOT_WHITE, image, 4 * (int) margin))
                        .as(drawn.get(i))
                        .isGreaterThan(3000);
                assertThat(dark(image, 4 * (int) margin)).as(drawn.get(i)).isGreaterThan(40);
                assertThat(dark(image, 0) - dark(image, 4 * (int) margin - 2))
                        .as("outside of " + drawn.get(i))
                        .isZero();
            }
        }
        assertThat(drawn).hasSizeGreaterThan(60);
    }

    private static int dark(BufferedImage image, int marginPixels) {
        return below(DARK, image, marginPixels);
    }

    private static int below(int gray, BufferedImage image, int marginPixels) {
        int count = 0;
        for (int x = marginPixels; x < image.getWidth() - marginPixels; x++) {
            for (int y = marginPixels; y < image.getHeight() - marginPixels; y++) {
                if ((image.getRGB(x, y) & 255) < gray) {
                    count++;
                }
            }
        }
        return count;
    }

    @Test
    void stepsSharePicturesOnlyWherePicturesStayReadable() {
        for (Chapter chapter : Fits.fit(INCHES).worked().chapters()) {
            List<StepCell> cells = StepCell.of(chapter, INCHES, 2);
            int steps = 0;
            for (StepCell cell : cells) {
                assertThat(cell.first()).isEqualTo(steps + 1);
                assertThat(cell.frames()).hasSizeBetween(1, 2);
                steps += cell.frames().size();
            }
            assertThat(steps).isEqualTo(chapter.steps().size());
        }
    }
}
