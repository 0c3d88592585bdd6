package trueseam.output.dxf;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Writes DXF release 12, group by group. One file, one thread. */
final class DxfText {

    private final StringBuilder text = new StringBuilder();

    DxfText group(int code, String value) {
        text.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
        return this;
    }

    DxfText number(int code, double value) {
        String written = String.format(Locale.ROOT, "%.5f", value);
        return group(code, written.equals("-0.00000") ? "0.00000" : written);
    }

    /** The three coordinates of a point, the first under a code. */
    DxfText at(int code, Point p) {
        return number(code, p.x()).number(code + 10, p.y()).number(code + 20, 0);
    }

    private DxfText entity(String type, int layer) {
        return group(0, type).group(8, String.valueOf(layer));
    }

    void point(int layer, Point p) {
        entity("POINT", layer).at(10, p);
    }

    /** A point with a direction. */
    void point(int layer, Point p, Vec direction) {
        entity("POINT", layer).at(10, p).number(50, Math.toDegrees(direction.angle()));
    }

    void line(int layer, Point from, Point to) {
        entity("LINE", layer).at(10, from).at(11, to);
    }

    /** A line through points; of a closed one the last is not the first again. */
    void polyline(int layer, List<Point> points, boolean closed) {
        entity("POLYLINE", layer).group(66, "1").at(10, Point.ORIGIN).group(70, closed ? "1" : "0");
        for (Point p : points) {
            entity("VERTEX", layer).at(10, p);
        }
        entity("SEQEND", layer);
    }

    void words(int layer, Point at, double heightMm, String words) {
        entity("TEXT", layer).at(10, at).number(40, heightMm).group(1, ascii(words));
    }

    /** Letters of release 12: accents are dropped, what has no plain letter becomes a question mark. */
    static String ascii(String words) {
        String bare = Normalizer.normalize(words.replace("\u00df", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "");
        return bare.replaceAll("\\s+", " ").replaceAll("[^ -~]", "?").strip();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
