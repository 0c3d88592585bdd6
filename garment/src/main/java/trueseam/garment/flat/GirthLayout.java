package trueseam.garment.flat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Sides;

/** Lays the heights of a garment on its pieces and finds where each stretch of it begins and ends. */
final class GirthLayout {

    private final Pattern pattern;

    GirthLayout(Pattern pattern) {
        this.pattern = pattern;
    }

    /** A bodice or dress from the underarm to its waist edge or hem. */
    Optional<GirthStretch> above() {
        LevelLines lines = new LevelLines(only(PieceKind::isUpper));
        lines.line(LevelName.WAIST, 0).lineOfFront(LevelName.BUST).lineOfFront(LevelName.HIP);
        List<LaidPiece> laid = lines.laid(2);
        OptionalDouble underarm = laid.stream()
                .map(piece -> piece.topMm(EdgeRole.SIDE))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
        if (underarm.isEmpty()) {
            return Optional.empty();
        }
        double top = underarm.getAsDouble();
        GirthAt upper = new GirthAt(top, GirthStretch.acrossBelow(laid, top));
        Optional<double[]> waist = reach(laid, EdgeRole.WAIST);
        if (waist.isPresent()) {
            return measured(lines.pieces(), Measure.WAIST_GIRTH)
                    .map(mm -> new GirthStretch(laid, upper, new GirthAt(0, mm), top, Math.max(0, waist.get()[1])));
        }
        return reach(laid, EdgeRole.HEM).map(hem -> new GirthStretch(laid, upper, hem(laid, hem), top, hem[1]));
    }

    /** A skirt from its waist edge to the hem. */
    Optional<GirthStretch> skirt() {
        LevelLines lines = new LevelLines(only(PieceKind::isSkirt));
        lines.line(GirthLayout::sideWaist, 0).lineOfFront(LevelName.HIP);
        List<LaidPiece> laid = lines.laid(2);
        Optional<double[]> waist = reach(laid, EdgeRole.WAIST);
        Optional<double[]> hem = reach(laid, EdgeRole.HEM);
        if (waist.isEmpty() || hem.isEmpty()) {
            return Optional.empty();
        }
        return measured(lines.pieces(), Measure.WAIST_GIRTH)
                .map(mm -> new GirthStretch(
                        laid, new GirthAt(0, mm), hem(laid, hem.get()), Math.min(0, waist.get()[0]), hem.get()[1]));
    }

    /** Trousers from the waist edge to the crotch level. */
    Optional<GirthStretch> seat() {
        LevelLines lines = new LevelLines(only(PieceKind::isTrouser));
        lines.line(GirthLayout::sideWaist, 0).lineOfFront(LevelName.HIP).lineOfFront(LevelName.CROTCH);
        List<LaidPiece> laid = lines.laid(2);
        Optional<double[]> waist = reach(laid, EdgeRole.WAIST);
        OptionalDouble crotch = lines.heightOfFront(LevelName.CROTCH);
        if (waist.isEmpty() || crotch.isEmpty()) {
            return Optional.empty();
        }
        double bottom = crotch.getAsDouble();
        return measured(lines.pieces(), Measure.WAIST_GIRTH)
                .map(mm -> new GirthStretch(
                        laid,
                        new GirthAt(0, mm),
                        new GirthAt(bottom, GirthStretch.acrossAbove(laid, bottom)),
                        Math.min(0, waist.get()[0]),
                        bottom));
    }

    /** One leg of trousers, from the crotch to the hem. */
    Optional<GirthStretch> leg() {
        LevelLines lines = new LevelLines(onOneSide(PieceKind::isTrouser));
        lines.line(Heights::thigh, 0)
                .lineOfFront(LevelName.KNEE)
                .lineOfFront(piece -> Heights.end(piece, EdgeRole.SIDE, false));
        List<LaidPiece> laid = lines.laid(1);
        Optional<double[]> hem = reach(laid, EdgeRole.HEM);
        return hem.flatMap(reach -> measured(lines.pieces(), Measure.THIGH_GIRTH)
                .map(mm -> new GirthStretch(laid, new GirthAt(0, mm), hem(laid, reach), 0, reach[1])));
    }

    /** One sleeve, from underarm to wrist. */
    Optional<GirthStretch> arm() {
        List<Piece> sleeves = onOneSide(PieceKind::isSleeve);
        Optional<Piece> withCrown = sleeves.stream()
                .filter(piece -> !piece.edgesOf(EdgeRole.CAP).isEmpty()
                        && piece.level(LevelName.BICEP).isPresent())
                .findFirst();
        if (withCrown.isEmpty()) {
            return Optional.empty();
        }
        Piece upper = withCrown.get();
        double crown = upper.edgesOf(EdgeRole.CAP).stream()
                .mapToDouble(edge -> edge.path().bounds().maxY())
                .max()
                .orElseThrow();
        LevelLines lines = new LevelLines(sleeves);
        double bicep = upper.level(LevelName.BICEP).getAsDouble() - crown;
        lines.line(piece -> piece.level(LevelName.BICEP), bicep)
                .line(LevelName.ELBOW, upper.level(LevelName.ELBOW).orElse(crown + bicep) - crown);
        List<LaidPiece> laid = lines.laid(1);
        Optional<double[]> wrist = reach(laid, EdgeRole.WRIST);
        Optional<Double> girth = measured(sleeves, Measure.WRIST_GIRTH);
        Optional<Double> top = measured(sleeves, Measure.UPPER_ARM_GIRTH);
        if (wrist.isEmpty() || girth.isEmpty() || top.isEmpty()) {
            return Optional.empty();
        }
        double length = measured(sleeves, Measure.ARM_LENGTH).orElse(-wrist.get()[0]);
        double underarm = laid.stream()
                .map(piece -> piece.topMm(EdgeRole.UNDERARM))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .reduce(bicep, Math::min);
        return Optional.of(new GirthStretch(
                laid,
                new GirthAt(bicep, top.get()),
                new GirthAt(-length, girth.get()),
                underarm,
                Math.max(-length, wrist.get()[1])));
    }

