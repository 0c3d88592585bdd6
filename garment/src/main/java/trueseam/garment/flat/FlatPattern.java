package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Sides;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Measures a flat pattern.
 *
 * <table>
 * <caption>How each measure is read (common practice)</caption>
 * <tr><td>bust, hip</td><td>across each half piece at its level, darts left out, twice (a whole piece, cut once and not on a
 * fold, once; of what it has on either side, such as two shoulders, the mean)</td></tr>
 * <tr><td>waist</td><td>along each waist edge, darts left out, twice; of a dress across at the waist level</td></tr>
 * <tr><td>across front, back</td><td>centre to armhole at the level half way down the armhole, twice</td></tr>
 * <tr><td>lengths at the centre</td><td>along the grain from the neck to the waist level</td></tr>
 * <tr><td>upper arm</td><td>straight from underarm to underarm of the sleeve; of a sleeve of two pieces across each</td></tr>
 * <tr><td>top hip</td><td>across each half piece half way between waist and hip level, darts left out, twice</td></tr>
 * <tr><td>thigh</td><td>across each leg piece from inseam to outseam at the crotch level, or at the crotch point where that lies
 * lower</td></tr>
 * <tr><td>calf</td><td>across each leg piece a third of the way from the knee level to the hem</td></tr>
 * <tr><td>parts of a front, back or sleeve</td><td>each as the whole piece would be, and added up</td></tr>
 * <tr><td>a kimono's upper arm</td><td>square to the overarm seam, 2 in below where the side seam turns into the sleeve, front and
 * back added up</td></tr>
 * <tr><td>a kimono's sleeve</td><td>along the overarm seam from the shoulder point, or from the centre back: from the neck straight
 * to the shoulder point and on along the seam to the stitching line of the wrist, which a pattern of the time had 3/8 in inside its
 * edge [ND1921]</td></tr>
 * <tr><td>a raglan's shoulder and sleeve</td><td>the shoulder along the leg of the dart; the sleeve from its end, the shoulder point</td></tr>
 * <tr><td>crotch depth</td><td>along the grain from the side waist to the crotch level</td></tr>
 * <tr><td>crotch length</td><td>along the crotch edge, front and back apart</td></tr>
 * </table>
 */
public final class FlatPattern {

    private final Pattern pattern;

    private FlatPattern(Pattern pattern) {
        this.pattern = pattern;
    }

    /**
     * Takes one measure of a pattern.
     *
     * @param pattern the pattern
     * @param measure the measure
     * @return the measure with its working, or nothing if the pattern has no piece to take it on
     */
    public static Optional<FlatMeasure> measure(Pattern pattern, Measure measure) {
        List<FlatPart> parts = new FlatPattern(pattern).parts(measure);
        return parts.isEmpty() ? Optional.empty() : Optional.of(new FlatMeasure(measure, parts));
    }

    /**
     * Takes every measure that the pattern has.
     *
     * @param pattern the pattern
     * @return the measures, in the order of {@link Measure}
     */
    public static List<FlatMeasure> all(Pattern pattern) {
        List<FlatMeasure> found = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            measure(pattern, measure).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    /**
     * The hem sweep: along the hem of skirts and dresses all round, of trousers round one leg. No measure of the body is compared
     * with it.
     *
     * @param pattern the pattern
     * @return mm, or nothing if no piece has a hem
     */
    public static OptionalDouble hemSweepMm(Pattern pattern) {
        FlatPattern flat = new FlatPattern(pattern);
        List<FlatPart> parts =
                new ArrayList<>(flat.along(EdgeRole.HEM, k -> k.isSkirt() || k.isDress(), "along the hem", 2));
        parts.addAll(flat.along(EdgeRole.HEM, PieceKind::isTrouser, "along the hem", 1));
        return parts.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        parts.stream().mapToDouble(FlatPart::totalMm).sum());
    }

