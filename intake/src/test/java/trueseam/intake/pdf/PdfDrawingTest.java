package trueseam.intake.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.tiles.TileChoices;

/** Lines out of PDF pages, written by the reference library and read back by ours. */
class PdfDrawingTest {

    private interface Drawn {
        void on(PDDocument document, PDPageContentStream page) throws IOException;
    }

    private static byte[] pdf(int pages, float userUnit, Drawn drawn) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                PDPage page = new PDPage(new PDRectangle(2000, 2000));
                page.setUserUnit(userUnit);
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    drawn.on(document, content);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static Drawing read(String file, byte[] content, int page) {
        return PdfDrawing.read(file, content, page, TileChoices.NONE).drawing();
    }

    @Test
    void linesAndCurvesKeepLengthLookAndLayerUnderNestedTransforms() throws IOException {
        byte[] content = pdf(1, 1, (document, page) -> {
            page.beginMarkedContent(COSName.OC, new PDOptionalContentGroup("size 14"));
            page.transform(Matrix.getTranslateInstance(100, 200));
            page.transform(Matrix.getScaleInstance(2, 2));
            page.setStrokingColor(Color.RED);
            page.setLineWidth(0.5f);
            page.setLineDashPattern(new float[] {3, 1}, 0);
            page.moveTo(0, 0);
            page.lineTo(36, 0);
            page.curveTo(36, 20, 20, 36, 0, 36);
            page.closePath();
            page.stroke();
            page.endMarkedContent();
        });
        Drawing drawing = read("sheet.pdf", content, 0);
        Stroke stroke = drawing.strokes().get(0);
        // ISO 32000-1: 72 units to an inch; doubled: 36 units are an inch.
        assertThat(stroke.path().segments().get(0).length()).isCloseTo(25.4, within(1e-3));
        assertThat(stroke.path().isClosed()).isTrue();
        assertThat(stroke.path().start().x()).isCloseTo(100 * 25.4 / 72, within(1e-3));
        assertThat(stroke.look().colour()).isEqualTo("#ff0000");
        assertThat(stroke.look().dashMm()).containsExactly(2.117, 0.706);
        assertThat(stroke.layer()).isEqualTo("size 14");
    }

    @Test
    void aPageMaySayThatItsUnitsAreLarger() throws IOException {
        byte[] content = pdf(1, 10, (document, page) -> {
            page.moveTo(0, 0);
            page.lineTo(72, 0);
            page.stroke();
        });
        assertThat(read("sheet.pdf", content, 0).strokes().get(0).path().length())
                .isCloseTo(254, within(1e-2));
    }

    @Test
    void wordsAreReadWithTheirPlace() throws IOException {
        byte[] content = pdf(1, 1, (document, page) -> {
            page.addRect(0, 0, 100, 100);
            page.stroke();
            page.beginText();
            page.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
            page.newLineAtOffset(72, 144);
            page.showText("skirt front cut 1 on fold");
            page.endText();
        });
        var caption = read("sheet.pdf", content, 0).captions().get(0);
        assertThat(caption.text()).isEqualTo("skirt front cut 1 on fold");
        assertThat(caption.at().x()).isCloseTo(25.4, within(1e-2));
        assertThat(caption.at().y()).isCloseTo(50.8, within(1e-2));
    }

    @Test
    void onePageOfSeveralCanBeChosen() throws IOException {
        byte[] content = pdf(3, 1, (document, page) -> {
            page.addRect(0, 0, 100, 100);
            page.stroke();
        });
        assertThat(read("book.pdf", content, 2).strokes()).hasSize(1);
        assertThatThrownBy(() -> read("book.pdf", content, 4)).hasMessageContaining("no page 4");
        assertThatThrownBy(() -> read("book.pdf", content, 0))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("all alike")
                .hasMessageContaining("--page");
    }

    @Test
    void layersNestAndMayStandAtFormsAndNameSeveralGroups() throws IOException {
        byte[] content = pdf(1, 1, (document, page) -> {
            PDOptionalContentGroup size = new PDOptionalContentGroup("size 14");
            PDOptionalContentGroup front = new PDOptionalContentGroup("front");
            page.beginMarkedContent(COSName.OC, size);
            page.beginMarkedContent(COSName.getPDFName("Span"));
            page.beginMarkedContent(COSName.OC, front);
            line(page, 10);
            page.endMarkedContent();
            page.endMarkedContent();
            page.endMarkedContent();
            PDFormXObject form = new PDFormXObject(document);
            form.setBBox(new PDRectangle(2000, 2000));
            form.setResources(new PDResources());
            form.setOptionalContent(front);
            try (OutputStream out = form.getContentStream().createOutputStream()) {
                out.write("0 30 m 100 30 l S".getBytes(StandardCharsets.US_ASCII));
            }
            page.drawForm(form);
            PDOptionalContentMembershipDictionary both = new PDOptionalContentMembershipDictionary();
            both.setOCGs(List.of(size, front));
            page.beginMarkedContent(COSName.OC, both);
            line(page, 50);
            page.endMarkedContent();
            line(page, 70);
        });
        assertThat(read("sheet.pdf", content, 0).strokes().stream().map(Stroke::layer))
                .containsExactly("size 14/front", "front", "size 14+front", "");
    }

