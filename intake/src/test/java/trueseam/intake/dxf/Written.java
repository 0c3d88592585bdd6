package trueseam.intake.dxf;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** DXF text for tests, written group by group; all pieces are invented. */
final class Written {

    private final StringBuilder text = new StringBuilder();

    static DxfReading read(String text) {
        return Dxf.read("x.dxf", text.getBytes(StandardCharsets.UTF_8), Optional.empty());
    }

    Written group(int code, Object value) {
        text.append(code).append('\n').append(value).append('\n');
        return this;
    }

    Written section(String name) {
        return group(0, "SECTION").group(2, name);
    }

    Written end() {
        return group(0, "ENDSEC");
    }

    Written block(String name) {
        return group(0, "BLOCK")
                .group(8, 0)
                .group(2, name)
                .group(70, 0)
                .group(10, 0)
                .group(20, 0);
    }

    Written endBlock() {
        return group(0, "ENDBLK").group(8, 0);
    }

    Written line(Object layer, double x0, double y0, double x1, double y1) {
        return group(0, "LINE")
                .group(8, layer)
                .group(10, x0)
                .group(20, y0)
                .group(11, x1)
                .group(21, y1);
    }

    Written point(Object layer, double x, double y) {
        return group(0, "POINT").group(8, layer).group(10, x).group(20, y);
    }

    Written words(Object layer, double x, double y, String words) {
        return group(0, "TEXT")
                .group(8, layer)
                .group(10, x)
                .group(20, y)
                .group(40, 5)
                .group(1, words);
    }

    Written polyline(Object layer, boolean closed, double... xy) {
        group(0, "POLYLINE").group(8, layer).group(66, 1).group(70, closed ? 1 : 0);
        for (int i = 0; i < xy.length; i += 2) {
            group(0, "VERTEX").group(8, layer).group(10, xy[i]).group(20, xy[i + 1]);
        }
        return group(0, "SEQEND").group(8, layer);
    }

    Written insert(String name, double x, double y) {
        return group(0, "INSERT").group(8, 0).group(2, name).group(10, x).group(20, y);
    }

    DxfReading read() {
        return read(toString());
    }

    @Override
    public String toString() {
        return text + "0\nEOF\n";
    }
}
