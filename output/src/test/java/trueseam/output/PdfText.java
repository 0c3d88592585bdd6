package trueseam.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What can be read on the pages of a PDF. */
public final class PdfText {

    private PdfText() {}

    /** All text, every run of blanks and line ends as one blank. */
    public static String of(byte[] pdf) {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            // Columns are read one after another as they were set.
            stripper.setSortByPosition(false);
            return stripper.getText(read).replaceAll("[\\s\\u00a0]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static int pages(byte[] pdf) {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return read.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is written on one page, from 0. */
    public static String of(byte[] pdf, int page) {
        try (PDDocument read = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
            return stripper.getText(read).replaceAll("[\\s\\u00a0]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
