package trueseam.checks.tiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;

/** Pages of other kinds among the tiles. Demo garments: drafted, their figures invented. */
class MixedPagesTest {

    private static final float POINT = 72 / 25.4f;

    private static final TileStyle LABELLED = new TileStyle(
            "labels",
            210,
            297,
            10,
            0,
            true,
            TileStyle.Marks.NONE,
            TileStyle.Label.LETTER_ROW,
            true,
            true,
            false,
            false,
            0);

    private interface Change {
        void of(PDDocument document) throws IOException;
    }

    private static byte[] with(byte[] pdf, Change change) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            change.of(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static void first(PDDocument document, PDPage page) {
        document.getPages().insertBefore(page, document.getPage(0));
    }

    private static void draw(PDPageContentStream content, List<Stroke> lines, float factor) throws IOException {
        Bounds all = Drawn.bounds(lines);
        for (Stroke line : lines) {
            Path path = line.path();
            float f = factor * POINT;
            content.setLineWidth((float) line.look().widthMm() * POINT);
            content.moveTo(
                    (float) (path.start().x() - all.minX() + 30) * f,
                    (float) (path.start().y() - all.minY() + 30) * f);
            for (Segment s : path.segments()) {
                content.lineTo(
                        (float) (s.end().x() - all.minX() + 30) * f,
                        (float) (s.end().y() - all.minY() + 30) * f);
            }
            content.stroke();
        }
    }

    private static List<Stroke> trousers() {
        return Drawn.lines(TiledPrintsTest.garment("trousers", "14"));
    }

    @ParameterizedTest
    @EnumSource(
            value = TileStyle.Label.class,
            names = {"NONE", "LETTER_ROW"})
    void anOverviewInAFrameLikeTheOthersIsLeftOut(TileStyle.Label label) throws IOException {
        List<Stroke> lines = trousers();
        TileStyle style = new TileStyle(
                "frames", 210, 297, 10, 0, true, TileStyle.Marks.HALF_DIAMONDS, label, true, true, false, false, 0);
        byte[] pdf = with(TiledPrint.of(style, lines), document -> {
            PDPage page = new PDPage(new PDRectangle(210 * POINT, 297 * POINT));
            first(document, page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.setStrokingColor(java.awt.Color.GRAY);
                content.setLineWidth(0.2f * POINT);
                content.addRect(10 * POINT, 10 * POINT, 190 * POINT, 277 * POINT);
                content.stroke();
                content.setStrokingColor(java.awt.Color.BLACK);
                draw(content, lines, 0.15f);
            }
        });
        Drawing drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        assertThat(drawing.findings())
                .anyMatch(f -> f.place().equals("page 1") && f.sentence().contains("overview"));
        TiledPrintsTest.sameLines(drawing.strokes(), lines);
    }

    @Test
    void wordsAndPicturesAmongThePagesAreLeftOut() throws IOException {
        List<Stroke> lines = trousers();
        byte[] pdf = with(TiledPrint.of(LABELLED, lines), document -> {
            PDPage words = new PDPage(new PDRectangle(210 * POINT, 297 * POINT));
            PDPage picture = new PDPage(new PDRectangle(210 * POINT, 297 * POINT));
            first(document, picture);
            first(document, words);
            try (PDPageContentStream content = new PDPageContentStream(document, words)) {
                content.beginText();
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
                content.newLineAtOffset(72, 500);
                content.showText("Sew the side seams first.");
                content.endText();
            }
            try (PDPageContentStream content = new PDPageContentStream(document, picture)) {
                content.drawImage(
                        LosslessFactory.createFromImage(document, new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB)),
                        0,
                        0,
                        500,
                        500);
            }
        });
        Drawing drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        assertThat(drawing.findings())
                .anyMatch(f -> f.place().equals("page 1") && f.sentence().contains("words only"));
        assertThat(drawing.findings())
                .anyMatch(f -> f.place().equals("page 2") && f.sentence().contains("pictures"));
        TiledPrintsTest.sameLines(drawing.strokes(), lines);
    }

    @Test
    void theSheetForTheCopyShopIsTakenAlone() throws IOException {
        List<Stroke> lines = trousers();
        byte[] pdf = with(TiledPrint.of(LABELLED, lines), document -> {
            PDPage sheet = new PDPage(new PDRectangle(1189 * POINT, 1500 * POINT));
            document.addPage(sheet);
            try (PDPageContentStream content = new PDPageContentStream(document, sheet)) {
                draw(content, lines, 1);
            }
        });
        Drawing drawing = DrawingFiles.read("print.pdf", pdf, ReadChoices.NONE);
        assertThat(drawing.findings()).anyMatch(f -> f.sentence().contains("The sheet is 1189 by 1500 mm"));
        assertThat(drawing.findings()).anyMatch(f -> f.sentence().contains("another size than the sheet taken"));
        assertThat(drawing.strokes()).hasSameSizeAs(lines);
    }
}
