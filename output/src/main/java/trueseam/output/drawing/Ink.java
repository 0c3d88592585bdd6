package trueseam.output.drawing;

import java.nio.charset.StandardCharsets;
import trueseam.geometry.Point;

/** Collects the operators of a content stream (ISO 32000-1, annex A). Coordinates in mm, written in points. For one thread. */
final class Ink {

    /** Points in a millimetre: 72 in 25.4. */
    static final double POINTS_PER_MM = 72 / 25.4;

    private static final double DECIMALS = 1e4;

    private final StringBuilder out = new StringBuilder(4096);

    Ink op(String operator) {
        out.append(operator).append('\n');
        return this;
    }

    Ink word(String operand) {
        out.append(operand).append(' ');
        return this;
    }

    Ink mm(double length) {
        return number(length * POINTS_PER_MM);
    }

    Ink at(Point p) {
        return mm(p.x()).mm(p.y());
    }

    /** Writes a number to four decimals, which is 0.00004 mm; only a matrix gets more. */
    Ink number(double value) {
        decimals(Math.round(value * DECIMALS), 4);
        return this;
    }

    /** Writes a number to eight decimals, for cosines. */
    Ink fine(double value) {
        decimals(Math.round(value * 1e8), 8);
        return this;
    }

    private void decimals(long scaled, int places) {
        long rest = Math.abs(scaled);
        if (scaled < 0) {
            out.append('-');
        }
        long unit = 1;
        for (int i = 0; i < places; i++) {
            unit *= 10;
        }
        out.append(rest / unit);
        rest %= unit;
        if (rest != 0) {
            out.append('.');
            while (rest != 0) {
                unit /= 10;
                out.append((char) ('0' + rest / unit));
                rest %= unit;
            }
        }
        out.append(' ');
    }

    /** Writes the codes of glyphs as a hexadecimal string. */
    Ink glyphs(byte[] codes) {
        out.append('<');
        for (byte code : codes) {
            out.append(Character.forDigit((code >> 4) & 15, 16)).append(Character.forDigit(code & 15, 16));
        }
        out.append("> ");
        return this;
    }

    byte[] bytes() {
        return out.toString().getBytes(StandardCharsets.ISO_8859_1);
    }
}
