package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/**
 * How far round a flat pattern is at every height, and not only at its marked levels: the ruler laid across all pieces at one
 * height, half pieces twice, darts folded out (common practice for the levels; the heights between are read in the same way).
 *
 * <p>Laws: (1) at a marked level, and at an end that is measured along an edge, it is what {@link FlatPattern} reads; (2) the ends
 * do not depend on the step; (3) of trousers the trunk ends at the crotch level, with the fork left out below the hip level, and
 * each leg begins there; (4) a bodice begins at the underarm, above which nothing goes round.
 *
 * <p>Heights are those of the paper's first front, counted from the zero of the {@link BodyPart}. Inside the mouth of a side dart
 * the ruler reads over the dart's cap.
 */
public final class FlatGirths {

    private final BodyPart part;
    private final List<GirthStretch> stretches;
    private final List<FlatLevel> levels;

    private FlatGirths(BodyPart part, List<GirthStretch> stretches, List<FlatLevel> levels) {
        this.part = part;
        this.stretches = List.copyOf(stretches);
        this.levels = List.copyOf(levels);
    }

    /**
     * Lays a pattern out by height.
     *
     * @param pattern the pattern
     * @param part round what
     * @return its girths, or nothing where no pieces with marked levels go round that part
     */
    public static Optional<FlatGirths> of(Pattern pattern, BodyPart part) {
        GirthLayout layout = new GirthLayout(pattern);
        List<GirthStretch> found = new ArrayList<>();
        switch (part) {
            case TRUNK -> {
                layout.above().ifPresent(found::add);
                layout.skirt().ifPresent(found::add);
                layout.seat().ifPresent(found::add);
            }
            case LEG -> layout.leg().ifPresent(found::add);
            case ARM -> layout.arm().ifPresent(found::add);
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        FlatGirths girths = new FlatGirths(part, found, List.of());
        List<FlatLevel> levels = new ArrayList<>();
        layout.heights(part).forEach((measure, height) -> girths.at(height)
                .ifPresent(girth -> levels.add(new FlatLevel(measure, new GirthAt(height, girth)))));
        return Optional.of(new FlatGirths(part, found, levels));
    }

    /**
     * Round what it goes.
     *
     * @return the part of the body
     */
    public BodyPart part() {
        return part;
    }

    /**
     * The girth at one height.
     *
     * @param heightMm mm above the zero of the part
     * @return mm, or nothing above the top and below the bottom of the garment
     */
    public OptionalDouble at(double heightMm) {
        for (GirthStretch stretch : stretches) {
            if (stretch.reaches(heightMm)) {
                return OptionalDouble.of(stretch.at(heightMm));
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * The girths from top to bottom.
     *
     * @param stepMm how far apart at most, mm, above zero
     * @return at least the two ends, the highest first
     */
    public List<GirthAt> every(double stepMm) {
        if (!(stepMm > 0)) {
            throw new IllegalArgumentException("A step of " + stepMm + " mm does not go down.");
        }
        List<GirthAt> all = new ArrayList<>();
        stretches.forEach(stretch -> all.addAll(stretch.every(stepMm)));
        all.sort(Comparator.comparingDouble(GirthAt::heightMm).reversed());
        return List.copyOf(all);
    }

    /**
     * The upper end.
     *
     * @return mm above the zero of the part
     */
    public double topMm() {
        return stretches.get(0).top().heightMm();
    }

    /**
     * The lower end.
     *
     * @return mm above the zero of the part, usually negative
     */
    public double bottomMm() {
        return stretches.get(stretches.size() - 1).bottom().heightMm();
    }

    /**
     * The levels that the pattern marks.
     *
     * @return where each lies and how far round it is there, by the measure that is compared with it
     */
    public List<FlatLevel> levels() {
        return levels;
    }

    /**
     * One of the levels.
     *
     * @param measure the measure that is compared with it
     * @return where it lies and how far round it is, or nothing if the pattern does not mark it
     */
    public Optional<GirthAt> level(Measure measure) {
        return levels.stream()
                .filter(level -> level.measure() == measure)
                .findFirst()
                .map(FlatLevel::at);
    }

    /**
     * Where a length taken from the waist down the side of a body comes to lie on this garment.
     *
     * @param lengthMm mm down the side seam from the waist
     * @return the height there, or nothing where there is no side seam below the waist, or a shorter one
     */
    public OptionalDouble downTheSideMm(double lengthMm) {
        return bottomMm() < 0 ? stretches.get(stretches.size() - 1).downTheSideMm(lengthMm) : OptionalDouble.empty();
    }
}
