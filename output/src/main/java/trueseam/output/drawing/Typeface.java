package trueseam.output.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of a book, embedded as the subset that is used. It is Liberation Sans (SIL Open Font License 1.1), which
 * comes with PDFBox, so that every machine prints the same letters; it has the trade's fractions in eighths.
 *
 * <p>Letters that it lacks are shown as an empty square. For one thread.
 */
public final class Typeface {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final int MISSING = '\u25a1';

    private final PDType0Font font;
    private final CmapLookup characters;
    private final TrueTypeFont metrics;
    private final double unitsPerEm;
    private final Map<Integer, Integer> advances = new HashMap<>();

    Typeface(PDDocument document) {
        try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("The typeface " + FILE + " is missing from the PDF library.");
            }
            metrics = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
            // Ligatures and the like are not used, and reading their tables would take half of the time.
            metrics.setEnableGsub(false);
            font = PDType0Font.load(document, metrics, true);
            characters = metrics.getUnicodeCmapLookup();
            unitsPerEm = metrics.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("The typeface " + FILE + " cannot be read.", e);
        }
    }

    /** The text as it can be set: composed letters, and a square for each that the typeface lacks. */
    String settable(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder out = new StringBuilder(composed.length());
        composed.codePoints().forEach(c -> {
            int shown = Character.isWhitespace(c) ? ' ' : c;
            out.appendCodePoint(characters.getGlyphId(shown) == 0 ? MISSING : shown);
        });
        return out.toString();
    }

    /** The codes of the glyphs of settable text, which become part of the embedded subset. */
    byte[] codes(String settable) {
        settable.codePoints().forEach(font::addToSubset);
        try {
            return font.encode(settable);
        } catch (IOException e) {
            throw new UncheckedIOException("\"" + settable + "\" cannot be set.", e);
        }
    }

    PDType0Font font() {
        return font;
    }

    /**
     * How wide a line of text is.
     *
     * @param text one line
     * @param lettering how it is set
     * @return mm
     */
    public double widthOf(String text, Lettering lettering) {
        return settable(text).codePoints().map(this::advance).sum() / unitsPerEm * lettering.sizeMm();
    }

    private int advance(int codePoint) {
        return advances.computeIfAbsent(codePoint, c -> {
            try {
                return metrics.getAdvanceWidth(characters.getGlyphId(c));
            } catch (IOException e) {
                throw new UncheckedIOException("The typeface's widths cannot be read.", e);
            }
        });
    }

    /**
     * The lettering in the largest size, not above its own, in which a line fits.
     *
     * @param text one line
     * @param lettering how it is to be set
     * @param widthMm room for it, mm
     * @param smallestMm smallest size that may be taken, mm, even if it does not fit
     * @return the lettering in that size
     */
    public Lettering fitted(String text, Lettering lettering, double widthMm, double smallestMm) {
        double width = widthOf(text, lettering);
        if (width <= widthMm) {
            return lettering;
        }
        return lettering.sized(
                Math.max(Math.min(smallestMm, lettering.sizeMm()), lettering.sizeMm() * widthMm / width));
    }

    /**
     * The text in lines no wider than the room, broken at spaces and at line ends of its own. A single word that is wider is
     * broken inside.
     *
     * @param text any text
     * @param lettering how it is set
     * @param widthMm room for each line, mm
     * @return the lines, at least one
     */
    public List<String> wrapped(String text, Lettering lettering, double widthMm) {
        List<String> lines = new ArrayList<>();
        for (String own : text.split("\n", -1)) {
            String line = "";
            for (String word : own.strip().split(" +", -1)) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (widthOf(longer, lettering) <= widthMm) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = brokenInside(word, lettering, widthMm, lines);
            }
            lines.add(line);
        }
        return lines;
    }

    private String brokenInside(String word, Lettering lettering, double widthMm, List<String> lines) {
        String rest = word;
        while (rest.length() > 1 && widthOf(rest, lettering) > widthMm) {
            int n = 1;
            while (widthOf(rest.substring(0, n + 1), lettering) <= widthMm) {
                n++;
            }
            if (Character.isHighSurrogate(rest.charAt(n - 1))) {
                n++;
            }
            lines.add(rest.substring(0, n));
            rest = rest.substring(n);
        }
        return rest;
    }
}
