package trueseam.geometry.convert;

import java.util.Locale;

/**
 * Path data taken apart into commands, numbers and flags by the grammar of SVG 1.1, 8.3.9: numbers may follow each other
 * without anything between where the next one begins with a sign or a second point, flags always.
 *
 * <p>Moves forward only; one reader, one thread.
 */
final class PathDataText {

    /** No number of a drawing is written longer; a text that goes on is no path data. */
    private static final int LONGEST_NUMBER = 400;

    private final String text;
    private int at;

    PathDataText(String text) {
        this.text = text;
        skipBlanks();
    }

    boolean isAtEnd() {
        return at >= text.length();
    }

    /** Where the next thing stands, the first character being 1. */
    int character() {
        return at + 1;
    }

    PathDataException refused(String what) {
        return new PathDataException(what, character());
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
    }

    private void skipBlanks() {
        while (isBlank(peek())) {
            at++;
        }
    }

    private void skipComma() {
        skipBlanks();
        if (peek() == ',') {
            at++;
            skipBlanks();
            if (!isNumberNext()) {
                throw refused(found() + " after a comma; expected a number.");
            }
        }
    }

    private String found() {
        return isAtEnd() ? "the text ends" : "\"" + peek() + "\"";
    }

    char command() {
        char c = peek();
        if ("MmLlHhVvCcSsQqTtAaZz".indexOf(c) < 0 || c == '\0') {
            throw refused(found() + "; expected one of the commands M L H V C S Q T A Z.");
        }
        at++;
        skipBlanks();
        return c;
    }

    boolean isNumberNext() {
        char c = peek();
        return ('0' <= c && c <= '9') || c == '+' || c == '-' || c == '.';
    }

    double number() {
        int from = at;
        if (peek() == '+' || peek() == '-') {
            at++;
        }
        int digits = digits();
        if (peek() == '.') {
            at++;
            digits += digits();
        }
        if (digits == 0) {
            throw refused(found() + "; expected a number.");
        }
        char e = peek();
        if (e == 'e' || e == 'E') {
            at++;
            if (peek() == '+' || peek() == '-') {
                at++;
            }
            if (digits() == 0) {
                throw refused(found() + "; expected the digits of an exponent.");
            }
        }
        double value = at - from <= LONGEST_NUMBER ? Double.parseDouble(text.substring(from, at)) : Double.NaN;
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new PathDataException(
                    String.format(
                            Locale.ROOT,
                            "the number %s is too large or too long; no drawing is that size.",
                            text.substring(from, Math.min(at, from + 20))),
                    from + 1);
        }
        skipComma();
        return value;
    }

    private int digits() {
        int from = at;
        while ('0' <= peek() && peek() <= '9') {
            at++;
        }
        return at - from;
    }

    boolean flag() {
        char c = peek();
        if (c != '0' && c != '1') {
            throw refused(found() + "; expected a flag of an arc, 0 or 1.");
        }
        at++;
        skipComma();
        return c == '1';
    }
}
