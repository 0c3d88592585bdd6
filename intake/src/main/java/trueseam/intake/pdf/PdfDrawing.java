package trueseam.intake.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import trueseam.garment.finding.Finding;
import trueseam.geometry.GeometryException;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.tiles.Inked;
import trueseam.intake.tiles.Page;
import trueseam.intake.tiles.TileChoices;
import trueseam.intake.tiles.Tiles;
import trueseam.intake.tiles.Together;

/** Reads a PDF file as a drawing: one sheet, or pages that were to be taped together. */
public final class PdfDrawing {

    /** Books have more pages; patterns have not. */
    private static final int MOST_PAGES = 1000;

    /** All pages together. */
    private static final int MOST_STROKES = 600_000;

    private static final String SAVE_AGAIN = "open it in a viewer and save it again.";

    private PdfDrawing() {}

    /**
     * Reads a file.
     *
     * @param file what the file is called, for messages
     * @param content the file
     * @param page which page alone, 1 for the first; 0 for all of them, put together
     * @param choices what is said about how they go together
     * @return the drawing, mm, y up, and the pages that are no part of it
     * @throws DrawingException if it is no PDF, needs a password, has no such page, is all pictures, or nobody can know how its pages go
     *     together
     */
    public static PdfReading read(String file, byte[] content, int page, TileChoices choices) {
        Set<String> off = new TreeSet<>();
        List<Page> pages = pages(file, content, page, off);
        if (pages.stream().noneMatch(p -> !p.lines().isEmpty())) {
            throw nothing(file, pages, page);
        }
        if (page > 0) {
            return new PdfReading(drawing(file, Tiles.of(file, pages, TileChoices.NONE), pages, off), List.of());
        }
        if (pages.stream().noneMatch(Page::hasLines)) {
            throw nothing(file, pages, page);
        }
        Together together = Tiles.of(file, pages, choices);
        List<Drawing> others = new ArrayList<>();
        for (Page other : together.skipped()) {
            List<Inked> seen = other.lines().stream().filter(Inked::isSeen).toList();
            others.add(new Drawing(
                    file + ", page " + other.number(),
                    seen.stream().map(Inked::stroke).toList(),
                    other.captions(),
                    List.of()));
        }
        return new PdfReading(drawing(file, together, pages, off), others);
    }

    private static Drawing drawing(String file, Together together, List<Page> pages, Set<String> off) {
        List<Finding> findings = new ArrayList<>();
        List<Page> part =
                pages.stream().filter(p -> !together.skipped().contains(p)).toList();
        if (part.stream().anyMatch(p -> p.pictures() > 0)) {
            findings.add(Finding.note(
                    part.size() == 1 ? "page " + part.get(0).number() : "pages",
                    "Pictures and shadings among the lines have no lines and were left out."));
        }
        List<String> hidden = off.stream()
                .filter(name -> together.strokes().stream()
                        .anyMatch(s -> List.of(s.layer().split("[/+]")).contains(name)))
                .limit(10)
                .toList();
        if (!hidden.isEmpty()) {
            findings.add(Finding.warning(
                    "layers",
                    "Layers that are switched off in the file are in the drawing all the same: "
                            + String.join(", ", hidden) + "; choose by --layer."));
        }
        findings.addAll(together.findings());
        return new Drawing(file, together.strokes(), together.captions(), findings);
    }

    private static DrawingException nothing(String file, List<Page> pages, int page) {
        long pictures = pages.stream().filter(p -> p.pictures() > 0).count();
        boolean one = pages.size() == 1;
        if (pictures == 0) {
            return new DrawingException(
                    file,
                    page > 0 || one ? "page " + pages.get(0).number() : "",
                    "There is nothing drawn on " + (one ? "it." : "any of its " + pages.size() + " pages."));
        }
        String what = one
                ? "It is a picture (a scan), which has no lines"
                : pictures + " of its " + pages.size() + " pages are pictures (scans), and none has lines";
        return new DrawingException(
                file,
                one ? "page " + pages.get(0).number() : "",
                what
                        + "; ask its maker for a file with lines, trace it in a vector editor, or measure the paper and use"
                        + " --paper-only.");
    }

    /** Of some broken files the library finds out by whatever it happens to trip over. */
    private static PDDocument opened(byte[] content) throws IOException {
        try {
            return Loader.loadPDF(content);
        } catch (RuntimeException e) {
            throw new IOException("no list of objects that holds together", e);
        }
    }

    private static List<Page> pages(String file, byte[] content, int page, Set<String> off) {
        try (PDDocument document = opened(content)) {
            int count = document.getNumberOfPages();
            if (page > count) {
                throw new DrawingException(file, "", "It has " + count + " pages and no page " + page + ".");
            }
            if (page == 0 && count > MOST_PAGES) {
                throw new DrawingException(
                        file, "", "It has " + count + " pages, more than any pattern; choose one with --page.");
            }
            off.addAll(switchedOff(document));
            List<Page> pages = new ArrayList<>();
            int strokes = 0;
            for (int number = Math.max(1, page); number <= (page == 0 ? count : page); number++) {
                Page read = read(file, page(file, document, number), number);
                strokes += read.lines().size();
                if (strokes > MOST_STROKES) {
                    throw tooMany(file, number);
                }
                pages.add(read);
            }
            if (pages.isEmpty()) {
                throw new DrawingException(file, "", "It has no pages.");
            }
            return pages;
        } catch (InvalidPasswordException e) {
            throw new DrawingException(file, "", "It needs a password; save it without one, if its maker allows that.");
        } catch (IOException e) {
            throw new DrawingException(
                    file,
                    "",
                    "This is no PDF that can be read: it may be cut short. Open it in a viewer and save it again.");
        }
    }

    private static List<String> switchedOff(PDDocument document) {
        try {
            PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
            return layers == null
                    ? List.of()
                    : Arrays.stream(layers.getGroupNames())
                            .filter(name -> name != null && !name.isEmpty() && !layers.isGroupEnabled(name))
                            .toList();
        } catch (RuntimeException e) {
            return List.of(); // a list of layers that cannot be read: their lines are there all the same
        }
    }

    /** The library finds out about a broken list of pages only when it looks for one, each time with another exception. */
    private static PDPage page(String file, PDDocument document, int number) {
        try {
            PDPage page = document.getPage(number - 1);
            if (page.getResources() == null) {
                page.setResources(new PDResources());
            }
            return page;
        } catch (RuntimeException e) {
            throw new DrawingException(file, "page " + number, "The page cannot be found in it; " + SAVE_AGAIN);
        }
    }

    private static DrawingException tooMany(String file, int number) {
        return new DrawingException(
                file, "page " + number, "It has more lines than any pattern; choose another page with --page.");
    }

    private static Page read(String file, PDPage page, int number) {
        PageLines lines = new PageLines(page);
        try {
            lines.processPage(page);
        } catch (PageLines.TooManyLinesException e) {
            throw tooMany(file, number);
        } catch (GeometryException e) {
            throw new DrawingException(file, "page " + number, "A line leads off the paper: " + e.getMessage());
        } catch (IOException | RuntimeException e) {
            if (lines.strokes().isEmpty()) {
                throw new DrawingException(file, "page " + number, "What it draws cannot be followed; " + SAVE_AGAIN);
            }
        }
        return lines.page(number);
    }
}
