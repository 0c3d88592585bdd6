package trueseam.cloth.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripLayout;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.Way;
import trueseam.geometry.Point;

/** Tests a layout of shapes on a strip, with another geometry than the search uses. */
public final class StripProof {

    private static final GeometryFactory JTS = new GeometryFactory();

    private StripProof() {}

    /**
     * What is wrong with a layout.
     *
     * @param strip what was to be laid
     * @param layout the layout
     * @param bound how deep an overlap, and how far over the strip's sides, counts as none
     * @return every fault in words; empty: it is valid
     */
    public static List<String> faults(Strip strip, StripLayout layout, double bound) {
        List<String> faults = new ArrayList<>();
        int[] left = strip.parts().stream().mapToInt(StripPart::copies).toArray();
        List<Geometry> shapes = new ArrayList<>();
        for (int i = 0; i < layout.placed().size(); i++) {
            Placed placed = layout.placed().get(i);
            StripPart part = strip.parts().get(placed.part());
            left[placed.part()]--;
            if (!part.ways().contains(placed.way())) {
                faults.add(part.name() + " lies " + placed.way() + ", which is not one of its ways");
            }
            Geometry shape = shape(part, placed);
            Envelope e = shape.getEnvelopeInternal();
            double out = Math.max(
                    Math.max(-e.getMinX(), e.getMaxX() - layout.length()),
                    Math.max(-e.getMinY(), e.getMaxY() - strip.width()));
            if (out > bound) {
                faults.add(String.format(Locale.ROOT, "%s lies %.4g beside the strip", part.name(), out));
            }
            for (int j = 0; j < i; j++) {
                String both = part.name() + " (" + i + ") and "
                        + strip.parts().get(layout.placed().get(j).part()).name() + " (" + j + ") ";
                Apart.fault(shape, shapes.get(j), 0, bound).ifPresent(f -> faults.add(both + f.words(0)));
            }
            shapes.add(shape);
        }
        for (int p = 0; p < left.length; p++) {
            if (left[p] != 0) {
                faults.add(String.format(
                        Locale.ROOT,
                        "%s is laid %d times too %s",
                        strip.parts().get(p).name(),
                        Math.abs(left[p]),
                        left[p] > 0 ? "few" : "often"));
            }
        }
        return faults;
    }

    private static Geometry shape(StripPart part, Placed placed) {
        Way way = placed.way();
        double c = Math.cos(Math.toRadians(way.turnDegrees()));
        double s = Math.sin(Math.toRadians(way.turnDegrees()));
        int n = part.outline().size();
        boolean closed = part.outline().get(0).isNear(part.outline().get(n - 1), 0);
        Coordinate[] ring = new Coordinate[closed ? n : n + 1];
        for (int i = 0; i < ring.length; i++) {
            Point p = part.outline().get(i % n);
            double y = way.mirrored() ? -p.y() : p.y();
            ring[i] = new Coordinate(c * p.x() - s * y + placed.x(), s * p.x() + c * y + placed.y());
        }
        return JTS.createPolygon(ring);
    }
}
