package trueseam.checks.cloth;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;

/**
 * What a dressmaker would look at on a layout (common practice, trade.md sections 8 and 9), measured from the pattern and from where its pieces
 * lie, by nothing that the search or the program's own proof uses: a fold, for example, is folded open before its flaws are looked for.
 */
final class LayRules {

    private static final double BOUND_MM = 0.01;
    private static final double CLOSE_MM = 0.002;

    private final Pattern pattern;
    private final Lay lay;
    private final Cloth cloth;
    private final List<String> broken = new ArrayList<>();

    private LayRules(Pattern pattern, Lay lay) {
        this.pattern = pattern;
        this.lay = lay;
        this.cloth = lay.cloth();
    }

    /** What is broken, in words. */
    static List<String> broken(Pattern pattern, List<Piece> asked, Lay lay) {
        LayRules rules = new LayRules(pattern, lay);
        Map<String, List<LaidPiece>> byName = lay.pieces().stream()
                .collect(Collectors.groupingBy(p -> p.part().piece().name()));
        for (Piece piece : asked) {
            rules.cutAsOften(piece, byName.getOrDefault(piece.name(), List.of()));
        }
        if (byName.size() != asked.size()) {
            rules.broken.add("laid are " + byName.keySet());
        }
        for (LaidPiece laid : lay.pieces()) {
            rules.shape(laid);
            rules.onCloth(laid);
            rules.grain(laid);
            rules.fold(laid);
            rules.flaws(laid);
        }
        rules.apart();
        rules.stripes(byName);
        rules.lengths();
        return rules.broken;
    }

    /** As many as the pattern asks for; of those of a single layer that are no mirror image of themselves half on their face. */
    private void cutAsOften(Piece piece, List<LaidPiece> laid) {
        double cut = 0;
        int faceDown = 0;
        for (LaidPiece p : laid) {
            boolean atFold = atFold(piece);
            cut += cloth.layers() == Layers.SINGLE || atFold || p.part().spare() ? 1 : 2;
            faceDown += p.lie().mirrored() != laid.get(0).lie().mirrored() ? 1 : 0;
        }
        check(cut == piece.cutCount(), piece.name() + " is cut " + cut + " times");
        if (cloth.layers() == Layers.SINGLE && piece.fold().isEmpty()) {
            check(faceDown == piece.cutCount() / 2, piece.name() + " lies " + faceDown + " times on its other face");
        }
    }

    /** Turned, turned over and shifted, never stretched; whole where it is opened. */
    private void shape(LaidPiece laid) {
        Piece piece = laid.part().piece();
        boolean opened = piece.fold().isPresent() && !atFold(piece);
        double area = Math.abs(CuttingLine.of(piece).signedArea()) * (opened ? 2 : 1);
        double now = Math.abs(laid.cutting().signedArea());
        check(Math.abs(now - area) < 1e-4 * area, piece.name() + " has an area of " + now + " and not of " + area);
        double grain = piece.grain().from().distanceTo(piece.grain().to());
        check(Math.abs(laid.grainFrom().distanceTo(laid.grainTo()) - grain) < 1e-6, piece.name() + " is stretched");
    }

    private void onCloth(LaidPiece laid) {
        double washed = cloth.widthMm() * (1 - cloth.shrinkWidth());
        double free =
                cloth.layers() == Layers.LENGTHWISE ? washed / 2 - cloth.selvageMm() : washed - 2 * cloth.selvageMm();
        for (Point p : corners(laid)) {
            if (p.x() < -BOUND_MM || p.y() < -BOUND_MM || p.y() > free + BOUND_MM || p.x() > lay.usedMm() + BOUND_MM) {
                broken.add(laid.part().piece().name() + " lies beside the cloth at " + p);
                return;
            }
        }
    }

    private void grain(LaidPiece laid) {
        String name = laid.part().piece().name();
        double along = laid.grainTo().x() - laid.grainFrom().x();
        double across = laid.grainTo().y() - laid.grainFrom().y();
        double offDegrees = Math.toDegrees(Math.atan2(Math.abs(across), Math.abs(along)));
        boolean atFold = atFold(laid.part().piece());
        double allowed = Math.toDegrees(0.001)
                + (atFold || cloth.striped() ? 0 : lay.wishes().tiltDegrees());
        check(offDegrees <= allowed, name + " has its grain " + offDegrees + " degrees off");
        if (cloth.oneWay() || cloth.stripeAlongMm() > 0) {
            check(along > 0, name + " lies head to tail");
        }
    }

    private void fold(LaidPiece laid) {
        Piece piece = laid.part().piece();
        if (!atFold(piece)) {
            return;
        }
        Edge fold = piece.edge(piece.fold().orElseThrow());
        Point a = laid.lie().apply(fold.path().start());
        Point b = laid.lie().apply(fold.path().end());
        check(Math.abs(a.y()) < BOUND_MM && Math.abs(b.y()) < BOUND_MM, piece.name() + " lies off the fold");
    }

