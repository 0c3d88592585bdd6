package trueseam.output.drawing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of a finished file, looked at before they are printed. */
public final class PdfPages {

    private static final float POINTS_PER_INCH = 72;

    private PdfPages() {}

    /**
     * How many there are.
     *
     * @param pdf bytes of a PDF
     * @return its pages
     */
    public static int count(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException("The PDF cannot be read back.", e);
        }
    }

    /**
     * A picture of a page as it will come out of the printer.
     *
     * @param pdf bytes of a PDF
     * @param page counted from 1
     * @param longSidePixels how many pixels its longer side gets
     * @return bytes of a PNG
     * @throws IllegalArgumentException if there is no such page
     */
    public static byte[] png(byte[] pdf, int page, int longSidePixels) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            if (page < 1 || page > document.getNumberOfPages()) {
                throw new IllegalArgumentException(
                        "There is no page " + page + "; the file has 1 to " + document.getNumberOfPages() + ".");
            }
            PDRectangle paper = document.getPage(page - 1).getMediaBox();
            float perInch = longSidePixels * POINTS_PER_INCH / Math.max(paper.getWidth(), paper.getHeight());
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page - 1, perInch, ImageType.GRAY);
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("The page cannot be drawn.", e);
        }
    }
}