    private List<FlatPart> parts(Measure measure) {
        return switch (measure) {
            case BUST_GIRTH, CHEST_GIRTH -> across(LevelName.BUST, PieceKind::isUpper, "across at the bust level", 2);
            case WAIST_GIRTH -> waist();
            case HIP_GIRTH ->
                across(LevelName.HIP, k -> k.isSkirt() || k.isDress() || k.isTrouser(), "across at the hip level", 2);
            case TOP_HIP_GIRTH -> across(Heights::topHip, "across half way between waist and hip level", 2);
            case CALF_GIRTH -> across(Heights::calf, "across a third of the way from knee to hem", 1);
            case ACROSS_FRONT_WIDTH ->
                across(LevelName.ACROSS, k -> k.isUpper() && k.isFront(), "centre front to armhole", 2);
            case ACROSS_BACK_WIDTH ->
                across(LevelName.ACROSS, k -> k.isUpper() && k.isBack(), "centre back to armhole", 2);
            case SHOULDER_LENGTH -> shoulder();
            case NECK_BASE_GIRTH ->
                along(EdgeRole.NECK, k -> k.isUpper() || k == PieceKind.RAGLAN_SLEEVE, "along the neck line", 2);
            case ARMSCYE_GIRTH -> along(EdgeRole.ARMHOLE, PieceKind::isUpper, "along the armhole", 1);
            case BACK_WAIST_LENGTH -> neckToWaist(k -> k.isUpper() && k.isBack());
            case FRONT_WAIST_LENGTH -> neckToWaist(k -> k.isUpper() && k.isFront());
            case FRONT_WAIST_LENGTH_OVER_BUST -> overBust();
            case BUST_POINT_HEIGHT -> bustPointHeight();
            case BUST_POINT_WIDTH -> bustPointWidth();
            case UPPER_ARM_GIRTH -> upperArm();
            case ELBOW_GIRTH -> across(LevelName.ELBOW, PieceKind::isSleeve, "across at the elbow level", 1);
            case WRIST_GIRTH -> along(EdgeRole.WRIST, k -> k.isSleeve() || k.isKimono(), "along the wrist edge", 1);
            case ARM_LENGTH -> sleeveLength();
            case NAPE_TO_WRIST_LENGTH ->
                pattern.firstOf(PieceKind.KIMONO_BACK).flatMap(Overarm::fromNape).stream()
                        .toList();
            case UPPER_ARM_LENGTH -> crownToElbow();
            case SKIRT_LENGTH -> along(EdgeRole.CENTRE, k -> k.isSkirt() && k.isFront(), "along the centre front", 1);
            case DRESS_LENGTH -> along(EdgeRole.CENTRE, k -> k == PieceKind.DRESS_BACK, "along the centre back", 1);
            case BODY_RISE -> crotchDepth();
            case FRONT_CROTCH_LENGTH ->
                along(EdgeRole.CROTCH, k -> k == PieceKind.TROUSER_FRONT, "along the front crotch seam", 1);
            case BACK_CROTCH_LENGTH ->
                along(EdgeRole.CROTCH, k -> k == PieceKind.TROUSER_BACK, "along the back crotch seam", 1);
            case TOTAL_CROTCH_LENGTH -> along(EdgeRole.CROTCH, PieceKind::isTrouser, "along the crotch seam", 1);
            case THIGH_GIRTH -> thigh();
            case KNEE_GIRTH -> across(LevelName.KNEE, PieceKind::isTrouser, "across at the knee level", 1);
            case INSIDE_LEG_LENGTH ->
                along(EdgeRole.INSEAM, k -> k == PieceKind.TROUSER_FRONT, "along the front inseam", 1);
            case TROUSER_LENGTH -> along(EdgeRole.SIDE, k -> k == PieceKind.TROUSER_FRONT, "along the outseam", 1);
            case WAIST_TO_HIP -> waistToHip();
            case STATURE,
                    UPPER_CHEST_GIRTH,
                    UNDER_BUST_GIRTH,
                    ACROSS_BACK_SHOULDER_WIDTH,
                    SHOULDER_SLOPE,
                    NECK_GIRTH,
                    SCYE_DEPTH,
                    TRUNK_CIRCUMFERENCE,
                    ANKLE_GIRTH,
                    OUTSIDE_LEG_LENGTH,
                    KNEE_HEIGHT -> List.of();
        };
    }

