package trueseam.cloth.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * Tests a layout from its cutting lines alone, with another geometry than the search used: no two pieces nearer than the gap, all on the cloth,
 * grain along the cloth, folds at the fold, no flaw covered, one way up where the cloth has one.
 */
public final class LayProof {

    /** How far a bound may be missed, mm. */
    public static final double BOUND_MM = 0.01;

    /** How far the grain may run off the cloth's, mm in a metre. */
    public static final double GRAIN_MM_PER_M = 1;

    private static final double FLAT_MM = 0.002;
    private static final GeometryFactory JTS = new GeometryFactory();

    private final Lay lay;
    private final List<Finding> faults = new ArrayList<>();

    private LayProof(Lay lay) {
        this.lay = lay;
    }

    /**
     * What is wrong with a layout.
     *
     * @param lay the layout
     * @return every fault with place and amount; empty: it is valid
     */
    public static List<Finding> faults(Lay lay) {
        LayProof proof = new LayProof(lay);
        proof.look();
        return List.copyOf(proof.faults);
    }

    private void look() {
        List<Geometry> shapes =
                lay.pieces().stream().map(p -> polygon(p.cutting())).toList();
        for (int i = 0; i < shapes.size(); i++) {
            LaidPiece piece = lay.pieces().get(i);
            onCloth(piece, shapes.get(i));
            grain(piece);
            fold(piece);
            flaws(piece, shapes.get(i));
            stripes(piece);
            for (int j = 0; j < i; j++) {
                apart(piece, shapes.get(i), lay.pieces().get(j), shapes.get(j));
            }
        }
    }

    private void apart(LaidPiece a, Geometry one, LaidPiece b, Geometry other) {
        Apart.fault(one, other, lay.wishes().gapMm(), BOUND_MM).ifPresent(f -> fault(name(a) + " and " + name(b), f));
    }

    private void onCloth(LaidPiece piece, Geometry shape) {
        var e = shape.getEnvelopeInternal();
        double out = Math.max(
                Math.max(-e.getMinX(), e.getMaxX() - lay.usedMm()),
                Math.max(-e.getMinY(), e.getMaxY() - lay.cloth().usableMm()));
        if (out > BOUND_MM) {
            fault(name(piece), String.format(Locale.ROOT, "lies %.2f mm beside the cloth that is used", out));
        }
    }

    private void grain(LaidPiece piece) {
        double dx = piece.grainTo().x() - piece.grainFrom().x();
        double dy = piece.grainTo().y() - piece.grainFrom().y();
        double off = Math.abs(dy) / Math.hypot(dx, dy);
        double allowed =
                GRAIN_MM_PER_M / 1000 + Math.sin(Math.toRadians(lay.wishes().tiltDegrees()));
        if (off > allowed) {
            fault(
                    name(piece),
                    String.format(Locale.ROOT, "has its grain %.1f mm in a metre off the cloth's", 1000 * off));
        }
        if (lay.cloth().headsUp() && dx < 0) {
            fault(name(piece), "lies head to tail on cloth that has one way up");
        }
    }

    private void fold(LaidPiece piece) {
        if (piece.part().form() != CutForm.AT_FOLD) {
            return;
        }
        Path fold = piece.lie()
                .apply(piece.part()
                        .piece()
                        .edge(piece.part().piece().fold().orElseThrow())
                        .path());
        for (Point p : fold.flattened(FLAT_MM)) {
            if (Math.abs(p.y()) > BOUND_MM) {
                fault(name(piece), String.format(Locale.ROOT, "lies with its fold %.2f mm off the fold", p.y()));
                return;
            }
        }
    }

    private void flaws(LaidPiece piece, Geometry shape) {
        double selvage = lay.cloth().selvageMm();
        double usable = lay.cloth().usableMm();
        for (Flaw flaw : lay.cloth().flaws()) {
            double low = flaw.lowMm() - selvage;
            double high = flaw.highMm() - selvage;
            List<Geometry> places = new ArrayList<>();
            if (lay.cloth().layers() == Layers.LENGTHWISE) {
                // Both halves of the folded cloth, each seen from above.
                places.add(box(flaw, Math.max(low, usable) - usable, high - usable));
                places.add(box(flaw, usable - Math.min(high, usable), usable - low));
            } else {
                places.add(box(flaw, low, high));
            }
            for (Geometry place : places) {
                if (!OverlayNGRobust.overlay(place, shape, OverlayNG.INTERSECTION)
                        .buffer(-BOUND_MM / 2)
                        .isEmpty()) {
                    fault(name(piece), "covers a flaw of the cloth");
                }
            }
        }
    }

    /** Where a piece is matched, the stripes are where they are asked for. */
    private void stripes(LaidPiece piece) {
        piece.part().match().ifPresent(m -> {
            double along = piece.lie().apply(m.at()).x() - m.alongMm();
            off(piece, along, lay.cloth().stripeAlongMm(), "crosswise");
            if (piece.part().form() != CutForm.AT_FOLD) {
                off(piece, piece.grainFrom().y(), lay.cloth().stripeAcrossMm(), "lengthwise");
            }
        });
    }

    private void off(LaidPiece piece, double mm, double stripe, String which) {
        if (stripe > 0 && Math.abs(Math.IEEEremainder(mm, stripe)) > BOUND_MM) {
            fault(
                    name(piece),
                    String.format(Locale.ROOT, "lies %.2f mm off a %s stripe", Math.IEEEremainder(mm, stripe), which));
        }
    }

    private static Geometry box(Flaw flaw, double low, double high) {
        if (high <= low) {
            return JTS.createPolygon();
        }
        return JTS.toGeometry(new org.locationtech.jts.geom.Envelope(flaw.fromMm(), flaw.toMm(), low, high));
    }

    private void fault(String place, String what) {
        faults.add(Finding.warning(place, what + "."));
    }

    private static String name(LaidPiece piece) {
        return piece.part().piece().name();
    }

    private static Geometry polygon(Path line) {
        List<Coordinate> ring = new ArrayList<>();
        for (Point p : line.flattened(FLAT_MM)) {
            Coordinate next = new Coordinate(p.x(), p.y());
            if (ring.isEmpty() || ring.get(ring.size() - 1).distance(next) > SAME_MM) {
                ring.add(next);
            }
        }
        while (ring.size() > 1 && ring.get(ring.size() - 1).distance(ring.get(0)) <= SAME_MM) {
            ring.remove(ring.size() - 1);
        }
        ring.add(ring.get(0).copy());
        return JTS.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** Corners that lie closer together are one: left in, they trip the overlay of the library. */
    private static final double SAME_MM = 1e-6;
}
