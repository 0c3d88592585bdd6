package trueseam.garment.blend;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** One piece drawn across the nest. One piece, one thread. */
final class PieceBlend {

    private static final double STRAIGHT = 1 + 1e-9;

    /** Centres farther apart are told. */
    private static final double TOLD_MM = 0.05;

    private final SizesByLevel wanted;
    private final Piece base;
    private final Map<String, Piece> pieces;
    private final List<Finding> findings;

    PieceBlend(String baseSize, Map<String, Piece> lying, SizesByLevel wanted, List<Finding> findings) {
        this.wanted = wanted;
        this.base = lying.get(baseSize);
        this.findings = findings;
        this.pieces = onCentre(lying);
    }

    /** A straight centre stays straight: sizes that are nested elsewhere are slid across until their centres lie on one line. */
    private Map<String, Piece> onCentre(Map<String, Piece> lying) {
        Optional<Edge> centre = base.firstOf(EdgeRole.CENTRE).filter(PieceBlend::isStraight);
        if (centre.isEmpty()) {
            return lying;
        }
        Map<String, Piece> slid = new LinkedHashMap<>();
        Vec along = centre.get().path().end().minus(centre.get().path().start()).unit();
        double most = 0;
        for (Map.Entry<String, Piece> entry : lying.entrySet()) {
            Piece piece = entry.getValue();
            Optional<Edge> own = piece.firstOf(EdgeRole.CENTRE).filter(PieceBlend::isStraight);
            if (own.isPresent()) {
                double off = along.cross(
                        own.get().path().start().minus(centre.get().path().start()));
                piece = Lie.moved(piece, Motion.slide(along.left().times(-off)));
                most = Math.max(most, Math.abs(off));
            }
            slid.put(entry.getKey(), piece);
        }
        if (most > TOLD_MM) {
            findings.add(Finding.note(
                    base.name(),
                    String.format(
                            java.util.Locale.ROOT,
                            "Its sizes are nested with their centres up to %.1f mm apart; they were laid on one another at the"
                                    + " centre, so that it stays straight.",
                            most)));
        }
        return slid;
    }

    private static boolean isStraight(Edge edge) {
        return edge.length()
                <= STRAIGHT * edge.path().start().distanceTo(edge.path().end());
    }

    /** Its edges that run from level to level, or nothing where the sizes do not correspond. */
    Optional<Map<String, Along>> along() {
        Optional<String> why = unlike();
        if (why.isPresent()) {
            findings.add(Finding.warning(
                    base.name(),
                    why.get() + "; it is kept in size " + PatternBlend.lyingAs(base.kind(), wanted)
                            + " from top to bottom."));
            return Optional.empty();
        }
        Map<String, Along> along = new LinkedHashMap<>();
        if (pieces.size() == 1) {
            return Optional.of(along);
        }
        int n = base.edges().size();
        for (int i = 0; i < n; i++) {
            Edge edge = base.edges().get(i);
            if (across(edge.role()).isEmpty()) {
                BlendLevel start = corner(base.edges().get((i + n - 1) % n), edge);
                BlendLevel end = corner(edge, base.edges().get((i + 1) % n));
                boolean down = edge.path().start().y() > edge.path().end().y();
                along.put(
                        edge.name(),
                        Along.of(edge.name(), pieces, wanted, down ? start : end, down ? end : start, down));
            }
        }
        return Optional.of(along);
    }

    private Optional<String> unlike() {
        List<String> names = base.edges().stream().map(Edge::name).toList();
        for (Map.Entry<String, Piece> entry : pieces.entrySet()) {
            List<String> others =
                    entry.getValue().edges().stream().map(Edge::name).toList();
            if (!others.equals(names)) {
                return Optional.of(
                        "In size " + entry.getKey() + " it has the edges " + others + " and in another " + names);
            }
        }
        int n = base.edges().size();
        for (int i = 0; i < n; i++) {
            Optional<BlendLevel> one = across(base.edges().get(i).role());
            Optional<BlendLevel> next = across(base.edges().get((i + 1) % n).role());
            if (one.isPresent() && next.isPresent() && !wanted.at(one.get()).equals(wanted.at(next.get()))) {
                return Optional.of("Its " + base.edges().get(i).name() + " meets its "
                        + base.edges().get((i + 1) % n).name() + ", and they are wanted in two sizes");
            }
        }
        return Optional.empty();
    }

    /** The level whose size an edge across the piece has wholly; nothing for edges that run from level to level. */
    private static Optional<BlendLevel> across(EdgeRole role) {
        return switch (role) {
            case NECK, SHOULDER, ARMHOLE, YOKE, RAGLAN, OVERARM -> Optional.of(BlendLevel.FRAME);
            case WAIST -> Optional.of(BlendLevel.WAIST);
            case HEM -> Optional.of(BlendLevel.HEM);
            case WRIST -> Optional.of(BlendLevel.WRIST);
            case CENTRE, SIDE, CAP, UNDERARM, INSEAM, CROTCH, PANEL, OTHER -> Optional.empty();
        };
    }

