package trueseam.cloth.lay;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Rhythm;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.Way;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A cloth and the pieces on it as the strip and the shapes that the search knows: every shape grown by half the gap. The shapes are made once,
 * whatever is laid by hand.
 */
final class ClothStrip {

    /** How closely the outlines that the search works on follow the true ones, always outside them, mm. */
    private static final double CLOSE_MM = 0.25;

    /** How closely lines of corners follow curves, mm. */
    private static final double FLAT_MM = 0.05;

    private static final GeometryFactory JTS = new GeometryFactory();

    private final Cloth cloth;
    private final double gapMm;
    private final Strip bare;

    ClothStrip(Cloth cloth, double gapMm, List<ClothPart> parts) {
        this.cloth = cloth;
        this.gapMm = gapMm;
        this.bare = bare(parts);
    }

    /** The strip with what lies there by hand and with the cloth's flaws. */
    Strip with(List<Placed> byHand) {
        List<Strip.Fixed> fixed = new ArrayList<>();
        byHand.forEach(p -> fixed.add(new Strip.Fixed(p, false)));
        fixed.addAll(bare.fixed());
        return new Strip(bare.width(), bare.parts(), fixed);
    }

    /** The same letters and digits for the same strip with nothing laid by hand. */
    String mark() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(bare.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 12);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private Strip bare(List<ClothPart> parts) {
        double gap = gapMm;
        boolean fold = cloth.layers() == Layers.LENGTHWISE;
        List<StripPart> shapes = new ArrayList<>();
        for (ClothPart part : parts) {
            List<Point> outline = around(part.cutting(), gap / 2, part.form() == CutForm.AT_FOLD);
            shapes.add(new StripPart(
                    part.piece().name(),
                    outline,
                    part.copies(),
                    part.ways(),
                    part.form() == CutForm.AT_FOLD,
                    matched(part, outline),
                    along(part),
                    across(part)));
        }
        List<Strip.Fixed> fixed = new ArrayList<>();
        for (Flaw flaw : cloth.flaws()) {
            Bounds at = cloth.asLaid(flaw);
            List<Point> corners = List.of(
                    new Point(0, 0),
                    new Point(at.width(), 0),
                    new Point(at.width(), at.height()),
                    new Point(0, at.height()));
            shapes.add(StripPart.free("flaw", corners, 1, List.of(Way.UPRIGHT)));
            Placed there =
                    new Placed(shapes.size() - 1, Way.UPRIGHT, at.minX() + gap / 2, at.minY() + (fold ? 0 : gap / 2));
            fixed.add(new Strip.Fixed(there, true));
        }
        return new Strip(cloth.usableMm() + (fold ? gap / 2 : gap), shapes, fixed);
    }

    /** The place that falls on stripes: along the cloth where its seam matches, across it on its grainline. */
    private static Point matched(ClothPart part, List<Point> outline) {
        return part.match()
                .map(m -> new Point(
                        part.base().apply(m.at()).x(),
                        part.base().apply(part.piece().grain().from()).y()))
                .orElse(outline.get(0));
    }

    private Optional<Rhythm> along(ClothPart part) {
        double stripe = cloth.stripeAlongMm();
        return part.match().filter(m -> stripe > 0).map(m -> new Rhythm(stripe, m.alongMm() + gapMm / 2));
    }

    /** What lies at the fold lies on the stripe that is folded. */
    private Optional<Rhythm> across(ClothPart part) {
        double stripe = cloth.stripeAcrossMm();
        boolean fold = cloth.layers() == Layers.LENGTHWISE;
        return part.form() == CutForm.AT_FOLD
                ? Optional.empty()
                : part.match().filter(m -> stripe > 0).map(m -> new Rhythm(stripe, fold ? 0 : gapMm / 2));
    }

    /** An outline that lies at least so far outside a cutting line, with few corners; of a piece at the fold nothing lies below the fold. */
    private static List<Point> around(Path cutting, double byMm, boolean atFold) {
        List<Point> points = cutting.flattened(FLAT_MM);
        Coordinate[] ring =
                new Coordinate[points.size() + (points.get(0).isNear(points.get(points.size() - 1), 1e-9) ? 0 : 1)];
        for (int i = 0; i < ring.length; i++) {
            Point p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        ring[ring.length - 1] = ring[0].copy();
        BufferParameters corners =
                new BufferParameters(8, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 1.5);
        Geometry grown = BufferOp.bufferOp(JTS.createPolygon(ring), byMm + CLOSE_MM + FLAT_MM, corners);
        Geometry simple = DouglasPeuckerSimplifier.simplify(grown, CLOSE_MM);
        if (atFold) {
            Envelope e = simple.getEnvelopeInternal();
            simple = OverlayNGRobust.overlay(
                    simple,
                    JTS.toGeometry(new Envelope(e.getMinX(), e.getMaxX(), 0, e.getMaxY())),
                    OverlayNG.INTERSECTION);
        }
        Polygon largest = (Polygon) simple.getGeometryN(0);
        for (int i = 1; i < simple.getNumGeometries(); i++) {
            if (simple.getGeometryN(i).getArea() > largest.getArea()) {
                largest = (Polygon) simple.getGeometryN(i);
            }
        }
        Coordinate[] out = largest.getExteriorRing().getCoordinates();
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i < out.length - 1; i++) {
            outline.add(new Point(out[i].x, out[i].y));
        }
        return outline;
    }
}
