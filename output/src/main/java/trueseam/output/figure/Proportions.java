package trueseam.output.figure;

import static trueseam.output.figure.FigureSize.*;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.Population;
import trueseam.garment.measure.Measure;

/**
 * Heights and breadths of one person's figure: hers where her measures tell them, else those of the median surveyed person,
 * as tall and as broad as the measures that are known say.
 *
 * <p>Laws: (1) heights come in the order of the body; (2) no size is less than 0.55 or more than 1.9 times what the drawing
 * would have without that measure, so that a slip of the pen spoils the drawing no further than that; (3) the value in the
 * table is never changed by this.
 */
final class Proportions {
    /** Broadest and narrowest people surveyed lie within 0.65 and 1.7 of the medians; a little room beyond. */
    private static final double LEAST = 0.55;

    private static final double MOST = 1.9;

    /** No two levels closer than this, mm, so that two tapes can be told apart. */
    private static final double APART_MM = 18;

    private static final List<FigureSize> DOWNWARDS = List.of(
            STATURE, CHIN, NAPE, SHOULDER_POINT, ARMPIT, BUST, UNDER_BUST, WAIST, HIP, CROTCH, KNEE, CALF, ANKLE);

    private final Map<FigureSize, Double> sizes = new EnumMap<>(FigureSize.class);
    private final Map<Measure, Double> chosenMm = new EnumMap<>(Measure.class);

    private final Population people;

    private Proportions(Population people) {
        this.people = people;
    }

    /** The median person. */
    static Proportions of(Population people) {
        return of(Body.named("median"), people);
    }

    static Proportions of(Body body, Population people) {
        Proportions made = new Proportions(people);
        double tall = ratio(body, people, STATURE).orElse(1);
        double broad = List.of(BUST_BREADTH, WAIST_BREADTH, HIP_BREADTH).stream()
                .map(size -> ratio(body, people, size))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .average()
                .orElse(tall);
        for (FigureSize size : FigureSize.values()) {
            double else_ =
                    switch (size.sort()) {
                        case HEIGHT, BONE -> tall;
                        case TRUNK -> broad;
                        case LIMB -> Math.sqrt(tall * broad);
                    };
            made.sizes.put(size, size.median(people) * ratio(body, people, size).orElse(else_));
        }
        made.lengths(body);
        made.inOrder();
        for (Measure measure : Measure.values()) {
            if (measure.isChosen()) {
                mm(body, measure).ifPresent(mm -> made.chosenMm.put(measure, mm));
            }
        }
        return made;
    }

    double mm(FigureSize size) {
        return sizes.get(size);
    }

    /** Whose medians stand in. */
    Population people() {
        return people;
    }

    /** Where the hem of a length that the wearer chose lies below its start, if she chose it. */
    OptionalDouble chosen(Measure measure) {
        Double mm = chosenMm.get(measure);
        return mm == null ? OptionalDouble.empty() : OptionalDouble.of(mm);
    }

    /** Her measure over the tape's median, within the limits of law 2. */
    private static OptionalDouble ratio(Body body, Population people, FigureSize size) {
        Optional<Double> mm = size.measure().flatMap(measure -> known(body, measure));
        return mm.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(within(mm.get() / size.tapeMedian(people), LEAST, MOST));
    }

    /** A man's chest is drawn where a woman's bust is. */
    private static Optional<Double> known(Body body, Measure measure) {
        Optional<Double> own = mm(body, measure);
        return measure == Measure.BUST_GIRTH ? own.or(() -> mm(body, Measure.CHEST_GIRTH)) : own;
    }

    private static Optional<Double> mm(Body body, Measure measure) {
        return body.value(measure).map(BodyValue::mm);
    }

    /**
     * Levels that are found by a length from another level. A tape on the body is a little longer than the straight drop: the
     * shares are those of the medians (drop by the survey's heights, tape from memory).
     */
    private void lengths(Body body) {
        mm(body, Measure.BACK_WAIST_LENGTH)
                .filter(mm -> mm(body, Measure.OUTSIDE_LEG_LENGTH).isEmpty())
                .ifPresent(mm -> below(NAPE, 0.94 * mm, WAIST));
        mm(body, Measure.SCYE_DEPTH).ifPresent(mm -> below(NAPE, 0.92 * mm, ARMPIT));
        mm(body, Measure.WAIST_TO_HIP).ifPresent(mm -> below(WAIST, 0.97 * mm, HIP));
        double bustDrop = mm(BUST) - mm(UNDER_BUST);
        mm(body, Measure.BUST_POINT_HEIGHT).ifPresent(mm -> {
            double neckSide = mm(SHOULDER_POINT) + mm(SHOULDER_DROP);
            move(BUST, neckSide - 0.83 * mm);
            move(UNDER_BUST, mm(BUST) - bustDrop);
        });
        mm(body, Measure.SHOULDER_LENGTH)
                .filter(mm -> mm(body, Measure.ACROSS_BACK_SHOULDER_WIDTH).isEmpty())
                .ifPresent(mm -> {
                    double run = Math.sqrt(Math.max(mm * mm - mm(SHOULDER_DROP) * mm(SHOULDER_DROP), mm * mm / 4));
                    double breadth = mm(NECK_BASE_BREADTH) + 2 * run;
                    sizes.put(
                            SHOULDER_BREADTH, within(breadth, 0.8 * mm(SHOULDER_BREADTH), 1.25 * mm(SHOULDER_BREADTH)));
                });
    }

    private void below(FigureSize from, double dropMm, FigureSize level) {
        move(level, mm(from) - dropMm);
    }

    /** A level moves no further than a tenth of the height it had. */
    private void move(FigureSize level, double heightMm) {
        sizes.put(level, within(heightMm, 0.9 * mm(level), 1.1 * mm(level)));
    }

    private void inOrder() {
        for (int i = 1; i < DOWNWARDS.size(); i++) {
            double above = mm(DOWNWARDS.get(i - 1));
            sizes.merge(DOWNWARDS.get(i), above - APART_MM, Math::min);
        }
        sizes.merge(NECK_PIT, mm(NAPE) - APART_MM, Math::min);
        sizes.merge(NECK_BREADTH, 0.96 * mm(NECK_BASE_BREADTH), Math::min);
        sizes.merge(NECK_BREADTH, 0.86 * mm(HEAD_BREADTH), Math::min);
        sizes.merge(SHOULDER_BREADTH, mm(NECK_BASE_BREADTH) + 8 * APART_MM, Math::max);
        sizes.merge(CREASE_BREADTH, mm(SHOULDER_BREADTH) - APART_MM, Math::min);
        sizes.merge(BUST_POINTS, 0.8 * mm(BUST_BREADTH), Math::min);
    }

    private static double within(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
