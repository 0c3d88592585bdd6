package trueseam.cloth.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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
    private final List<LayFault> faults = new ArrayList<>();

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
        return look(lay).stream().map(f -> said(lay, f)).toList();
    }

    /**
     * What is wrong with a layout, for whoever shows it.
     *
     * @param lay the layout
     * @return every fault with the pieces concerned; empty: it is valid
     */
    public static List<LayFault> look(Lay lay) {
        LayProof proof = new LayProof(lay);
        proof.lookAtAll();
        return List.copyOf(proof.faults);
    }

    private static Finding said(Lay lay, LayFault fault) {
        String names = fault.pieces().stream()
                .map(i -> lay.pieces().get(i).part().piece().name())
                .collect(Collectors.joining(" and "));
        double amount = fault.amount();
        return Finding.warning(
                names,
                switch (fault.kind()) {
                    case ON_EACH_OTHER -> new Apart(true, amount).words(0) + ".";
                    case TOO_NEAR -> new Apart(false, amount).words(lay.wishes().gapMm()) + ".";
                    case OFF_CLOTH -> words("lies %.2f mm beside the cloth that is used.", amount);
                    case OFF_GRAIN -> words("has its grain %.1f mm in a metre off the cloth's.", amount);
                    case HEAD_TO_TAIL -> "lies head to tail on cloth that has one way up.";
                    case OFF_FOLD -> words("lies with its fold %.2f mm off the fold.", amount);
                    case ON_FLAW -> "covers a flaw of the cloth.";
                    case OFF_CROSSWISE_STRIPE -> words("lies %.2f mm off a crosswise stripe.", amount);
                    case OFF_LENGTHWISE_STRIPE -> words("lies %.2f mm off a lengthwise stripe.", amount);
                });
    }

    private static String words(String pattern, double amount) {
        return String.format(Locale.ROOT, pattern, amount);
    }

    private void lookAtAll() {
        List<Geometry> shapes =
                lay.pieces().stream().map(p -> polygon(p.cutting())).toList();
        for (int i = 0; i < shapes.size(); i++) {
            LaidPiece piece = lay.pieces().get(i);
            onCloth(i, shapes.get(i));
            grain(i, piece);
            fold(i, piece);
            flaws(i, shapes.get(i));
            stripes(i, piece);
            for (int j = 0; j < i; j++) {
                apart(i, shapes.get(i), j, shapes.get(j));
            }
        }
    }

    private void apart(int a, Geometry one, int b, Geometry other) {
        Apart.fault(one, other, lay.wishes().gapMm(), BOUND_MM)
                .ifPresent(f -> faults.add(new LayFault(
                        f.overlapping() ? LayFault.Kind.ON_EACH_OTHER : LayFault.Kind.TOO_NEAR,
                        List.of(b, a),
                        f.amount())));
    }

    private void onCloth(int at, Geometry shape) {
        var e = shape.getEnvelopeInternal();
        double out = Math.max(
                Math.max(-e.getMinX(), e.getMaxX() - lay.usedMm()),
                Math.max(-e.getMinY(), e.getMaxY() - lay.cloth().usableMm()));
        if (out > BOUND_MM) {
            fault(LayFault.Kind.OFF_CLOTH, at, out);
        }
    }

    private void grain(int at, LaidPiece piece) {
        double dx = piece.grainTo().x() - piece.grainFrom().x();
        double dy = piece.grainTo().y() - piece.grainFrom().y();
        double off = Math.abs(dy) / Math.hypot(dx, dy);
        double allowed =
                GRAIN_MM_PER_M / 1000 + Math.sin(Math.toRadians(lay.wishes().tiltDegrees()));
        if (off > allowed) {
            fault(LayFault.Kind.OFF_GRAIN, at, 1000 * off);
        }
        if (lay.cloth().headsUp() && dx < 0) {
            fault(LayFault.Kind.HEAD_TO_TAIL, at, 0);
        }
    }

    private void fold(int at, LaidPiece piece) {
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
                fault(LayFault.Kind.OFF_FOLD, at, p.y());
                return;
            }
        }
    }

    private void flaws(int at, Geometry shape) {
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
                    fault(LayFault.Kind.ON_FLAW, at, 0);
                }
            }
        }
    }

    /** Where a piece is matched, the stripes are where they are asked for. */
    private void stripes(int at, LaidPiece piece) {
        piece.part().match().ifPresent(m -> {
            double along = piece.lie().apply(m.at()).x() - m.alongMm();
            off(LayFault.Kind.OFF_CROSSWISE_STRIPE, at, along, lay.cloth().stripeAlongMm());
            if (piece.part().form() != CutForm.AT_FOLD) {
                off(
                        LayFault.Kind.OFF_LENGTHWISE_STRIPE,
                        at,
                        piece.grainFrom().y(),
                        lay.cloth().stripeAcrossMm());
            }
        });
    }

    private void off(LayFault.Kind kind, int at, double mm, double stripe) {
        double off = stripe > 0 ? Math.abs(Math.IEEEremainder(mm, stripe)) : 0;
        if (off > BOUND_MM) {
            fault(kind, at, off);
        }
    }

    private static Geometry box(Flaw flaw, double low, double high) {
        if (high <= low) {
            return JTS.createPolygon();
        }
        return JTS.toGeometry(new org.locationtech.jts.geom.Envelope(flaw.fromMm(), flaw.toMm(), low, high));
    }

    private void fault(LayFault.Kind kind, int at, double amount) {
        faults.add(new LayFault(kind, List.of(at), amount));
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
