package trueseam.drafting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.body.MissingMeasureException;
import trueseam.garment.body.Origin;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeTable;

/**
 * Every measure that a draft needs of one figure: those of a body or a size, and what these lack, estimated.
 *
 * <p>Estimates are straight lines through the surveyed women or men where the survey has the measure, and ratios of common
 * practice where it has none; each carries {@link Origin#ESTIMATED} and a sentence that says how. They are good enough for
 * a test garment and no substitute for the tape.
 *
 * @param label what the figure is called
 * @param build women's or men's
 * @param size the size, or empty for a body
 * @param sizeTable the table of the size, or empty
 * @param values the measures, complete
 */
public record DraftFigure(String label, Build build, String size, String sizeTable, Map<Measure, BodyValue> values) {

    // Keeps a copy.
    public DraftFigure {
        Map<Measure, BodyValue> copy = new EnumMap<>(Measure.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
    }

    /**
     * The figure of a body. A body with a chest girth is drafted for a man's build, any other for a woman's.
     *
     * @param body the body; needs a waist girth and a bust, chest or hip girth
     * @return the completed figure
     * @throws MissingMeasureException when one of these is missing
     */
    public static DraftFigure of(Body body) {
        return of(body, body.value(Measure.CHEST_GIRTH).isPresent() ? Build.MEN : Build.WOMEN);
    }

    /**
     * The figure of a body of a stated build.
     *
     * @param body the body; needs a waist girth and a bust, chest or hip girth
     * @param build whose estimates are taken for what is missing
     * @return the completed figure
     * @throws MissingMeasureException when one of these is missing
     */
    public static DraftFigure of(Body body, Build build) {
        return new DraftFigure(body.label(), build, "", "", completed(body, build));
    }

    /**
     * The figure of a size. Of a table with a chest girth, a man's.
     *
     * @param table the table
     * @param size what the size is called
     * @return the completed figure
     * @throws trueseam.garment.size.SizeTableException when the table has no such size
     * @throws MissingMeasureException when the table has no waist, or neither bust, chest nor hip
     */
    public static DraftFigure of(SizeTable table, String size) {
        DraftFigure figure = of(table.body(size));
        return new DraftFigure(figure.label, figure.build, table.row(size).size(), table.name(), figure.values);
    }

    private static Map<Measure, BodyValue> completed(Body body, Build build) {
        Map<Measure, BodyValue> known = new EnumMap<>(Measure.class);
        for (Measure measure : body.measures()) {
            body.value(measure).ifPresent(value -> known.put(measure, value));
        }
        shareTrunkGirth(known);
        if (!known.containsKey(Measure.HIP_GIRTH)) {
            body.mm(Measure.WAIST_GIRTH);
            if (!known.containsKey(Measure.BUST_GIRTH)) {
                body.mm(Measure.BUST_GIRTH);
            }
        }
        body.mm(Measure.WAIST_GIRTH);
        Estimate.complete(known, build);
        shareTrunkGirth(known);
        return known;
    }

    /** Bust and chest are one girth of two builds: either stands for the other. */
    private static void shareTrunkGirth(Map<Measure, BodyValue> known) {
        share(known, Measure.BUST_GIRTH, Measure.CHEST_GIRTH);
        share(known, Measure.CHEST_GIRTH, Measure.BUST_GIRTH);
    }

    private static void share(Map<Measure, BodyValue> known, Measure from, Measure to) {
        BodyValue value = known.get(from);
        if (value != null && !known.containsKey(to)) {
            Origin origin = value.origin() == Origin.TAPED ? Origin.STAND_IN : value.origin();
            known.put(to, new BodyValue(value.mm(), 0, value.readings(), origin, "the " + from.term()));
        }
    }

    /**
     * One measure.
     *
     * @param measure a measure that drafts need
     * @return mm
     * @throws IllegalArgumentException for a measure that no draft needs and the body has not
     */
    public double mm(Measure measure) {
        BodyValue value = values.get(measure);
        if (value == null) {
            throw new IllegalArgumentException("The figure \"" + label + "\" has no " + measure.term() + ".");
        }
        return value.mm();
    }

    /**
     * The measure round bust or chest by which this build is drafted.
     *
     * @return bust girth, or chest girth for a man's build
     */
    public Measure trunkGirth() {
        return build == Build.MEN ? Measure.CHEST_GIRTH : Measure.BUST_GIRTH;
    }

    /**
     * Whether a measure was not there and was estimated.
     *
     * @param measure the measure
     * @return true for an estimate
     */
    public boolean isEstimated(Measure measure) {
        return Optional.ofNullable(values.get(measure))
                .map(BodyValue::origin)
                .filter(Origin.ESTIMATED::equals)
                .isPresent();
    }

    /**
     * Every estimate, with a sentence that says how it was come by.
     *
     * @return a note for each, in the order of {@link Measure}; the place is the measure's term
     */
    public List<Finding> estimates() {
        List<Finding> notes = new ArrayList<>();
        values.forEach((measure, value) -> {
            if (value.origin() == Origin.ESTIMATED) {
                notes.add(Finding.note(measure.term(), value.note()));
            }
        });
        return List.copyOf(notes);
    }
}
