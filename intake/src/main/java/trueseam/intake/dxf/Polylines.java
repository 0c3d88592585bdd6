package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/** LWPOLYLINE and POLYLINE with their arcs. */
final class Polylines {

    private static final int CLOSED = 1;
    private static final int MESH = 16 | 64;
    private static final int FRAME = 16;

    private record Vertex(Point at, double bulge) {}

    private final double unitMm;

    Polylines(double unitMm) {
        this.unitMm = unitMm;
    }

    /** The line of an LWPOLYLINE. */
    Path light(RawEntity e) {
        List<Vertex> vertices = new ArrayList<>();
        boolean begun = false;
        double x = 0;
        double y = 0;
        double bulge = 0;
        for (Group group : e.groups()) {
            switch (group.code()) {
                case 10 -> {
                    if (begun) {
                        vertices.add(vertex(x, y, bulge));
                    }
                    begun = true;
                    x = RawEntity.number(group);
                    y = 0;
                    bulge = 0;
                }
                case 20 -> y = RawEntity.number(group);
                case 42 -> bulge = RawEntity.number(group);
                default -> {
                    // widths and names of vertices draw nothing
                }
            }
        }
        if (begun) {
            vertices.add(vertex(x, y, bulge));
        }
        int said = e.whole(90, vertices.size());
        if (said != vertices.size()) {
            throw new EntityException("a polyline says that it has " + said + " vertices and has " + vertices.size());
        }
        return through(vertices, (e.whole(70, 0) & CLOSED) != 0);
    }

    /** The line of a POLYLINE; of one that was made smooth, the points of the curve and not those of its frame. */
    Path heavy(RawEntity e) {
        int flags = e.whole(70, 0);
        if ((flags & MESH) != 0) {
            throw new EntityException("a mesh is no line of a pattern");
        }
        List<Vertex> vertices = new ArrayList<>();
        for (RawEntity v : e.children()) {
            if (v.type().equals("VERTEX") && (v.whole(70, 0) & FRAME) == 0) {
                vertices.add(vertex(v.needed(10), v.needed(20), v.number(42, 0)));
            }
        }
        return through(vertices, (flags & CLOSED) != 0);
    }

    private Vertex vertex(double x, double y, double bulge) {
        return new Vertex(new Point(x * unitMm, y * unitMm), bulge);
    }

    private static Path through(List<Vertex> vertices, boolean closed) {
        List<Segment> all = new ArrayList<>();
        int strokes = closed ? vertices.size() : vertices.size() - 1;
        for (int i = 0; i < strokes; i++) {
            Vertex from = vertices.get(i);
            Vertex to = vertices.get((i + 1) % vertices.size());
            if (!from.at().equals(to.at())) {
                all.addAll(Bulge.stroke(from.at(), to.at(), from.bulge()));
            }
        }
        if (all.isEmpty()) {
            throw new EntityException("a polyline of no length");
        }
        return Path.of(all);
    }
}