    /** On the cloth folded open: measured from the lower edge of the cloth, selvage included. */
    private void flaws(LaidPiece laid) {
        double middle = cloth.widthMm() * (1 - cloth.shrinkWidth()) / 2;
        for (Flaw flaw : cloth.flaws()) {
            Area hole = new Area(new Rectangle2D.Double(
                    flaw.fromMm(), flaw.lowMm(), flaw.toMm() - flaw.fromMm(), flaw.highMm() - flaw.lowMm()));
            boolean folded = cloth.layers() == Layers.LENGTHWISE;
            for (int layer = 0; layer < (folded ? 2 : 1); layer++) {
                Path2D line = new Path2D.Double();
                for (Point p : corners(laid)) {
                    double y = !folded ? cloth.selvageMm() + p.y() : layer == 0 ? middle + p.y() : middle - p.y();
                    if (line.getCurrentPoint() == null) {
                        line.moveTo(p.x(), y);
                    } else {
                        line.lineTo(p.x(), y);
                    }
                }
                line.closePath();
                Area common = new Area(line);
                common.intersect(hole);
                Rectangle2D covered = common.getBounds2D();
                check(
                        Math.min(covered.getWidth(), covered.getHeight()) < BOUND_MM,
                        laid.part().piece().name() + " covers " + flaw);
            }
        }
    }

    /** The least distance of two closed lines that do not cross is that of a corner of the one from a side of the other. */
    private void apart() {
        List<List<Point>> lines = lay.pieces().stream().map(LayRules::corners).toList();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < lines.size(); j++) {
                double gap = i == j ? Double.POSITIVE_INFINITY : distance(lines.get(i), lines.get(j));
                check(
                        gap >= lay.wishes().gapMm() - BOUND_MM,
                        lay.pieces().get(i).part().piece().name() + " lies " + gap + " mm from "
                                + lay.pieces().get(j).part().piece().name());
            }
        }
    }

    private double distance(List<Point> corners, List<Point> line) {
        double least = Double.POSITIVE_INFINITY;
        double near = lay.wishes().gapMm() + 1;
        double lowX = line.stream().mapToDouble(Point::x).min().orElseThrow() - near;
        double highX = line.stream().mapToDouble(Point::x).max().orElseThrow() + near;
        double lowY = line.stream().mapToDouble(Point::y).min().orElseThrow() - near;
        double highY = line.stream().mapToDouble(Point::y).max().orElseThrow() + near;
        for (Point p : corners) {
            for (int k = 1; lowX < p.x() && p.x() < highX && lowY < p.y() && p.y() < highY && k < line.size(); k++) {
                Point a = line.get(k - 1);
                Point b = line.get(k);
                least = Math.min(least, Line2D.ptSegDist(a.x(), a.y(), b.x(), b.y(), p.x(), p.y()));
            }
        }
        return least;
    }

    /** Along the cloth side seams and inseams run on at their lower ends; across it all grainlines lie on one stripe or another. */
    private void stripes(Map<String, List<LaidPiece>> byName) {
        if (cloth.stripeAlongMm() > 0) {
            for (Seam seam : pattern.seams()) {
                List<LaidPiece> one = byName.getOrDefault(seam.first().get(0).piece(), List.of());
                List<LaidPiece> other = byName.getOrDefault(seam.second().get(0).piece(), List.of());
                boolean said = lay.findings().stream().anyMatch(f -> f.place().equals(seam.name()));
                if (one.isEmpty() || other.isEmpty() || said) {
                    continue;
                }
                Edge edge = one.get(0).part().piece().edge(seam.first().get(0).edge());
                Edge into =
                        other.get(0).part().piece().edge(seam.second().get(0).edge());
                if (edge.role() == EdgeRole.SIDE || edge.role() == EdgeRole.INSEAM) {
                    for (LaidPiece b : other) {
                        onStripe(seam.name(), lower(one.get(0), edge) - lower(b, into), cloth.stripeAlongMm());
                    }
                }
            }
        }
        for (LaidPiece laid : lay.pieces()) {
            if (cloth.stripeAcrossMm() > 0 && !atFold(laid.part().piece())) {
                onStripe(laid.part().piece().name(), laid.grainFrom().y(), cloth.stripeAcrossMm());
            }
        }
    }

    private static double lower(LaidPiece laid, Edge edge) {
        Point a = edge.path().start();
        Point b = edge.path().end();
        return laid.lie().apply(a.y() < b.y() ? a : b).x();
    }

    private void onStripe(String where, double mm, double repeat) {
        check(Math.abs(Math.IEEEremainder(mm, repeat)) < 2 * BOUND_MM, where + " lies off the stripes by " + mm);
    }

    /** What is needed ends where the last piece ends; more is bought for what the wash takes; a remnant that is too short is said. */
    private void lengths() {
        double last = lay.pieces().stream()
                .flatMap(p -> corners(p).stream())
                .mapToDouble(Point::x)
                .max()
                .orElseThrow();
        double layers = cloth.layers() == Layers.CROSSWISE ? 2 : 1;
        check(
                Math.abs(last * layers - lay.neededMm()) < 2 * BOUND_MM,
                "needed are " + lay.neededMm() + ", laid " + last);
        double left = lay.toBuyMm() * (1 - cloth.shrinkLength());
        check(Math.abs(left - lay.neededMm()) < 1e-6, "of what is bought " + left + " are left after the wash");
        boolean missing = lay.findings().stream().anyMatch(f -> f.sentence().contains("are missing"));
        boolean tooShort =
                cloth.haveMm().isPresent() && lay.neededMm() > cloth.haveMm().orElseThrow() + BOUND_MM;
        check(missing == tooShort, "a remnant of " + cloth.haveMm() + " for " + lay.neededMm());
    }

    private boolean atFold(Piece piece) {
        return cloth.layers() == Layers.LENGTHWISE && LaySetting.foldsAlongGrain(piece);
    }

    private static List<Point> corners(LaidPiece laid) {
        List<Point> corners = new ArrayList<>(laid.cutting().flattened(CLOSE_MM));
        corners.add(corners.get(0));
        return corners;
    }

    private void check(boolean holds, String otherwise) {
        if (!holds) {
            broken.add(otherwise);
        }
    }
}
