package trueseam.checks.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.GZIPOutputStream;

/** Files made to do harm: small ones that want to grow, deep ones, endless ones. */
enum Bomb {
    ENTITIES_THAT_GROW(Format.SVG, () -> {
        StringBuilder types = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 'ha'>");
        for (int i = 1; i < 40; i++) {
            types.append("<!ENTITY a%d '&a%d;&a%d;'>".formatted(i, i - 1, i - 1));
        }
        return types + "]>" + svg("<text>&a39;</text>");
    }),
    AN_ENTITY_OUTSIDE(
            Format.SVG, () -> "<!DOCTYPE svg [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>" + svg("<text>&e;</text>")),
    GROUPS_IN_GROUPS(Format.SVG, () -> svg("<g>".repeat(100_000) + "</g>".repeat(100_000))),
    USES_IN_A_CIRCLE(Format.SVG, () -> svg("<g id='a'><use href='#b'/></g><g id='b'><use href='#a'/></g>")),
    USES_THAT_DOUBLE(Format.SVG, () -> svg(uses("<path d='M0 0L9 9' stroke='black'/>", 11, 30))),
    USES_OF_NOTHING_THAT_DOUBLE(Format.SVG, () -> svg(uses("", 11, 30))),
    SYMBOLS_OF_ONESELF(
            Format.SVG, () -> svg("<symbol id='s' viewBox='0 0 1 1'><use href='#s'/></symbol><use href='#s'/>")),
    HUGE_NUMBERS(Format.SVG, () -> svg(outline("M0 0L1e9 0L1e9 1e9L0 1e9Z") + outline("M0 0L9e8 0L1 1e308Z"))),
    A_PATH_WITHOUT_END(Format.SVG, () -> svg(outline("M0 0" + "L10 0 10 9 3 8".repeat(900_000) + "Z"))),
    A_ZIGZAG_IN_A_PIECE(Format.SVG, () -> svg(outline("M0 0" + zigzag(100_000) + "L0 900Z"))),
    A_PIECE_OF_A_HUNDRED_THOUSAND_CHORDS(Format.SVG, () -> svg(outline(circle(100_000, 300)))),
    SCALES_UPON_SCALES(
            Format.SVG,
            () -> svg("<g transform='scale(1e3)'>".repeat(150) + outline("M0 0h9v9z") + "</g>".repeat(150))),
    NEARLY_NOTHING(Format.SVG, () -> svg("<g transform='scale(1e-9)'>" + outline("M0 0h300v400h-300z") + "</g>")),
    A_STAR_OF_LINES(Format.SVG, () -> svg(star(20_000))),
    THE_SAME_LINE_AGAIN(Format.SVG, () -> svg("<path d='M0 0L90 50' stroke='black'/>".repeat(20_000))),
    LINES_OF_ONE_LENGTH(Format.SVG, () -> svg(scattered(20_000, "h5"))),
    NOTCHES_WITHOUT_END(Format.SVG, () -> svg(outline("M0 0h800v900h-800z") + scattered(20_000, "h5"))),
    LEGS_WITHOUT_END(Format.SVG, () -> svg(outline("M0 0h800v900h-800z") + scattered(5_000, "l40 90"))),
    PIECES_WITHOUT_END(Format.SVG, () -> svg(pieces(4_000))),
    PIECES_IN_PIECES(Format.SVG, () -> svg(rings(1_500))),
    A_GRID(Format.SVG, () -> svg(grid(60))),
    RULES_FOR_EVERYTHING(
            Format.SVG,
            () -> svg("<style>" + "*{fill:none;stroke:#000}".repeat(50_000) + "</style>"
                    + "<path d='M0 0h9'/>".repeat(50_000))),
    A_STYLE_WITHOUT_END(Format.SVG, () -> svg("<style>" + "a".repeat(3_000_000) + "</style>")),
    COMMENTS_IN_A_STYLE(Format.SVG, () -> svg("<style>" + "/*".repeat(2_000_000) + "</style>")),
    A_LENGTH_OF_DIGITS(Format.SVG, () -> svg("<rect width='" + "1".repeat(2_000_000) + "!' height='9'/>")),
    A_TRANSFORM_OF_BLANKS(Format.SVG, () -> svg("<g transform='" + " ".repeat(2_000_000) + "!'/>")),
    WORDS_WITHOUT_END(
            Format.SVG, () -> svg("<text>" + "front ".repeat(3_000_000) + "</text>" + outline("M0 0h300v400h-300z"))),
    MANY_WORDS(Format.SVG, () -> svg("<text x='9' y='9'>cut 2</text>".repeat(100_000) + outline("M0 0h300v400h-300z"))),
    SIXTY_MEGABYTES_OF_BLANKS(Format.SVG, () -> svg(" ".repeat(60_000_000))),
    A_PACKED_DRAWING_THAT_GROWS(Format.SVG, Bomb::packed),
    A_PREFACE_OF_REMARKS(Format.UNNAMED, () -> "999 \n".repeat(400)),
    A_DEEP_PATTERN(Format.PATTERN, () -> svg("<g data-piece='a'>".repeat(100_000))),
    A_PATTERN_OF_PIECES(Format.PATTERN, () -> svg("<g data-piece='a'><path d='M0 0h9v9z'/></g>".repeat(60_000))),
    A_DXF_OF_TURN_POINTS(Format.DXF, () -> dxf(9_000, 9_000, 900)),
    A_DXF_OF_NOTHING_BUT_NUMBERS(Format.DXF, () -> "10\n1e308\n".repeat(1_000_000)),
    A_PLOT_OF_A_MILLION_STROKES(Format.PLT, () -> "IN;PD" + "1,1,2,2,".repeat(600_000) + ";"),
    A_PDF_THAT_UNPACKS(Format.PDF, Bomb::unpacking),
    A_PDF_THAT_DRAWS_ITSELF(Format.PDF, () -> pdf("/F Do".getBytes(StandardCharsets.US_ASCII), "", true)),
    A_RULE_WITHOUT_END(
            Format.RULES, () -> "UNITS: METRIC\nSIZE LIST: 1\nSAMPLE SIZE: 1\nRULE: DELTA 1\n" + "1 ".repeat(900_000));

