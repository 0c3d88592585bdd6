package trueseam.intake.dxf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.intake.drawing.DrawingException;

/** The bytes of a DXF file as text. */
final class Encoding {

    /** A pattern of a hundred pieces in ten sizes has a few million characters. */
    private static final int LARGEST = 20_000_000;

    private static final int HEAD = 4000;
    private static final Pattern CODE_PAGE = Pattern.compile("\\$DWGCODEPAGE\\s+3\\s+ANSI_(\\d{3,4})");

    private Encoding() {}

    static String text(String file, byte[] bytes) {
        if (bytes.length > LARGEST) {
            throw new DrawingException(
                    file,
                    "",
                    "the file has " + bytes.length + " bytes; at most " + LARGEST
                            + " are taken. Export the pieces alone.");
        }
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.ISO_8859_1);
        if (head.lines().limit(1).anyMatch(line -> line.contains(" Binary DXF"))) {
            throw new DrawingException(
                    file, "", "this is a binary DXF; save the drawing as ASCII DXF, release 12 to 2018.");
        }
        if (head.matches("(?s)AC10\\d\\d.*")) {
            throw new DrawingException(
                    file,
                    "",
                    "this is a drawing in a closed binary format (DWG); save it as ASCII DXF, release 12 to 2018.");
        }
        if (head.indexOf('\0') >= 0) {
            throw new DrawingException(
                    file, "", "the file is not plain text; save the drawing as ASCII DXF, release 12 to 2018.");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException olderThanUnicode) {
            return new String(bytes, codePage(head));
        }
    }

    private static Charset codePage(String head) {
        Matcher named = CODE_PAGE.matcher(head);
        String name = named.find() ? "windows-" + named.group(1) : "windows-1252";
        return Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.ISO_8859_1;
    }
}
