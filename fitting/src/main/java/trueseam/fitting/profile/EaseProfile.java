package trueseam.fitting.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.flat.FlatGirths;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.join.MonotoneCurve;

/**
 * Garment girth, body girth and least ease by height, for one part of the body, before and after the alterations.
 *
 * <p>Garment and body are brought to one scale at the zero of the part: the waist, the crotch, or the shoulder point. A bust lies as
 * high above the waist as the lengths over the bust say, with the least ease in length on top, for the garment hangs from the shoulder;
 * a hip as far down the side seam as it is down the side of the body.
 *
 * @param part which part of the body
 * @param before the pattern as it was
 * @param after the pattern as it is now
 * @param levels body and garment where the body was measured, from the highest to the lowest
 */
public record EaseProfile(BodyPart part, FlatGirths before, FlatGirths after, List<EaseAt> levels) {

    /** How far apart heights are read: finer than the eye parts two lines of a picture of a whole garment. */
    public static final double STEP_MM = 5;

    /** Heights nearer to each other than this are one: far below the pencil line. */
    private static final double ONE_HEIGHT_MM = 0.1;

    // From top to bottom.
    public EaseProfile {
        levels = levels.stream()
                .sorted(Comparator.comparingDouble(
                                (EaseAt level) -> level.body().heightMm())
                        .reversed())
                .toList();
    }

    /**
     * The profiles of a fit.
     *
     * @param fit the fit
     * @return one for each part of the body that the garment goes round and that was measured there; none of a paper pattern, whose
     *     pieces are not in the computer
     */
    public static List<EaseProfile> of(FitResult fit) {
        if (fit.schematic()) {
            return List.of();
        }
        List<EaseProfile> found = new ArrayList<>();
        for (BodyPart part : BodyPart.values()) {
            Optional<FlatGirths> before = FlatGirths.of(fit.worked().original(), part);
            Optional<FlatGirths> after = FlatGirths.of(fit.worked().altered(), part);
            if (before.isPresent() && after.isPresent()) {
                List<EaseAt> levels = new BodyHeights(
                                fit.body(), fit.kind(), fit.choices().wearing(), before.get(), after.get())
                        .levels();
                if (!levels.isEmpty()) {
                    found.add(new EaseProfile(part, before.get(), after.get(), levels));
                }
            }
        }
        return List.copyOf(found);
    }

    /**
     * The body by height: through every measured girth, between them drawn in smoothly.
     *
     * @return height in x, girth in y, mm, from the lowest to the highest; nothing where only one girth is known
     */
    public Optional<Path> bodyCurve() {
        return curve(BodyGirth::mm).map(MonotoneCurve::path);
    }

    /**
     * The body with the least ease round it, where two girths at least have one.
     *
     * @return height in x, girth in y, mm, from the lowest to the highest
     */
    public Optional<Path> leastCurve() {
        return least().map(MonotoneCurve::path);
    }

    /**
     * Everything by height, from the highest to the lowest end of the garment, with every measured height among them.
     *
     * @param stepMm how far apart at most, mm, above zero
     * @return the readings, the highest first
     */
    public List<EaseReading> readings(double stepMm) {
        Optional<MonotoneCurve> bodyCurve = curve(BodyGirth::mm);
        Optional<MonotoneCurve> leastCurve = least();
        List<EaseReading> all = new ArrayList<>();
        for (double height : heights(stepMm)) {
            Optional<EaseAt> measured = measuredAt(height);
            all.add(measured.map(this::reading)
                    .orElseGet(() -> new EaseReading(
                            height,
                            before.at(height),
                            after.at(height),
                            at(bodyCurve, height),
                            at(leastCurve, height),
                            Optional.empty())));
        }
        return List.copyOf(all);
    }

    private List<Double> heights(double stepMm) {
        NavigableSet<Double> heights = new TreeSet<>(Comparator.reverseOrder());
        for (FlatGirths garment : List.of(before, after)) {
            heights.add(garment.topMm());
            heights.add(garment.bottomMm());
        }
        int first = (int) Math.floor(heights.first() / stepMm);
        int last = (int) Math.ceil(heights.last() / stepMm);
        for (int i = first; i >= last; i--) {
            heights.add(i * stepMm);
        }
        for (EaseAt level : levels) {
            double measured = level.body().heightMm();
            heights.removeIf(height -> Math.abs(height - measured) < ONE_HEIGHT_MM);
            heights.add(measured);
        }
        return List.copyOf(heights);
    }

    private Optional<EaseAt> measuredAt(double heightMm) {
        return levels.stream()
                .filter(level -> level.body().heightMm() == heightMm)
                .findFirst();
    }

    private EaseReading reading(EaseAt level) {
        BodyGirth body = level.body();
        OptionalDouble least = body.leastEaseMm().isPresent()
                ? OptionalDouble.of(body.mm() + body.leastEaseMm().getAsDouble())
                : OptionalDouble.empty();
        return new EaseReading(
                body.heightMm(),
                level.heightBeforeMm() == body.heightMm() ? level.beforeMm() : before.at(body.heightMm()),
                level.afterMm(),
                OptionalDouble.of(body.mm()),
                least,
                Optional.of(level));
    }

    private static OptionalDouble at(Optional<MonotoneCurve> curve, double heightMm) {
        return curve.map(c -> c.at(heightMm)).orElse(OptionalDouble.empty());
    }

    /**
     * Where the altered garment may be tight between measured heights though it is not at them.
     *
     * @return the worst place of each stretch that lacks more than the errors of both girths that the body is drawn between, from the top
     */
    public List<TightBetween> tightBetween() {
        List<TightBetween> found = new ArrayList<>();
        List<EaseReading> readings = readings(STEP_MM);
        for (int i = 1; i < levels.size(); i++) {
            EaseAt above = levels.get(i - 1);
            EaseAt below = levels.get(i);
            if (above.shortAfterMm().isEmpty() && below.shortAfterMm().isEmpty()) {
                worst(above, below, readings).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    private static Optional<TightBetween> worst(EaseAt above, EaseAt below, List<EaseReading> readings) {
        double error = above.body().measure().allowableErrorMm()
                + below.body().measure().allowableErrorMm();
        return readings.stream()
                .filter(reading -> reading.heightMm() < above.body().heightMm()
                        && reading.heightMm() > below.body().heightMm()
                        && reading.afterMm().isPresent()
                        && reading.leastMm().isPresent())
                .map(reading -> new TightBetween(
                        above.body().measure(),
                        below.body().measure(),
                        reading.heightMm(),
                        reading.leastMm().getAsDouble() - reading.afterMm().getAsDouble()))
                .filter(place -> place.shortMm() > error)
                .max(Comparator.comparingDouble(TightBetween::shortMm));
    }

    private Optional<MonotoneCurve> least() {
        return through(levels.stream()
                .map(EaseAt::body)
                .filter(body -> body.leastEaseMm().isPresent())
                .map(body -> new Point(
                        body.heightMm(), body.mm() + body.leastEaseMm().getAsDouble()))
                .toList());
    }

    private Optional<MonotoneCurve> curve(ToDoubleFunction<BodyGirth> girth) {
        return through(levels.stream()
                .map(EaseAt::body)
                .map(body -> new Point(body.heightMm(), girth.applyAsDouble(body)))
                .toList());
    }

    private static Optional<MonotoneCurve> through(List<Point> fromTheTop) {
        List<Point> upwards = new ArrayList<>(fromTheTop);
        upwards.sort(Comparator.comparingDouble(Point::x));
        return upwards.size() < 2 ? Optional.empty() : Optional.of(MonotoneCurve.through(upwards));
    }
}
