package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Way;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Between the strip that the search knows and the cloth: every shape is half a gap larger, but for its side at the fold. */
final class Placing {

    private final Cloth cloth;
    private final List<ClothPart> parts;
    private final double halfGapMm;
    private final double lowerMm;

    Placing(Cloth cloth, double gapMm, List<ClothPart> parts) {
        this.cloth = cloth;
        this.parts = parts;
        halfGapMm = gapMm / 2;
        lowerMm = cloth.layers() == Layers.LENGTHWISE ? 0 : halfGapMm;
    }

    /** A piece as it lies on the cloth. */
    LaidPiece piece(Placed p) {
        ClothPart part = parts.get(p.part());
        Lie lie = lie(part, p);
        return new LaidPiece(
                part,
                p,
                lie,
                cutting(part, p),
                lie.apply(part.piece().grain().from()),
                lie.apply(part.piece().grain().to()));
    }

    private Lie lie(ClothPart part, Placed p) {
        return lie(p.way().mirrored() ? part.base().turnedOver() : part.base(), p);
    }

    private Path cutting(ClothPart part, Placed p) {
        Lie drawn = new Lie(false, Motion.NONE);
        return lie(p.way().mirrored() ? drawn.turnedOver() : drawn, p).apply(part.cutting());
    }

    private Lie lie(Lie from, Placed p) {
        return from.then(Math.toRadians(p.way().turnDegrees()), p.x() - halfGapMm, p.y() - lowerMm);
    }

    /** A corner of a shape of the strip as it lies before it is moved. */
    static Point laid(Point corner, Way way) {
        return new Lie(false, Motion.NONE)
                .then(Math.toRadians(way.turnDegrees()), 0, 0)
                .apply(way.mirrored() ? new Point(corner.x(), -corner.y()) : corner);
    }

    /** Each spot takes a copy of its piece that is cut with that face up. */
    List<Optional<Placed>> placed(List<Spot> spots) {
        int[] left = parts.stream().mapToInt(ClothPart::copies).toArray();
        List<Optional<Placed>> all = new ArrayList<>();
        for (Spot spot : spots) {
            int at = 0;
            while (at < parts.size() && (left[at] == 0 || !takes(parts.get(at), spot))) {
                at++;
            }
            if (at == parts.size()) {
                all.add(Optional.empty());
            } else {
                left[at]--;
                all.add(Optional.of(placed(at, spot)));
            }
        }
        return all;
    }

    private static boolean takes(ClothPart part, Spot spot) {
        return part.piece().name().equals(spot.piece())
                && part.ways().stream().anyMatch(w -> w.mirrored() == spot.way().mirrored());
    }

    private Placed placed(int at, Spot spot) {
        ClothPart part = parts.get(at);
        Point grain = lie(part, new Placed(at, spot.way(), 0, 0))
                .apply(part.piece().grain().from());
        double y = part.form() == CutForm.AT_FOLD ? 0 : spot.acrossMm() - grain.y();
        return new Placed(at, spot.way(), spot.alongMm() - grain.x(), y);
    }

    static Spot spot(LaidPiece p, boolean byHand) {
        Point grain = p.grainFrom();
        return new Spot(p.part().piece().name(), p.placed().way(), grain.x(), grain.y(), byHand);
    }

    /** Moved; on cloth with a repeat to the nearest place where its stripes match. */
    Spot moved(LaidPiece piece, double dxMm, double dyMm) {
        return onStripes(piece, spot(piece, true).moved(dxMm, dyMm));
    }

    /** Turned about the middle of its outline. */
    Spot turned(LaidPiece piece, Way way) {
        Placed now = piece.placed();
        LaidPiece then = piece(new Placed(now.part(), way, now.x(), now.y()));
        Point was = piece.cutting().bounds().centre();
        Point is = then.cutting().bounds().centre();
        return onStripes(then, spot(then, true).moved(was.x() - is.x(), was.y() - is.y()));
    }

    private Spot onStripes(LaidPiece piece, Spot spot) {
        return piece.part()
                .match()
                .map(match -> {
                    double along = spot.alongMm()
                            + piece.lie().apply(match.at()).x()
                            - piece.grainFrom().x()
                            - match.alongMm();
                    return spot.moved(
                            -off(along, cloth.stripeAlongMm()), -off(spot.acrossMm(), cloth.stripeAcrossMm()));
                })
                .orElse(spot);
    }

    private static double off(double mm, double stripe) {
        return stripe > 0 ? Math.IEEEremainder(mm, stripe) : 0;
    }
}
