package trueseam.output.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class PdfBookTest {

    private static final double DPI = 254; // ten pixels a mm

    private static byte[] sample() {
        PdfBook book = PdfBook.titled("A title", "For trying");
        Layer layer = book.layer("altered");
        Figure square = book.figure(
                new Bounds(0, 0, 20, 20), c -> c.fill(List.of(Shapes.rectangle(new Bounds(5, 5, 15, 15))), 0));
        Canvas page = book.page(100, 80);
        page.on(layer, c -> c.line(new Point(10, 10), new Point(90, 10), Pen.of(1)));
        page.show(square, new Point(20, 30));
        page.text(Fractions.set("off the fifth figure: 37 1/2 in, 3/16 in \u2192"), new Point(10, 70), Lettering.of(4));
        return book.finished();
    }

    private static boolean dark(BufferedImage image, double xMm, double yMm) {
        int x = (int) Math.round(xMm * 10 - 0.5);
        int y = image.getHeight() - 1 - (int) Math.round(yMm * 10 - 0.5);
        return (image.getRGB(x, y) & 255) < 128;
    }

    @Test
    void pagesHaveTheirSizeAndAskToBePrintedWithoutScaling() throws IOException {
        try (PDDocument read = Loader.loadPDF(sample())) {
            assertThat(read.getNumberOfPages()).isEqualTo(1);
            assertThat(read.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isCloseTo(100, within(1e-4));
            assertThat(read.getPage(0).getMediaBox().getHeight() * 25.4 / 72).isCloseTo(80, within(1e-4));
            PDViewerPreferences preferences = read.getDocumentCatalog().getViewerPreferences();
            assertThat(preferences.getPrintScaling()).isEqualTo("None");
            assertThat(read.getDocumentInformation().getTitle()).isEqualTo("A title");
            assertThat(read.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactly("altered");
        }
    }

    @Test
    void whatIsDrawnStandsWhereItWasDrawn() throws IOException {
        try (PDDocument read = Loader.loadPDF(sample())) {
            BufferedImage image = new PDFRenderer(read).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
            assertThat(image.getWidth()).isEqualTo(1000);
            assertThat(dark(image, 50, 10.25)).isTrue();
            assertThat(dark(image, 50, 9.75)).isTrue();
            assertThat(dark(image, 50, 10.75)).isFalse();
            assertThat(dark(image, 25.25, 35.25)).isTrue();
            assertThat(dark(image, 34.75, 44.75)).isTrue();
            assertThat(dark(image, 24.75, 36)).isFalse();
            assertThat(dark(image, 35.25, 36)).isFalse();
        }
    }

    @Test
    void aHiddenLayerIsNotDrawn() throws IOException {
        try (PDDocument read = Loader.loadPDF(sample())) {
            read.getDocumentCatalog().getOCProperties().setGroupEnabled("altered", false);
            BufferedImage image = new PDFRenderer(read).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
            assertThat(dark(image, 50, 10.25)).isFalse();
            assertThat(dark(image, 30, 40)).isTrue();
        }
    }

    @Test
    void textComesBackLetterByLetterAndItsFontIsAnEmbeddedSubset() throws IOException {
        byte[] pdf = sample();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(read).strip())
                    .isEqualTo("off the fifth figure: 37\u00bd in, \u00b3\u2044\u2081\u2086 in \u2192");
            var resources = read.getPage(0).getResources();
            PDFont font = resources.getFont(resources.getFontNames().iterator().next());
            assertThat(font.isEmbedded()).isTrue();
            assertThat(font.getName()).matches("[A-Z]{6}\\+LiberationSans");
        }
        assertThat(pdf.length).isLessThan(40_000);
    }

    @Test
    void theSameDrawingGivesTheSameFile() {
        assertThat(sample()).isEqualTo(sample());
    }

    @Test
    void lettersThatTheTypefaceLacksAreShownAsSquares() throws IOException {
        PdfBook book = PdfBook.titled("t", "s");
        book.page(50, 50).text("Zo\u00eb \ud83d\ude00\t\u4e2d", new Point(5, 5), Lettering.of(4));
        try (PDDocument read = Loader.loadPDF(book.finished())) {
            assertThat(new PDFTextStripper().getText(read).strip()).isEqualTo("Zo\u00eb \u25a1 \u25a1");
        }
    }

    @Test
    void widthIsThatOfTheTypefacesOwnTable() {
        // Liberation Sans has the widths of Helvetica: capital A 667, space 278, figures 556 of 1000
        // (Adobe Core 14 AFM files, Helvetica).
        Typeface face = PdfBook.titled("t", "s").typeface();
        assertThat(face.widthOf("A", Lettering.of(10))).isCloseTo(6.67, within(0.005));
        assertThat(face.widthOf("A 12", Lettering.of(10))).isCloseTo(6.67 + 2.78 + 2 * 5.56, within(0.01));
    }

    @Test
    void linesAreBrokenToTheRoom() {
        Typeface face = PdfBook.titled("t", "s").typeface();
        Lettering small = Lettering.of(3);
        List<String> lines = face.wrapped("measure both squares before you cut", small, 25);
        assertThat(String.join(" ", lines)).isEqualTo("measure both squares before you cut");
        assertThat(lines).allSatisfy(l -> assertThat(face.widthOf(l, small)).isLessThanOrEqualTo(25));
        assertThat(String.join("", face.wrapped("unbreakable", small, 6))).isEqualTo("unbreakable");
        Lettering fitted = face.fitted("a long line of words", Lettering.of(5), 20, 1);
        assertThat(face.widthOf("a long line of words", fitted)).isCloseTo(20, within(1e-9));
    }

    @Test
    void aViewScalesTheDrawingAndNotThePen() throws IOException {
        PdfBook book = PdfBook.titled("t", "s");
        Canvas view = book.page(100, 100).fitting(new Bounds(0, 0, 400, 200), new Bounds(10, 10, 90, 90));
        assertThat(view.scale()).isCloseTo(0.2, within(1e-12));
        view.stroke(Path.through(new Point(0, 100), new Point(400, 100)), Pen.of(1));
        try (PDDocument read = Loader.loadPDF(book.finished())) {
            BufferedImage image = new PDFRenderer(read).renderImageWithDPI(0, (float) DPI, ImageType.GRAY);
            assertThat(dark(image, 10.25, 50.25)).isTrue();
            assertThat(dark(image, 89.75, 49.75)).isTrue();
            assertThat(dark(image, 9.75, 50)).isFalse();
            assertThat(dark(image, 50, 50.75)).isFalse();
        }
    }

    @Test
    void aPageBeyondTheLimitOfTheFormatIsRefused() {
        assertThatThrownBy(() -> PdfBook.titled("t", "s").page(100, 5081))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("5080");
    }
}
