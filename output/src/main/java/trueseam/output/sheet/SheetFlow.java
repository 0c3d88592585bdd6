package trueseam.output.sheet;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Point;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;
import trueseam.output.drawing.PdfBook;
import trueseam.output.drawing.Pen;
import trueseam.output.drawing.Typeface;

/**
 * Pages that are filled from top to bottom. For one thread; {@link #finished} writes heads and feet, for only then the number of
 * pages is known, and ends the flow.
 */
public final class SheetFlow {

    /** White around everything: what home printers do not reach, and a thumb. */
    public static final double MARGIN_MM = 10;

    private static final Lettering RUNNING = Lettering.of(2.5).shaded(0.25);
    private static final double HEAD_MM = 6;
    private static final double FOOT_MM = 6;
    private static final Pen RULE = Pen.of(0.15).gray(0.5);

    private final PdfBook book;
    private final double widthMm;
    private final double heightMm;
    private final String head;
    private final String foot;
    private final List<Canvas> pages = new ArrayList<>();
    private double y;

    private SheetFlow(PdfBook book, double widthMm, double heightMm, String head, String foot) {
        this.book = book;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.head = head;
        this.foot = foot;
        turnPage();
    }

    /**
     * Sheets standing upright.
     *
     * @param book an empty book
     * @param paper the paper
     * @param head what stands on top of every page
     * @param foot what stands below every page
     * @return the flow, at the top of its first page
     */
    public static SheetFlow upright(PdfBook book, SheetPaper paper, String head, String foot) {
        return new SheetFlow(book, paper.widthMm(), paper.heightMm(), head, foot);
    }

    /**
     * Sheets lying on their long side.
     *
     * @param book an empty book
     * @param paper the paper
     * @param head what stands on top of every page
     * @param foot what stands below every page
     * @return the flow, at the top of its first page
     */
    public static SheetFlow lying(PdfBook book, SheetPaper paper, String head, String foot) {
        double longMm = paper.heightMm();
        double shortMm = paper.widthMm();
        return new SheetFlow(book, longMm, shortMm, head, foot);
    }

    /**
     * The page being filled.
     *
     * @return the canvas
     */
    public Canvas page() {
        return pages.get(pages.size() - 1);
    }

    /**
     * The typeface.
     *
     * @return for measuring text
     */
    public Typeface typeface() {
        return book.typeface();
    }

    /**
     * Left end of what may be filled.
     *
     * @return mm from the left
     */
    public double left() {
        return MARGIN_MM;
    }

    /**
     * How wide what may be filled is.
     *
     * @return mm
     */
    public double width() {
        return widthMm - 2 * MARGIN_MM;
    }

    /**
     * How far the page is filled.
     *
     * @return mm from the lower edge of the page
     */
    public double y() {
        return y;
    }

    /**
     * What is left of the page.
     *
     * @return mm downwards
     */
    public double room() {
        return y - MARGIN_MM - FOOT_MM;
    }

    /**
     * What an empty page has room for.
     *
     * @return mm downwards
     */
    public double roomOfAPage() {
        return heightMm - 2 * MARGIN_MM - HEAD_MM - FOOT_MM;
    }

    /**
     * Takes room on the page.
     *
     * @param mm downwards
     */
    public void down(double mm) {
        y -= mm;
    }

    /**
     * Begins a new page unless there is so much room, or the page is empty.
     *
     * @param mm wanted downwards
     * @return whether a new page was begun
     */
    public boolean need(double mm) {
        boolean turn = room() < mm && room() < roomOfAPage();
        if (turn) {
            turnPage();
        }
        return turn;
    }

    /** Begins a new page. */
    public void turnPage() {
        pages.add(book.page(widthMm, heightMm));
        y = heightMm - MARGIN_MM - HEAD_MM;
    }

    /**
     * Sets text over the whole width, on a new page if it does not fit.
     *
     * @param text any text
     * @param lettering how
     * @param afterMm room left below it, mm
     */
    public void paragraph(String text, Lettering lettering, double afterMm) {
        double high = typeface().wrapped(text, lettering, width()).size() * lettering.lineMm();
        need(high);
        down(page().paragraph(text, new Point(left(), y), width(), lettering) + afterMm);
    }

    /**
     * The finished file.
     *
     * @return a PDF
     */
    public byte[] finished() {
        double right = widthMm - MARGIN_MM;
        double top = heightMm - MARGIN_MM;
        for (int i = 0; i < pages.size(); i++) {
            Canvas page = pages.get(i);
            String number = "page " + (i + 1) + " of " + pages.size();
            double numberMm = typeface().widthOf(number, RUNNING);
            Lettering fitted = typeface().fitted(head, RUNNING, width() - numberMm - 5, 1.5);
            page.text(head, new Point(MARGIN_MM, top - 2.5), fitted);
            page.text(number, new Point(right, top - 2.5), RUNNING.endingThere());
            page.line(new Point(MARGIN_MM, top - 4), new Point(right, top - 4), RULE);
            page.line(new Point(MARGIN_MM, MARGIN_MM + 4.5), new Point(right, MARGIN_MM + 4.5), RULE);
            page.paragraph(foot, new Point(MARGIN_MM, MARGIN_MM + 3.5), width(), RUNNING);
        }
        return book.finished();
    }
}