    @Test
    void aLayerThatIsSwitchedOffIsReadAndTold() throws IOException {
        byte[] content = pdf(1, 1, (document, page) -> {
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            PDOptionalContentGroup off = new PDOptionalContentGroup("size 16");
            layers.addGroup(off);
            layers.setGroupEnabled(off, false);
            document.getDocumentCatalog().setOCProperties(layers);
            page.beginMarkedContent(COSName.OC, off);
            line(page, 10);
            page.endMarkedContent();
            line(page, 20);
        });
        Drawing drawing = read("sheet.pdf", content, 0);
        assertThat(drawing.strokes()).hasSize(2);
        assertThat(drawing.findings())
                .anyMatch(f -> f.place().equals("layers") && f.sentence().contains("size 16"));
    }

    private static void line(PDPageContentStream page, float y) throws IOException {
        page.moveTo(0, y);
        page.lineTo(100, y);
        page.stroke();
    }

    @Test
    void aTurnedPageIsReadAsItIsLookedAt() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page =
                    new PDPage(new PDRectangle(72, 720, 720, 1440)); // 10 by 20 in, its corner 1 in right and 10 in up
            page.setRotation(90);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.moveTo(72, 720);
                content.lineTo(72, 720 + 144);
                content.stroke();
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            var path = read("turned.pdf", out.toByteArray(), 0).strokes().get(0).path();
            // ISO 32000-1, 7.7.3.3: turned clockwise, the lower left corner comes to the upper left; up becomes right.
            assertThat(path.start().x()).isCloseTo(0, within(1e-3));
            assertThat(path.start().y()).isCloseTo(254, within(1e-3));
            assertThat(path.end().x()).isCloseTo(50.8, within(1e-3));
            assertThat(path.end().y()).isCloseTo(254, within(1e-3));
        }
    }

    @Test
    void wordsThatAreSetLetterByLetterAreOneCaption() throws IOException {
        byte[] content = pdf(1, 1, (document, page) -> {
            line(page, 10);
            page.beginText();
            page.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
            page.newLineAtOffset(72, 144);
            page.showTextWithPositioning(new Object[] {"5", -40f, " c", 20f, "m"});
            page.newLineAtOffset(300, 0);
            page.showText("another");
            page.endText();
        });
        assertThat(read("sheet.pdf", content, 0).captions().stream().map(Caption::text))
                .containsExactly("5 cm", "another");
    }

    @Test
    void pagesThatAreAllPicturesAreRefusedWithAdvice() throws IOException {
        byte[] content = pdf(
                4,
                1,
                (document, page) -> page.drawImage(
                        LosslessFactory.createFromImage(document, new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB)),
                        0,
                        0,
                        500,
                        500));
        assertThatThrownBy(() -> read("scans.pdf", content, 0))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("4 of its 4 pages are pictures")
                .hasMessageContaining("--paper-only");
    }

    @Test
    void aScanIsRecognisedAndRefusedWithAdvice() throws IOException {
        byte[] content = pdf(
                1,
                1,
                (document, page) -> page.drawImage(
                        LosslessFactory.createFromImage(document, new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB)),
                        0,
                        0,
                        500,
                        500));
        assertThatThrownBy(() -> read("scan.pdf", content, 0))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("picture")
                .hasMessageContaining("--paper-only");
    }

    @Test
    void aPasswordIsSaidInOneSentence() throws IOException {
        byte[] content;
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            content = out.toByteArray();
        }
        byte[] locked = content;
        assertThatThrownBy(() -> read("locked.pdf", locked, 0))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("password");
    }

    @Test
    void twoHundredBrokenFilesEndInASentenceOrADrawing() throws IOException {
        byte[] whole = pdf(1, 1, (document, page) -> {
            for (int i = 0; i < 30; i++) {
                page.addRect(i * 10, i * 5, 100, 100);
                page.stroke();
            }
        });
        Random random = new Random(5);
        int read = 0;
        for (int i = 0; i < 200; i++) {
            byte[] broken = i % 4 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            for (int k = 0; k < random.nextInt(12) && broken.length > 0; k++) {
                broken[random.nextInt(broken.length)] ^= (byte) (1 << random.nextInt(8));
            }
            try {
                assertThat(read("broken.pdf", broken, 0).strokes()).isNotEmpty();
                read++;
            } catch (DrawingException e) {
                assertThat(e.getMessage()).startsWith("broken.pdf").doesNotContain("\n");
            }
        }
        assertThat(read).as("files that could be read all the same").isPositive();
    }
}
