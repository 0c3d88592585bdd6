package trueseam.intake.plot;

import java.util.ArrayList;
import java.util.List;
import trueseam.intake.drawing.DrawingException;

/**
 * Takes a plot file apart into instructions, forwards only. Commands to the device itself (escape and a point, or a percent sign) are
 * passed over. One file, one thread.
 */
final class PlotText {

    private static final char ESCAPE = 0x1b;
    private static final char USUAL_END_OF_WORDS = 0x03;
    private static final int LONGEST_WORDS = 1000;
    private static final double LARGEST = 1e9;

    private final String file;
    private final String text;
    private int at;
    private int place;
    private char endOfWords = USUAL_END_OF_WORDS;

    PlotText(String file, String text) {
        this.file = file;
        this.text = text;
        skip();
    }

    boolean hasNext() {
        return at < text.length();
    }

    Instruction next() {
        place++;
        char first = Character.toUpperCase(text.charAt(at));
        char second = at + 1 < text.length() ? Character.toUpperCase(text.charAt(at + 1)) : ' ';
        if (!isLetter(first) || !isLetter(second)) {
            throw refused(
                    "\"" + shown(first) + shown(second)
                            + "\" stands where two letters of an instruction were expected; the file is damaged or no HP-GL plot.");
        }
        at += 2;
        String name = "" + first + second;
        if (name.equals("PE")) {
            throw refused("lines are packed (PE); set the plot to plain HP-GL (PU, PD) and write it again.");
        }
        Instruction found =
                switch (name) {
                    case "LB" -> new Instruction(name, List.of(), words(), place);
                    case "DT" -> endOfWords();
                    case "CO" -> comment();
                    default -> new Instruction(name, numbers(), "", place);
                };
        skip();
        return found;
    }

    DrawingException refused(String what) {
        return new DrawingException(file, "instruction " + place, what);
    }

    private static boolean isLetter(char c) {
        return 'A' <= c && c <= 'Z';
    }

    private static String shown(char c) {
        return c < ' ' || c > '~' ? "?" : String.valueOf(c);
    }

    private String words() {
        int end = text.indexOf(endOfWords, at);
        if (end < 0 || end - at > LONGEST_WORDS) {
            throw refused("words (LB) without an end within " + LONGEST_WORDS + " letters; the file is damaged.");
        }
        String words = text.substring(at, end);
        at = end + 1;
        return words;
    }

    /** What is said in quotes is for people only. */
    private Instruction comment() {
        int from = text.indexOf('"', at);
        int to = from < 0 ? -1 : text.indexOf('"', from + 1);
        if (to < 0) {
            throw refused("a comment (CO) without its quotes; the file is damaged.");
        }
        at = to + 1;
        return new Instruction("CO", List.of(), "", place);
    }

    private Instruction endOfWords() {
        boolean given = at < text.length() && text.charAt(at) != ';';
        endOfWords = given ? text.charAt(at) : USUAL_END_OF_WORDS;
        if (given) {
            at++;
            if (at + 1 < text.length() && text.charAt(at) == ',') {
                at += 2;
            }
        }
        return new Instruction("DT", List.of(), "", place);
    }

    private List<Double> numbers() {
        List<Double> all = new ArrayList<>();
        while (at < text.length()) {
            char c = text.charAt(at);
            if ("0123456789+-.".indexOf(c) >= 0) {
                all.add(number());
            } else if (c == ',' || c == ' ' || c == '\n' || c == '\r' || c == '\t') {
                at++;
            } else {
                break;
            }
        }
        return all;
    }

    private double number() {
        int from = at;
        at++;
        while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String written = text.substring(from, Math.min(at, from + 40));
        try {
            double value = Double.parseDouble(written);
            if (Math.abs(value) <= LARGEST) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            // told below
        }
        throw refused("\"" + written + "\" is no number that a plot can hold.");
    }

    /** Passes over what separates instructions, and over commands to the device. */
    private void skip() {
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == ESCAPE) {
                device();
            } else if (c == ';' || c <= ' ') {
                at++;
            } else {
                return;
            }
        }
    }

    /** Escape, a point, a letter and numbers up to a colon; or escape, a percent sign, and numbers up to a capital letter. */
    private void device() {
        at++;
        char kind = at < text.length() ? text.charAt(at) : ' ';
        if (kind == '.') {
            at += 2;
            while (at < text.length() && "0123456789;".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            if (at < text.length() && text.charAt(at) == ':') {
                at++;
            }
        } else if (kind == '%') {
            at++;
            while (at < text.length() && !isLetter(text.charAt(at))) {
                at++;
            }
            at++;
            if (text.startsWith("@PJL", at)) { // lines for the printer before the plot itself
                while (text.startsWith("@PJL", at)) {
                    int end = text.indexOf('\n', at);
                    at = end < 0 ? text.length() : end + 1;
                }
            }
        } else if (kind == 'E') {
            at++;
        } else {
            place++;
            throw refused("a command for a raster printer; write the plot as HP-GL.");
        }
    }
}
