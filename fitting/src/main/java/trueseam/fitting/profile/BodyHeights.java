package trueseam.fitting.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatGirths;
import trueseam.garment.flat.GirthAt;
import trueseam.garment.measure.Measure;

/** Finds the height of each girth of a body on the garment, and what the garment has there. */
final class BodyHeights {

    /** Beyond an end of the garment by no more than this a girth is compared with the end: 1 in, as a hem or wrist sits. */
    private static final double AT_THE_END_MM = 25.4;

    /** Girths nearer to each other than this are one height: no tape is laid closer. */
    private static final double APART_MM = 5;

    /** The fullest calf lies about this far from the knee to the floor (common practice, as the flat pattern is read). */
    private static final double CALF_SHARE = 1.0 / 3;

    private final Body body;
    private final GarmentKind kind;
    private final EaseTable wearing;
    private final FlatGirths before;
    private final FlatGirths after;

    BodyHeights(Body body, GarmentKind kind, EaseTable wearing, FlatGirths before, FlatGirths after) {
        this.body = body;
        this.kind = kind;
        this.wearing = wearing;
        this.before = before;
        this.after = after;
    }

    private record Height(double mm, HeightFrom from) {}

    List<EaseAt> levels() {
        List<EaseAt> levels = new ArrayList<>();
        for (Measure measure : girths()) {
            Optional<BodyValue> value = body.value(measure);
            Optional<Height> height = height(measure).flatMap(this::onTheGarment);
            if (value.isPresent()
                    && height.isPresent()
                    && isFree(levels, height.get().mm())) {
                levels.add(level(measure, value.get(), height.get()));
            }
        }
        return levels;
    }

    private List<Measure> girths() {
        return switch (after.part()) {
            case TRUNK -> {
                Measure chest = body.value(Measure.BUST_GIRTH).isPresent() ? Measure.BUST_GIRTH : Measure.CHEST_GIRTH;
                yield List.of(chest, Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.TOP_HIP_GIRTH);
            }
            case LEG -> List.of(Measure.THIGH_GIRTH, Measure.KNEE_GIRTH, Measure.CALF_GIRTH);
            case ARM -> List.of(Measure.UPPER_ARM_GIRTH, Measure.ELBOW_GIRTH, Measure.WRIST_GIRTH);
        };
    }

    private static boolean isFree(List<EaseAt> levels, double heightMm) {
        return levels.stream().allMatch(level -> Math.abs(level.body().heightMm() - heightMm) >= APART_MM);
    }

    private EaseAt level(Measure measure, BodyValue value, Height height) {
        double markedBefore = marked(before, measure).orElse(height.mm());
        return new EaseAt(
                BodyGirth.of(measure, value, height.mm(), height.from(), ease(measure)),
                girth(before, height.from().isOfPattern() ? markedBefore : height.mm()),
                girth(after, height.mm()),
                marked(before, measure),
                marked(after, measure));
    }

    private Optional<EaseRow> ease(Measure measure) {
        return wearing.wearing(kind, measure);
    }

    /** At an end that lies a little short of the height, the end. */
    private static OptionalDouble girth(FlatGirths garment, double heightMm) {
        double held = Math.max(garment.bottomMm(), Math.min(garment.topMm(), heightMm));
        return Math.abs(held - heightMm) <= AT_THE_END_MM ? garment.at(held) : OptionalDouble.empty();
    }

    private Optional<Height> onTheGarment(Height height) {
        return girth(after, height.mm()).isPresent()
                        || girth(before, height.mm()).isPresent()
                ? Optional.of(height)
                : Optional.empty();
    }

    private static OptionalDouble marked(FlatGirths garment, Measure measure) {
        return garment.level(measure)
                .map(GirthAt::heightMm)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private Optional<Height> height(Measure measure) {
        OptionalDouble own =
                switch (measure) {
                    case BUST_GIRTH, CHEST_GIRTH -> bust();
                    case HIP_GIRTH -> hip();
                    case KNEE_GIRTH -> knee();
                    case CALF_GIRTH -> calf();
                    case ELBOW_GIRTH -> down(Measure.UPPER_ARM_LENGTH);
                    case WRIST_GIRTH -> down(Measure.ARM_LENGTH);
                    default -> OptionalDouble.empty();
                };
        OptionalDouble paper = marked(after, measure);
        if (own.isPresent() && paper.isPresent() && own.getAsDouble() > after.topMm() + AT_THE_END_MM) {
            return Optional.of(new Height(paper.getAsDouble(), HeightFrom.PATTERN_FOR_TOO_HIGH));
        }
        if (own.isPresent()) {
            return Optional.of(new Height(own.getAsDouble(), HeightFrom.BODY));
        }
        OptionalDouble defined =
                switch (measure) {
                    case WAIST_GIRTH, THIGH_GIRTH -> OptionalDouble.of(0);
                    case TOP_HIP_GIRTH -> topHip();
                    default -> OptionalDouble.empty();
                };
        if (defined.isPresent()) {
            return Optional.of(new Height(defined.getAsDouble(), HeightFrom.DEFINITION));
        }
        return paper.isPresent() ? Optional.of(new Height(paper.getAsDouble(), HeightFrom.PATTERN)) : Optional.empty();
    }

    /** From the waist up to the bust point, as the garment hangs from the shoulder. */
    private OptionalDouble bust() {
        OptionalDouble over = mm(Measure.FRONT_WAIST_LENGTH_OVER_BUST);
        OptionalDouble down = mm(Measure.BUST_POINT_HEIGHT);
        if (over.isEmpty() || down.isEmpty()) {
            return OptionalDouble.empty();
        }
        double easeInLength = ease(Measure.FRONT_WAIST_LENGTH_OVER_BUST)
                .map(EaseRow::minimumMm)
                .orElse(0.0);
        return OptionalDouble.of(over.getAsDouble() + easeInLength - down.getAsDouble());
    }

    /** Down the side seam as it is down the side of the body; where the seam is too short for that, straight down. */
    private OptionalDouble hip() {
        OptionalDouble down = mm(Measure.WAIST_TO_HIP);
        if (down.isEmpty()) {
            return down;
        }
        OptionalDouble onTheSide = after.downTheSideMm(down.getAsDouble());
        return onTheSide.isPresent() ? onTheSide : OptionalDouble.of(-down.getAsDouble());
    }

    /** About half way between waist and hip (shared definition of the measure, common practice). */
    private OptionalDouble topHip() {
        return height(Measure.HIP_GIRTH)
                .map(hip -> OptionalDouble.of(hip.mm() / 2))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble knee() {
        OptionalDouble leg = mm(Measure.INSIDE_LEG_LENGTH);
        OptionalDouble knee = mm(Measure.KNEE_HEIGHT);
        return leg.isPresent() && knee.isPresent()
                ? OptionalDouble.of(knee.getAsDouble() - leg.getAsDouble())
                : OptionalDouble.empty();
    }

    private OptionalDouble calf() {
        OptionalDouble knee = knee();
        return knee.isPresent()
                ? OptionalDouble.of(knee.getAsDouble()
                        - CALF_SHARE * mm(Measure.KNEE_HEIGHT).getAsDouble())
                : knee;
    }

    private OptionalDouble down(Measure length) {
        OptionalDouble mm = mm(length);
        return mm.isPresent() ? OptionalDouble.of(-mm.getAsDouble()) : mm;
    }

    private OptionalDouble mm(Measure measure) {
        return body.value(measure).map(value -> OptionalDouble.of(value.mm())).orElse(OptionalDouble.empty());
    }
}
