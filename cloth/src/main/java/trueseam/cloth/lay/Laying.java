package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.packing.DoesNotFitException;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Rhythm;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripLayout;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.StripSearch;
import trueseam.cloth.packing.Way;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Lays the pieces of a pattern on a cloth. */
public final class Laying {

    /** How closely the outlines that the search works on follow the true ones, always outside them, mm. */
    private static final double CLOSE_MM = 0.25;

    /** How closely lines of corners follow curves, mm. */
    private static final double FLAT_MM = 0.05;

    private static final GeometryFactory JTS = new GeometryFactory();

    private final Cloth cloth;
    private final Stuff stuff;
    private final LayWishes wishes;
    private final List<ClothPart> parts;
    private final Strip strip;
    private final List<Finding> findings;

    private Laying(Cloth cloth, Stuff stuff, LayWishes wishes, List<ClothPart> parts, List<Finding> findings) {
        this.cloth = cloth;
        this.stuff = stuff;
        this.wishes = wishes;
        this.parts = List.copyOf(parts);
        this.findings = findings;
        this.strip = strip();
    }

    /**
     * What is to be laid.
     *
     * @param pattern the pattern, altered or not
     * @param cloth the cloth
     * @param stuff which pieces: those that are cut from it
     * @param wishes what is wanted
     * @return the task
     * @throws LayException if no piece is cut from that stuff, or a piece does not fit across the cloth
     */
    public static Laying of(Pattern pattern, Cloth cloth, Stuff stuff, LayWishes wishes) {
        List<Finding> findings = new ArrayList<>();
        List<ClothPart> parts = ClothParts.of(pattern, cloth, stuff, wishes, findings);
        return new Laying(cloth, stuff, wishes, parts, findings);
    }

    /**
     * What is laid, in the order that {@link Placed#part} counts.
     *
     * @return the parts
     */
    public List<ClothPart> parts() {
        return parts;
    }

    /**
     * Searches for a short layout.
     *
     * @param seed where chance begins: the same seed after the same rounds gives the same layout
     * @param patience how long
     * @param better told each layout that is shorter than the one before, the first at once
     * @return the shortest found
     * @throws LayException if a piece does not fit
     */
    public Lay search(long seed, Patience patience, Consumer<Found> better) {
        try {
            return lay(StripSearch.run(
                    strip, seed, SEEKERS, patience, p -> better.accept(new Found(p.rounds(), lay(p.layout())))));
        } catch (DoesNotFitException e) {
            throw tooWide(e.part());
        }
    }

    /** Both cores of a small machine; the same on every machine, so that a seed gives the same layout everywhere. */
    private static final int SEEKERS = 2;

    /**
     * A layout on the way.
     *
     * @param rounds after how many rounds of the search
     * @param lay the layout
     */
    public record Found(int rounds, Lay lay) {}

    private LayException tooWide(String part) {
        return new LayException(
                part,
                String.format(
                        java.util.Locale.ROOT,
                        "It does not fit across the cloth, of which %.0f mm are free%s; %s.",
                        cloth.usableMm(),
                        cloth.layers() == Layers.LENGTHWISE ? " from the fold to the selvage" : "",
                        cloth.layers() == Layers.LENGTHWISE
                                ? "lay the cloth in a single layer, or take a wider cloth"
                                : "take a wider cloth"),
                true);
    }

    private Lay lay(StripLayout layout) {
        List<LaidPiece> laid = new ArrayList<>();
        double area = 0;
        double half = wishes.gapMm() / 2;
        double lower = cloth.layers() == Layers.LENGTHWISE ? 0 : half;
        for (Placed p : layout.placed()) {
            if (p.part() >= parts.size()) {
                continue;
            }
            ClothPart part = parts.get(p.part());
            Lie base = p.way().mirrored() ? part.base().turnedOver() : part.base();
            Lie lie = base.then(Math.toRadians(p.way().turnDegrees()), p.x() - half, p.y() - lower);
            Path drawn = part.cutting();
            Lie from = new Lie(false, trueseam.geometry.Motion.NONE);
            Path cutting = (p.way().mirrored() ? from.turnedOver() : from)
                    .then(Math.toRadians(p.way().turnDegrees()), p.x() - half, p.y() - lower)
                    .apply(drawn);
            laid.add(new LaidPiece(
                    part,
                    p,
                    lie,
                    cutting,
                    lie.apply(part.piece().grain().from()),
                    lie.apply(part.piece().grain().to())));
            area += Math.abs(cutting.signedArea()) * (part.spare() ? 0.5 : 1);
        }
        double used = layout.length() - wishes.gapMm();
        List<Finding> all = new ArrayList<>(findings);
        Lay lay = new Lay(cloth, stuff, wishes, laid, used, area / (cloth.usableMm() * used), List.of());
        cloth.haveMm().ifPresent(have -> {
            if (lay.neededMm() > have + 0.01) {
                all.add(Finding.warning(
                        "cloth",
                        String.format(
                                java.util.Locale.ROOT,
                                "It takes %.0f mm and there are %.0f mm: %.0f mm are missing. Search longer, allow a smaller gap, or"
                                        + " cut facings from something else.",
                                lay.neededMm(),
                                have,
                                lay.neededMm() - have)));
            }
        });
        return new Lay(cloth, stuff, wishes, laid, used, lay.density(), all);
    }

    private Strip strip() {
        double gap = wishes.gapMm();
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
        for (Placed p : wishes.byHand()) {
            fixed.add(new Strip.Fixed(p, false));
        }
        for (Flaw flaw : cloth.flaws()) {
            double[] across = across(flaw);
            double x = flaw.fromMm();
            double length = flaw.toMm() - flaw.fromMm();
            List<Point> corners = List.of(
                    new Point(0, 0),
                    new Point(length, 0),
                    new Point(length, across[1] - across[0]),
                    new Point(0, across[1] - across[0]));
            shapes.add(StripPart.free("flaw", corners, 1, List.of(Way.UPRIGHT)));
            fixed.add(new Strip.Fixed(
                    new Placed(shapes.size() - 1, Way.UPRIGHT, x + gap / 2, across[0] + (fold ? 0 : gap / 2)), true));
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
        return part.match().filter(m -> stripe > 0).map(m -> new Rhythm(stripe, m.alongMm() + wishes.gapMm() / 2));
    }

    /** What lies at the fold lies on the stripe that is folded. */
    private Optional<Rhythm> across(ClothPart part) {
        double stripe = cloth.stripeAcrossMm();
        boolean fold = cloth.layers() == Layers.LENGTHWISE;
        return part.form() == CutForm.AT_FOLD
                ? Optional.empty()
                : part.match().filter(m -> stripe > 0).map(m -> new Rhythm(stripe, fold ? 0 : wishes.gapMm() / 2));
    }

    /** Where a flaw lies across the cloth as it is laid. */
    private double[] across(Flaw flaw) {
        double low = flaw.lowMm() - cloth.selvageMm();
        double high = flaw.highMm() - cloth.selvageMm();
        if (cloth.layers() == Layers.SINGLE) {
            return new double[] {low, high};
        }
        // Folded in the middle, of both halves; a flaw over the middle begins at the fold.
        double middle = cloth.usableMm();
        double a = Math.abs(low - middle);
        double b = Math.abs(high - middle);
        boolean over = low < middle && high > middle;
        return new double[] {over ? 0 : Math.min(a, b), Math.max(a, b)};
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
