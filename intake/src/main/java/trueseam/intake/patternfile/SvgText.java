package trueseam.intake.patternfile;

import java.util.Locale;
import trueseam.geometry.convert.PathData;

/** Writes elements, one a line, indented. Used by one thread, for one file. */
final class SvgText {

    private final StringBuilder text = new StringBuilder();
    private int depth;

    /** An element as far as it is written: its attributes follow, then one of the ends. */
    final class Tag {

        private final String name;

        private Tag(String name) {
            this.name = name;
            indent().append('<').append(name);
        }

        Tag with(String attribute, String value) {
            text.append(' ')
                    .append(attribute)
                    .append("=\"")
                    .append(escaped(value))
                    .append('"');
            return this;
        }

        Tag with(String attribute, double value) {
            return with(attribute, PathData.number(value));
        }

        /** Ends the element without content. */
        void end() {
            text.append("/>\n");
        }

        /** Ends the element with text in it. */
        void end(String content) {
            text.append('>').append(escaped(content)).append("</").append(name).append(">\n");
        }

        /** Leaves the element open; {@link SvgText#close} closes it. */
        void open() {
            text.append(">\n");
            depth++;
        }
    }

    Tag tag(String name) {
        return new Tag(name);
    }

    void close(String name) {
        depth--;
        indent().append("</").append(name).append(">\n");
    }

    /** Text that is well-formed as it is. */
    void raw(String wellFormed) {
        text.append(wellFormed);
    }

    private StringBuilder indent() {
        return text.append("  ".repeat(depth));
    }

    /** Words for the eye, on one line. */
    static String oneLine(String words) {
        return words.replaceAll("\\s+", " ").strip();
    }

    /** Line ends and tabs by number, since a reader of XML turns plain ones into blanks. */
    private static String escaped(String value) {
        StringBuilder safe = new StringBuilder(value.length());
        value.codePoints().forEach(sign -> {
            switch (sign) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\n', '\r', '\t' -> safe.append("&#").append(sign).append(';');
                default -> {
                    check(sign, value);
                    safe.appendCodePoint(sign);
                }
            }
        });
        return safe.toString();
    }

    /** Source: XML 1.0, fifth edition, production 2 (Char). */
    private static void check(int sign, String value) {
        boolean good = (0x20 <= sign && sign <= 0xD7FF)
                || (0xE000 <= sign && sign <= 0xFFFD)
                || (0x10000 <= sign && sign <= 0x10FFFF);
        if (!good) {
            throw new PatternFileException(
                    "the pattern file",
                    0,
                    "\"" + NumberText.shortened(value) + "\"",
                    String.format(
                            Locale.ROOT,
                            "This name or text holds the sign U+%04X, which no SVG file can hold; take it out.",
                            sign));
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
