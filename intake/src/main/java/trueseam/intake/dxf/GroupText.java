package trueseam.intake.dxf;

import trueseam.intake.drawing.DrawingException;

/** Goes through a DXF file group by group, forwards only; comments (code 999) are passed over. One file, one thread. */
final class GroupText {

    private final String file;
    private final String text;
    private int at;
    private int line = 1;
    private boolean cutShort;
    private boolean ready;
    private Group ahead = new Group(0, "", 0);

    GroupText(String file, String text) {
        this.file = file;
        this.text = text;
        step();
    }

    boolean hasNext() {
        return ready;
    }

    /** Whether the file ends in the middle of a group. */
    boolean isCutShort() {
        return cutShort;
    }

    Group peek() {
        return ahead;
    }

    Group next() {
        Group now = ahead;
        step();
        return now;
    }

    private void step() {
        do {
            ready = read();
        } while (ready && ahead.code() == 999);
    }

    private boolean read() {
        if (at >= text.length()) {
            return false;
        }
        int where = line;
        String code = lineOfText().strip();
        boolean rest = at < text.length();
        if (!rest && (code.isEmpty() || code.equals("\u001a"))) {
            return false; // a blank line or the old sign for the end of a file, behind everything
        }
        if (!rest) {
            cutShort = true;
            return false;
        }
        int number = code(code, where);
        String value = lineOfText();
        ahead = new Group(number, isWords(number) ? value : value.strip(), where);
        return true;
    }

    private static boolean isWords(int code) {
        return code == 1 || code == 3;
    }

    private int code(String written, int where) {
        try {
            return Integer.parseInt(written);
        } catch (NumberFormatException noNumber) {
            throw new DrawingException(
                    file,
                    "line " + where,
                    "\"" + shortened(written)
                            + "\" stands where a group code, a whole number, was expected; the file is "
                            + "damaged or no DXF drawing. Save it again as ASCII DXF.");
        }
    }

    static String shortened(String written) {
        String plain = written.chars()
                .limit(30)
                .filter(c -> c >= ' ')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return written.length() > 30 ? plain + "..." : plain;
    }

    private String lineOfText() {
        int from = at;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        String found = text.substring(from, at);
        if (at < text.length()) {
            boolean pair = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
            at += pair ? 2 : 1;
        }
        line++;
        return found;
    }
}
