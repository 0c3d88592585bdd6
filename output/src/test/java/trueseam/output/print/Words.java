package trueseam.output.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import trueseam.geometry.Point;

/** The words of a page with their places. */
public final class Words {

    /** A run of text and where it begins, mm from the lower left corner of the page. */
    public record Word(String text, Point at) {}

    private Words() {}

    /** All runs of text of a page, counted from 0. */
    public static List<Word> of(PDDocument document, int page) throws IOException {
        List<Word> words = new ArrayList<>();
        double height = document.getPage(page).getMediaBox().getHeight();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                TextPosition p = positions.get(0);
                // Both halves of a diamond bear its number, so near each other that they read as one word.
                String word = text.strip().replaceFirst("^(\\d+[ab]) ?\\1$", "$1");
                words.add(new Word(word, new Point(p.getXDirAdj() / 72 * 25.4, (height - p.getYDirAdj()) / 72 * 25.4)));
            }
        };
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.setSortByPosition(false);
        stripper.getText(document);
        return words;
    }

    /** A run of text with the places of its letters on the page, mm, in the order read; also letters that lines cut off. */
    public record Letters(String text, List<Point> at) {}

    /** All runs of letters of a page, counted from 0, whichever way they stand. */
    public static List<Letters> letters(PDDocument document, int page) throws IOException {
        List<Letters> found = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                List<Point> at = new ArrayList<>();
                for (TextPosition p : positions) {
                    at.add(new Point(
                            p.getTextMatrix().getTranslateX() / 72 * 25.4,
                            p.getTextMatrix().getTranslateY() / 72 * 25.4));
                }
                found.add(new Letters(text, at));
            }
        };
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.setSortByPosition(false);
        stripper.getText(document);
        return found;
    }

    /** The whole text of a page, counted from 0, or of all pages for -1. */
    public static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        if (page >= 0) {
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
        }
        return stripper.getText(document);
    }
}