    private List<FlatPart> across(LevelName level, Predicate<PieceKind> on, String what, int times) {
        return across(piece -> on.test(piece.kind()) ? piece.level(level) : OptionalDouble.empty(), what, times);
    }

    private List<FlatPart> across(Function<Piece, OptionalDouble> height, String what, int times) {
        List<FlatPart> parts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            OptionalDouble y = height.apply(piece);
            if (y.isPresent() && isTaken(piece, times)) {
                Span.at(piece, y.getAsDouble())
                        .ifPresent(span -> parts.add(new FlatPart(
                                piece.name(), what, span.widthMm(), Math.min(times, piece.timesAround()))));
            }
        }
        return parts;
    }

    private List<FlatPart> along(EdgeRole role, Predicate<PieceKind> on, String what, int times) {
        List<FlatPart> parts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            List<Edge> edges = on.test(piece.kind()) ? piece.edgesOf(role) : List.of();
            if (!edges.isEmpty() && isTaken(piece, times)) {
                double mm = 0;
                for (Edge edge : edges) {
                    mm += piece.sewnLength(edge.name());
                }
                boolean bothSides = piece.timesAround() == 1 && times == 1 && edges.size() == 2;
                parts.add(new FlatPart(
                        piece.name(), what, bothSides ? mm / 2 : mm, Math.min(times, piece.timesAround())));
            }
        }
        return parts;
    }

    /** What a pattern has once on either side, such as a sleeve, is read on the right where the pieces are parted by side. */
    private static boolean isTaken(Piece piece, int times) {
        return times > 1 || !Sides.of(piece.name()).equals(Optional.of(Side.LEFT));
    }

    private List<FlatPart> waist() {
        List<FlatPart> parts = new ArrayList<>(
                along(EdgeRole.WAIST, k -> k.isUpper() || k.isSkirt() || k.isTrouser(), "along the waist edge", 2));
        parts.addAll(across(LevelName.WAIST, PieceKind::isDress, "across at the waist level", 2));
        return parts;
    }

    private List<FlatPart> neckToWaist(Predicate<PieceKind> on) {
        List<FlatPart> parts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Optional<Edge> centre = piece.firstOf(EdgeRole.CENTRE);
            OptionalDouble waist = piece.level(LevelName.WAIST);
            if (on.test(piece.kind()) && centre.isPresent() && isTaken(piece, 1)) {
                double top = centre.get().path().bounds().maxY();
                boolean yoke = piece.kind() == PieceKind.BACK_YOKE;
                if (yoke) {
                    double seam = centre.get().path().bounds().minY();
                    parts.add(new FlatPart(piece.name(), "along the centre from neck to yoke seam", top - seam, 1));
                } else if (waist.isPresent()) {
                    parts.add(new FlatPart(
                            piece.name(), "along the centre from neck to waist", top - waist.getAsDouble(), 1));
                }
            }
        }
        return parts;
    }

    private List<FlatPart> shoulder() {
        Optional<Piece> raglan = pattern.firstOf(PieceKind.RAGLAN_SLEEVE);
        return raglan.isPresent()
                ? raglan.flatMap(RaglanTop::shoulder).stream().toList()
                : along(EdgeRole.SHOULDER, k -> k.isUpper() && k.isFront(), "along the front shoulder seam", 1);
    }

    private Optional<Piece> upperFront() {
        return pattern.firstOf(PieceKind.BODICE_FRONT)
                .or(() -> pattern.firstOf(PieceKind.KIMONO_FRONT))
                .or(() -> pattern.firstOf(PieceKind.RAGLAN_FRONT))
                .or(() -> pattern.firstOf(PieceKind.BODICE_CENTRE_FRONT))
                .or(() -> pattern.firstOf(PieceKind.DRESS_FRONT));
    }

    /** The upper end of the shoulder: a shoulder slopes down from the neck, whichever way the piece lies. */
    private static Optional<Point> neckPoint(Piece piece) {
        return piece.firstOf(EdgeRole.SHOULDER).map(edge -> {
            Point start = edge.path().start();
            Point end = edge.path().end();
            return lower(start, end).equals(start) ? end : start;
        });
    }

    private List<FlatPart> bustPointHeight() {
        return upperFront()
                .flatMap(piece -> neckPoint(piece).flatMap(neck -> piece.landmark(Landmark.BUST_POINT)
                        .map(bust -> new FlatPart(piece.name(), "neck point to bust point", neck.distanceTo(bust), 1))))
                .map(List::of)
                .orElse(List.of());
    }

    private List<FlatPart> overBust() {
        return upperFront()
                .filter(piece -> piece.level(LevelName.WAIST).isPresent())
                .flatMap(piece -> neckPoint(piece).flatMap(neck -> piece.landmark(Landmark.BUST_POINT)
                        .map(bust -> new FlatPart(
                                piece.name(),
                                "neck point over the bust point to the waist level",
                                neck.distanceTo(bust)
                                        + bust.y()
                                        - piece.level(LevelName.WAIST).getAsDouble(),
                                1))))
                .map(List::of)
                .orElse(List.of());
    }

    private List<FlatPart> bustPointWidth() {
        return upperFront()
                .flatMap(piece -> piece.landmark(Landmark.BUST_POINT).flatMap(bust -> piece.firstOf(EdgeRole.CENTRE)
                        .map(centre -> new FlatPart(
                                piece.name(),
                                "centre front to bust point",
                                Math.abs(bust.x() - xAt(centre, bust.y())),
                                2))))
                .map(List::of)
                .orElse(List.of());
    }

    /** Where an edge is at a height; its lower end if it does not reach that height. */
    private static double xAt(Edge edge, double y) {
        return edge.path()
                .atLevel(y)
                .map(PathPlace::point)
                .orElseGet(() -> lower(edge.path().start(), edge.path().end()))
                .x();
    }

    private static Point lower(Point a, Point b) {
        return a.y() < b.y() ? a : b;
    }

    /** The first sleeve, or its piece with the crown, whose cap is drawn in two halves. */
    private Optional<Piece> sleeve() {
        return pattern.firstOf(PieceKind.SLEEVE)
                .or(() -> pattern.firstOf(PieceKind.UPPER_SLEEVE))
                .filter(piece -> piece.edgesOf(EdgeRole.CAP).size() == 2);
    }

    /** The halves of the cap as they follow each other at the crown, wherever the list of edges begins. */
    private static List<Path> capHalves(Piece sleeve) {
        Path one = sleeve.edgesOf(EdgeRole.CAP).get(0).path();
        Path other = sleeve.edgesOf(EdgeRole.CAP).get(1).path();
        return one.end().isNear(other.start(), Path.CHAIN_MM) ? List.of(one, other) : List.of(other, one);
    }

    private List<FlatPart> upperArm() {
        List<FlatPart> kimono = pattern.pieces().stream()
                .filter(piece -> piece.kind().isKimono() && isTaken(piece, 1))
                .flatMap(piece -> Overarm.upperArm(piece).stream())
                .toList();
        if (!kimono.isEmpty()) {
            return kimono;
        }
        Optional<Piece> raglan = pattern.firstOf(PieceKind.RAGLAN_SLEEVE);
        if (raglan.isPresent()) {
            return raglan.flatMap(RaglanTop::upperArm).stream().toList();
        }
        if (pattern.firstOf(PieceKind.UPPER_SLEEVE).isPresent()) {
            return across(LevelName.BICEP, PieceKind::isSleeve, "across at the upper arm level", 1);
        }
        return sleeve().map(piece -> {
                    List<Path> caps = capHalves(piece);
                    double mm = caps.get(0).start().distanceTo(caps.get(1).end());
                    return List.of(new FlatPart(piece.name(), "underarm to underarm", mm, 1));
                })
                .orElse(List.of());
    }

    private static Point crown(Piece sleeve) {
        return capHalves(sleeve).get(0).end();
    }

    private List<FlatPart> sleeveLength() {
        Optional<Piece> raglan = pattern.firstOf(PieceKind.RAGLAN_SLEEVE);
        Optional<Piece> kimono = pattern.firstOf(PieceKind.KIMONO_FRONT);
        if (raglan.isPresent()) {
            return raglan.flatMap(RaglanTop::toWrist).stream().toList();
        }
        if (kimono.isPresent()) {
            return along(EdgeRole.OVERARM, k -> k == PieceKind.KIMONO_FRONT, "along the overarm seam", 1);
        }
        return sleeve().flatMap(piece -> piece.firstOf(EdgeRole.WRIST).map(wrist -> {
                    Point crown = crown(piece);
                    double low = wrist.path().crossings(crown, new Vec(0, 1)).stream()
                            .findFirst()
                            .map(place -> place.point().y())
                            .orElse(wrist.path().start().y());
                    return List.of(new FlatPart(piece.name(), "crown to wrist edge", crown.y() - low, 1));
                }))
                .orElse(List.of());
    }

    private List<FlatPart> crownToElbow() {
        Optional<Piece> raglan = pattern.firstOf(PieceKind.RAGLAN_SLEEVE);
        if (raglan.isPresent()) {
            return raglan.flatMap(RaglanTop::toElbow).stream().toList();
        }
        return sleeve().filter(piece -> piece.level(LevelName.ELBOW).isPresent())
                .map(piece -> List.of(new FlatPart(
                        piece.name(),
                        "crown to elbow level",
                        crown(piece).y() - piece.level(LevelName.ELBOW).getAsDouble(),
                        1)))
                .orElse(List.of());
    }

    private List<FlatPart> crotchDepth() {
        return pattern.firstOf(PieceKind.TROUSER_FRONT)
                .filter(piece -> piece.level(LevelName.CROTCH).isPresent())
                .flatMap(piece -> piece.firstOf(EdgeRole.SIDE)
                        .map(side -> List.of(new FlatPart(
                                piece.name(),
                                "side waist to crotch level",
                                side.path().bounds().maxY()
                                        - piece.level(LevelName.CROTCH).getAsDouble(),
                                1))))
                .orElse(List.of());
    }

    /** From inseam to outseam: a level that still passes above a dropped crotch point would read into the crotch curve. */
    private List<FlatPart> thigh() {
        List<FlatPart> parts = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Optional<Edge> inseam = piece.firstOf(EdgeRole.INSEAM);
            Optional<Edge> side = piece.firstOf(EdgeRole.SIDE);
            OptionalDouble y = Heights.thigh(piece);
            if (y.isPresent() && isTaken(piece, 1) && inseam.isPresent() && side.isPresent()) {
                double across = xAt(side.get(), y.getAsDouble()) - innerAt(inseam.get(), y.getAsDouble());
                parts.add(new FlatPart(piece.name(), "inseam to outseam at the crotch", Math.abs(across), 1));
            }
        }
        return parts;
    }

    private static double innerAt(Edge inseam, double y) {
        Point crotchPoint = lower(inseam.path().start(), inseam.path().end())
                        .equals(inseam.path().start())
                ? inseam.path().end()
                : inseam.path().start();
        return y == crotchPoint.y() ? crotchPoint.x() : xAt(inseam, y);
    }

    private List<FlatPart> waistToHip() {
        for (Piece piece : pattern.pieces()) {
            OptionalDouble hip = piece.level(LevelName.HIP);
            Optional<Edge> side = piece.firstOf(EdgeRole.SIDE);
            if (piece.kind().isFront() && !piece.kind().isDress() && hip.isPresent() && side.isPresent()) {
                var place = side.get().path().atLevel(hip.getAsDouble());
                if (place.isPresent()) {
                    Path path = side.get().path();
                    boolean upwards = path.start().y() < path.end().y();
                    double along = place.get().alongMm();
                    double mm = upwards ? path.length() - along : along;
                    return List.of(new FlatPart(piece.name(), "side waist to hip level along the side", mm, 1));
                }
            }
        }
        return List.of();
    }
}