    private final Format format;
    private final Supplier<Object> content;

    Bomb(Format format, Supplier<Object> content) {
        this.format = format;
        this.content = content;
    }

    Format format() {
        return format;
    }

    byte[] content() {
        Object made = content.get();
        return made instanceof byte[] bytes ? bytes : Format.bytes(made.toString());
    }

    private static String svg(String within) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='2000mm' viewBox='0 0 2000 2000'>"
                + within + "</svg>";
    }

    private static String outline(String data) {
        return "<path d='" + data + "' stroke='black' fill='none'/>";
    }

    private static String uses(String innermost, int deep, int wide) {
        StringBuilder all = new StringBuilder("<g id='a0'>" + innermost + "</g>");
        for (int i = 1; i <= deep; i++) {
            all.append("<g id='a").append(i).append("'>");
            all.append(("<use href='#a" + (i - 1) + "'/>").repeat(wide)).append("</g>");
        }
        return all.toString();
    }

    private static String zigzag(int teeth) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < teeth; i++) {
            all.append('L').append(i * 1500.0 / teeth).append(' ').append(i % 2 == 0 ? 0 : 300);
        }
        return all.toString();
    }

    private static String circle(int chords, double radius) {
        StringBuilder all = new StringBuilder("M");
        for (int i = 0; i < chords; i++) {
            double a = 2 * Math.PI * i / chords;
            all.append(400 + radius * Math.cos(a))
                    .append(' ')
                    .append(400 + radius * Math.sin(a))
                    .append(' ');
        }
        return all.append('Z').toString();
    }

    private static String star(int rays) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < rays; i++) {
            double a = 2 * Math.PI * i / rays;
            all.append(outline("M500 500L" + (500 + 400 * Math.cos(a)) + " " + (500 + 400 * Math.sin(a))));
        }
        return all.toString();
    }

    private static String scattered(int lines, String way) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < lines; i++) {
            all.append(outline("M" + (5 + i * 37 % 750) + " " + (5 + i * 53 % 790 + i * 1e-4) + way));
        }
        return all.toString();
    }

    private static String pieces(int count) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < count; i++) {
            all.append(outline("M" + i % 60 * 30 + " " + i / 60 * 30 + "h300l-20 200v200h-180l-40 -60 -60 -10z"));
        }
        return all.toString();
    }

    private static String rings(int count) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double in = i * 0.3;
            all.append(outline(
                    "M" + in + " " + in + "h" + (1000 - 2 * in) + "v" + (1100 - 2 * in) + "h" + (2 * in - 1000) + "z"));
        }
        return all.toString();
    }

    private static String grid(int lines) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i <= lines; i++) {
            for (int k = 0; k < lines; k++) {
                all.append(outline("M" + 10 * k + " " + 10 * i + "h10"));
                all.append(outline("M" + 10 * i + " " + 10 * k + "v10"));
            }
        }
        return all.toString();
    }

    /** A round boundary with turn points, curve points, and notches. */
    private static String dxf(int vertices, int turns, int notches) {
        StringBuilder all = new StringBuilder("0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n8\n1\n2\nA\n10\n0\n20\n0\n");
        all.append("0\nPOLYLINE\n8\n1\n66\n1\n70\n1\n");
        for (int i = 0; i < vertices; i++) {
            all.append("0\nVERTEX\n8\n1\n").append(at(2 * Math.PI * i / vertices));
        }
        all.append("0\nSEQEND\n");
        for (int i = 0; i < turns; i++) {
            all.append("0\nPOINT\n8\n2\n").append(at(2 * Math.PI * i / turns));
        }
        for (int i = 0; i < notches; i++) {
            all.append("0\nPOINT\n8\n4\n").append(at(1 + i * 0.003));
        }
        return all + "0\nENDBLK\n0\nENDSEC\n0\nEOF\n";
    }

    private static String at(double angle) {
        return "10\n" + 400 * Math.cos(angle) + "\n20\n" + 400 * Math.sin(angle) + "\n";
    }

    private static byte[] packed() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 2_000; i++) {
                zip.write(blanks);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Two gigabytes of lines drawn over each other, in two megabytes. */
    private static byte[] unpacking() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream packed = new DeflaterOutputStream(out)) {
            byte[] lines = "1 1 m 2 2 l S\n".repeat(100_000).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 1_500; i++) {
                packed.write(lines);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf(out.toByteArray(), "/Filter /FlateDecode ", false);
    }

    private static byte[] pdf(byte[] drawn, String filter, boolean itself) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String form = itself ? "/XObject << /F 4 0 R >>" : "";
        out.writeBytes(Format.bytes("%PDF-1.4\n1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n"
                + "2 0 obj\n<< /Type /Pages /Kids [3 0 R] /Count 1 >>\nendobj\n"
                + "3 0 obj\n<< /Type /Page /Parent 2 0 R /MediaBox [0 0 900 900] /Contents 4 0 R /Resources << " + form
                + " >> >>\nendobj\n4 0 obj\n<< /Type /XObject /Subtype /Form /BBox [0 0 900 900] /Resources << " + form
                + " >> "
                + filter + "/Length " + drawn.length + " >>\nstream\n"));
        out.writeBytes(drawn);
        out.writeBytes(Format.bytes("\nendstream\nendobj\ntrailer\n<< /Root 1 0 R >>\n%%EOF\n"));
        return out.toByteArray();
    }
}