    /** The level of the corner between two edges. */
    private BlendLevel corner(Edge before, Edge after) {
        Optional<BlendLevel> level = across(before.role()).or(() -> across(after.role()));
        if (level.isPresent()) {
            return level.get();
        }
        if (EnumSet.of(before.role(), after.role()).equals(EnumSet.of(EdgeRole.UNDERARM, EdgeRole.SIDE))) {
            return BlendLevel.FRAME; // where the sleeve is cut in one
        }
        if (before.role() == EdgeRole.CAP && after.role() == EdgeRole.CAP) {
            return BlendLevel.FRAME;
        }
        if (before.role() == EdgeRole.CAP || after.role() == EdgeRole.CAP) {
            return BlendLevel.BICEP;
        }
        if (before.role() == EdgeRole.CROTCH || after.role() == EdgeRole.CROTCH) {
            return BlendLevel.HIP;
        }
        return nearest(after.path().start().y());
    }

    /** The level that lies nearest to a height. */
    private BlendLevel nearest(double y) {
        BlendLevel best = base.kind().isSleeve() ? BlendLevel.BICEP : BlendLevel.FRAME;
        double apart = Double.POSITIVE_INFINITY;
        for (Level level : base.levels()) {
            if (Math.abs(level.y() - y) < apart) {
                apart = Math.abs(level.y() - y);
                best = of(level.name());
            }
        }
        return best;
    }

    private static BlendLevel of(LevelName name) {
        return switch (name) {
            case ACROSS -> BlendLevel.FRAME;
            case BUST -> BlendLevel.BUST;
            case BODICE_LENGTH, WAIST -> BlendLevel.WAIST;
            case HIP, SKIRT_LENGTH, CROTCH_DEPTH, CROTCH, ABOVE_KNEE -> BlendLevel.HIP;
            case KNEE, BELOW_KNEE -> BlendLevel.KNEE;
            case BICEP, ABOVE_ELBOW, ELBOW, BELOW_ELBOW -> BlendLevel.BICEP;
        };
    }

    /** The size of a level; of one that the piece does not have, such as a waist of a sleeve, its own. */
    private Piece at(BlendLevel level) {
        return pieces.getOrDefault(wanted.at(level), base);
    }

    /** The piece with its edges drawn across, and everything else of the size of its level. */
    Piece drawn(Map<String, Along> along) {
        if (pieces.size() == 1) {
            return base;
        }
        List<Edge> edges = new ArrayList<>();
        List<Dart> darts = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (Edge edge : base.edges()) {
            Optional<BlendLevel> level = across(edge.role());
            if (level.isPresent()) {
                Piece piece = at(level.get());
                edges.add(piece.edge(edge.name()));
                darts.addAll(piece.dartsOn(edge.name()));
                piece.notches().stream()
                        .filter(n -> n.edge().equals(edge.name()))
                        .forEach(notches::add);
            } else {
                DrawnAcross across = DrawnAcross.of(along.get(edge.name()));
                edges.add(across.edge());
                darts.addAll(across.darts());
                notches.addAll(across.notches());
            }
        }
        at(BlendLevel.WAIST).darts().stream()
                .filter(d -> d instanceof Dart.DiamondDart)
                .forEach(darts::add);
        return base.toBuilder()
                .edges(edges)
                .darts(darts)
                .notches(notches)
                .levels(levels())
                .landmarks(landmarks())
                .markings(markings())
                .build();
    }

    private List<Level> levels() {
        return base.levels().stream()
                .map(l -> at(of(l.name())).levels().stream()
                        .filter(o -> o.name() == l.name())
                        .findFirst()
                        .orElse(l))
                .toList();
    }

    private List<Landmark> landmarks() {
        List<Landmark> landmarks = new ArrayList<>();
        for (Landmark landmark : base.landmarks()) {
            BlendLevel level = landmark.name().equals(Landmark.BUST_POINT)
                    ? BlendLevel.BUST
                    : nearest(landmark.at().y());
            at(level).landmarks().stream()
                    .filter(l -> l.name().equals(landmark.name()))
                    .findFirst()
                    .ifPresent(landmarks::add);
        }
        return landmarks;
    }

    /** Each size's lines where that size is taken; a line of the same name in two sizes is taken once. */
    private List<Marking> markings() {
        Map<String, Marking> markings = new LinkedHashMap<>();
        pieces.forEach((size, piece) -> piece.markings().forEach(marking -> {
            Path path = marking.path();
            Point middle = path.pointAt(path.length() / 2);
            if (wanted.at(nearest(middle.y())).equals(size)) {
                markings.putIfAbsent(marking.name(), marking);
            }
        }));
        return List.copyOf(markings.values());
    }
}
