package trueseam.intake.patternfile;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import trueseam.garment.pattern.Pattern;

/**
 * Reads and writes the project's own pattern file, which is described in docs/pattern-file.md.
 *
 * <p>Laws, for pieces walked anticlockwise: (1) {@code read(f, write(p)).pattern()} equals p, and without findings; (2)
 * {@code write} of what was read from {@code write} is the same text; (3) neither reaches outside the text.
 */
public final class PatternFile {

    private PatternFile() {}

    /**
     * Reads a pattern.
     *
     * @param fileLabel what the user calls the file
     * @param text its content
     * @return the pattern, with what was missing, changed by hand or left out
     * @throws PatternFileException when there is no pattern in it: no SVG, stretched, without pieces, an outline missing or
     *     open, a role that is not known
     */
    public static PatternReading read(String fileLabel, String text) {
        Reading reading = new Reading(fileLabel);
        Pattern pattern = new SheetReader(SvgTree.read(fileLabel, text), reading).read();
        return new PatternReading(pattern, reading.findings());
    }

    /**
     * Whether a file says itself what its pieces are, so that it is read here; any other one is a drawing.
     *
     * @param content what is in it
     * @return true if a piece is marked in it
     */
    public static boolean isOne(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1).contains("data-piece=");
    }

    /**
     * Writes a pattern.
     *
     * @param pattern the pattern
     * @return an SVG drawing of it, its pieces side by side
     * @throws PatternFileException when a name holds a sign that XML cannot hold
     */
    public static String write(Pattern pattern) {
        return write(pattern, Optional.empty());
    }

    /**
     * Writes a pattern, with the lines that it had before it was altered dashed under those that it has now. These are for
     * the eye; they are not read back.
     *
     * @param pattern the pattern as altered
     * @param original the pattern as it was, if it is to be shown; pieces belong together by their names
     * @return an SVG drawing
     * @throws PatternFileException when a name holds a sign that XML cannot hold
     */
    public static String write(Pattern pattern, Optional<Pattern> original) {
        return new SheetWriter(pattern, original).write();
    }
}
