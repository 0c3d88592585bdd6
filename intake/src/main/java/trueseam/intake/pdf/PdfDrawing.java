package trueseam.intake.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;

/** Reads one page of a PDF file as a drawing. */
public final class PdfDrawing {

    private PdfDrawing() {}

    /**
     * Reads a page.
     *
     * @param file what the file is called, for messages
     * @param content the file
     * @param page which page, 1 for the first; 0 where the file is to have just one
     * @return the drawing, mm, y up
     * @throws DrawingException if it is no PDF, needs a password, has no such page, or the page is a picture
     */
    public static Drawing read(String file, byte[] content, int page) {
        try (PDDocument document = Loader.loadPDF(content)) {
            int pages = document.getNumberOfPages();
            if (page == 0 && pages != 1) {
                throw new DrawingException(
                        file,
                        "",
                        "It has " + pages
                                + " pages; name the one with the whole pattern (the sheet for a copy shop) with --page."
                                + " Pages that were meant to be taped together are not put together yet.");
            }
            int wanted = Math.max(1, page);
            if (wanted > pages) {
                throw new DrawingException(file, "", "It has " + pages + " pages and no page " + page + ".");
            }
            return read(file, page(file, document, wanted), wanted);
        } catch (org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException e) {
            throw new DrawingException(file, "", "It needs a password; save it without one, if its maker allows that.");
        } catch (IOException e) {
            throw new DrawingException(
                    file,
                    "",
                    "This is no PDF that can be read: it may be cut short. Open it in a viewer and save it again.");
        }
    }

    /** The library finds out about a broken list of pages only when it looks for one, each time with another exception. */
    private static PDPage page(String file, PDDocument document, int number) {
        try {
            return document.getPage(number - 1);
        } catch (RuntimeException e) {
            throw new DrawingException(
                    file, "page " + number, "The page cannot be found in it; open it in a viewer and save it again.");
        }
    }

    private static Drawing read(String file, PDPage page, int number) throws IOException {
        PageLines lines = new PageLines(page);
        try {
            lines.processPage(page);
        } catch (PageLines.TooManyLinesException e) {
            throw new DrawingException(
                    file, "page " + number, "It has more lines than any pattern; choose another page.");
        } catch (GeometryException e) {
            throw new DrawingException(file, "page " + number, "A line leads off the paper: " + e.getMessage());
        } catch (IOException | RuntimeException e) {
            if (lines.strokes().isEmpty()) {
                throw new DrawingException(
                        file,
                        "page " + number,
                        "What it draws cannot be followed; open it in a viewer and save it again.");
            }
        }
        if (lines.strokes().isEmpty()) {
            throw new DrawingException(
                    file,
                    "page " + number,
                    lines.pictures() > 0
                            ? "It is a picture (a scan), which has no lines; trace it in a vector editor, or measure the paper and"
                                    + " use --paper-only."
                            : "There is nothing drawn on it.");
        }
        List<Finding> findings = new ArrayList<>();
        if (lines.pictures() > 0) {
            findings.add(
                    Finding.note("page " + number, "Pictures and shadings on it have no lines and were left out."));
        }
        var box = page.getMediaBox();
        double unit = page.getUserUnit() * 25.4 / 72;
        findings.add(Finding.note(
                "page " + number,
                String.format(
                        Locale.ROOT,
                        "The sheet is %.0f by %.0f mm; check a printed dimension before you cut.",
                        box.getWidth() * unit,
                        box.getHeight() * unit)));
        return new Drawing(file, lines.strokes(), lines.captions(), findings);
    }
}