    /** The heights of the levels that measures are compared at. */
    Map<Measure, Double> heights(BodyPart part) {
        Map<Measure, Double> heights = new EnumMap<>(Measure.class);
        switch (part) {
            case TRUNK -> trunkHeights(heights);
            case LEG -> {
                LevelLines lines = new LevelLines(onOneSide(PieceKind::isTrouser));
                lines.line(Heights::thigh, 0);
                heights.put(Measure.THIGH_GIRTH, 0.0);
                lines.heightOfFront(piece -> piece.level(LevelName.KNEE))
                        .ifPresent(height -> heights.put(Measure.KNEE_GIRTH, height));
                lines.heightOfFront(Heights::calf).ifPresent(height -> heights.put(Measure.CALF_GIRTH, height));
            }
            case ARM ->
                arm().ifPresent(sleeve -> {
                    heights.put(Measure.UPPER_ARM_GIRTH, sleeve.top().heightMm());
                    sleeve.pieces().stream()
                            .filter(piece ->
                                    piece.piece().level(LevelName.ELBOW).isPresent())
                            .findFirst()
                            .ifPresent(piece -> heights.put(
                                    Measure.ELBOW_GIRTH,
                                    piece.ties()
                                            .heightMm(piece.piece()
                                                    .level(LevelName.ELBOW)
                                                    .getAsDouble())));
                    heights.put(Measure.WRIST_GIRTH, sleeve.bottom().heightMm());
                });
        }
        return heights;
    }

    private void trunkHeights(Map<Measure, Double> heights) {
        heights.put(Measure.WAIST_GIRTH, 0.0);
        LevelLines upper = new LevelLines(only(PieceKind::isUpper));
        upper.line(LevelName.WAIST, 0);
        upper.heightOfFront(LevelName.BUST).ifPresent(height -> {
            heights.put(Measure.BUST_GIRTH, height);
            heights.put(Measure.CHEST_GIRTH, height);
        });
        LevelLines lower = new LevelLines(only(kind -> kind.isSkirt() || kind.isTrouser()));
        lower.line(GirthLayout::sideWaist, 0);
        for (LevelLines lines : List.of(upper, lower)) {
            lines.heightOfFront(LevelName.HIP).ifPresent(height -> heights.put(Measure.HIP_GIRTH, height));
            lines.heightOfFront(Heights::topHip).ifPresent(height -> heights.put(Measure.TOP_HIP_GIRTH, height));
        }
    }

    /** The hem sweep; of a top, which has none, across at its hem. */
    private GirthAt hem(List<LaidPiece> laid, double[] reach) {
        List<Piece> pieces = laid.stream().map(LaidPiece::piece).toList();
        return new GirthAt(
                reach[0], FlatPattern.hemSweepMm(of(pieces)).orElseGet(() -> GirthStretch.acrossAbove(laid, reach[1])));
    }

    private Optional<Double> measured(List<Piece> pieces, Measure measure) {
        return pieces.isEmpty()
                ? Optional.empty()
                : FlatPattern.measure(of(pieces), measure).map(FlatMeasure::mm);
    }

    private Pattern of(List<Piece> pieces) {
        return new Pattern(
                pattern.name(), pattern.size(), pattern.sizeTable(), pattern.source(), pieces, List.of(), Map.of());
    }

    private List<Piece> only(Predicate<PieceKind> on) {
        return pattern.pieces().stream().filter(piece -> on.test(piece.kind())).toList();
    }

    /** What there is once on either side is read on the right, as {@link FlatPattern} does. */
    private List<Piece> onOneSide(Predicate<PieceKind> on) {
        return only(on).stream()
                .filter(piece -> !Sides.of(piece.name()).equals(Optional.of(Side.LEFT)))
                .toList();
    }

    private static Optional<double[]> reach(List<LaidPiece> laid, EdgeRole role) {
        return laid.stream().flatMap(piece -> piece.reach(role).stream()).reduce((a, b) ->
                new double[] {Math.min(a[0], b[0]), Math.max(a[1], b[1])});
    }

    private static OptionalDouble sideWaist(Piece piece) {
        return Heights.end(piece, EdgeRole.SIDE, true);
    }
}
