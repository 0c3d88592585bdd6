package trueseam.intake.file;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What kind of file a drawing is in. */
enum FileKind {
    SVG,
    PDF,
    DXF,
    PLOT;

    /** So far into a file its first words are looked for: some programs write a preface. */
    private static final int PREFACE = 2048;

    /** By what it holds where that cannot be mistaken, else by how its name ends, else SVG, whose reader says what is wrong. */
    static FileKind of(String name, byte[] content) {
        String head = new String(content, 0, Math.min(content.length, PREFACE), StandardCharsets.ISO_8859_1);
        if (head.contains("%PDF-")) {
            return PDF;
        }
        if (head.contains("<svg") || head.stripLeading().startsWith("<?xml")) {
            return SVG;
        }
        return switch (name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT)) {
            case "pdf" -> PDF;
            case "dxf" -> DXF;
            case "plt", "hpgl", "hpg", "plo" -> PLOT;
            case "svg" -> SVG;
            default -> unnamed(head);
        };
    }

    private static FileKind unnamed(String head) {
        if (head.matches("(?s)\\s*+(?:999[ \\t\\r]*+\\n[^\\n]*+\\n\\s*+)*+0\\s*+SECTION\\s.*")) {
            return DXF;
        }
        return head.matches("(?s)(\\x1b\\S*)?\\s*(IN|DF|SP\\d*|PU[\\d, -]*)\\s*;.*") ? PLOT : SVG;
    }
}
