package trueseam.fitting.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;

/**
 * A size and why it was chosen.
 *
 * <p>Rules: (1) tops and dresses by the frame: across front width where the table has it; else the upper chest girth read against
 * the bust column when the full bust is two inches or more larger, because the upper chest is the hard part to alter; else the
 * bust girth (Principles of Pattern Alteration, Texas Cooperative Extension E-372, 2006). (2) Skirts and trousers by the hip
 * (The Use and Alteration of Commercial Patterns, State College of Washington Extension 78, 1922). (3) Between two sizes as {@link
 * BetweenSizes} says, usually the nearer; a body within 1/8 in of a size is of that size.
 *
 * @param table name of the size table
 * @param row the chosen size with its measures
 * @param by the measure of the body that decided
 * @param bodyMm what it is, mm
 * @param column the column that it was read against
 * @param tableMm what the size has in that column, mm
 * @param reason in one or two sentences
 * @param findings what the dressmaker should know, such as a body outside the table
 */
public record SizeChoice(
        String table,
        SizeRow row,
        Measure by,
        double bodyMm,
        Measure column,
        double tableMm,
        String reason,
        List<Finding> findings) {

    /** From this difference of full bust and upper chest the upper chest decides: 2 in. Source: E-372. */
    public static final double TWO_INCHES_MM = 50.8;

    /** A body this near to a size is of that size: 1/8 in, as a tape is read. */
    private static final double ON_A_SIZE_MM = 3.175;

    // Immutable.
    public SizeChoice {
        findings = List.copyOf(findings);
    }

    private record Frame(Measure by, double bodyMm, Measure column, String why) {}

    /** A size of the table with what it has in the deciding column. */
    private record Step(SizeRow row, double mm) {}

    /**
     * Chooses a size, between two the nearer.
     *
     * @param table the size table of the pattern
     * @param body the body
     * @param kind the garment
     * @param show how lengths are written in the reason
     * @return the choice
     * @throws NoSizeException if table and body have no measure in common to choose by
     */
    public static SizeChoice of(SizeTable table, Body body, GarmentKind kind, LengthFormat show) {
        return of(table, body, kind, BetweenSizes.NEAREST, show);
    }

    /**
     * Chooses a size.
     *
     * @param table the size table of the pattern
     * @param body the body
     * @param kind the garment
     * @param between what to do between two sizes
     * @param show how lengths are written in the reason
     * @return the choice
     * @throws NoSizeException if table and body have no measure in common to choose by
     */
    public static SizeChoice of(SizeTable table, Body body, GarmentKind kind, BetweenSizes between, LengthFormat show) {
        Frame frame = frame(table, body, kind, show)
                .orElseThrow(() -> new NoSizeException(table.name(), body.label(), wanted(kind)));
        List<Step> steps = table.rows().stream()
                .flatMap(row -> row.value(frame.column()).map(mm -> new Step(row, mm)).stream())
                .toList();
        double bodyMm = frame.bodyMm();
        Optional<Step> below = steps.stream()
                .filter(step -> step.mm() <= bodyMm + 1e-9)
                .reduce((a, b) -> b.mm() > a.mm() + 1e-9 ? b : a);
        Optional<Step> above = steps.stream()
                .filter(step -> step.mm() > bodyMm + 1e-9)
                .reduce((a, b) -> b.mm() < a.mm() - 1e-9 ? b : a);
        Step end =
                above.or(() -> below).orElseThrow(() -> new NoSizeException(table.name(), body.label(), wanted(kind)));
        Step best = end;
        String how = "The nearest in the table is size " + end.row().size() + " with " + show.show(end.mm()) + ".";
        if (below.isPresent() && above.isPresent()) {
            boolean bustVeryLarge = frame.by() == Measure.UPPER_CHEST_GIRTH
                    && body.value(Measure.BUST_GIRTH).isPresent();
            best = between(below.get(), above.get(), bodyMm, between, bustVeryLarge);
            how = how(below.get(), above.get(), best, bodyMm, between, show);
        }
        double smallest = steps.stream().mapToDouble(Step::mm).min().orElseThrow();
        double largest = steps.stream().mapToDouble(Step::mm).max().orElseThrow();
        return new SizeChoice(
                table.name(),
                best.row(),
                frame.by(),
                bodyMm,
                frame.column(),
                best.mm(),
                frame.why() + " " + how,
                outside(frame, smallest, largest, table.name(), show));
    }

    private static boolean isBetween(Step below, Step above, double bodyMm) {
        return bodyMm - below.mm() > ON_A_SIZE_MM && above.mm() - bodyMm > ON_A_SIZE_MM;
    }

    private static Step between(Step below, Step above, double bodyMm, BetweenSizes between, boolean bustVeryLarge) {
        BetweenSizes way = isBetween(below, above, bodyMm) ? between : BetweenSizes.NEAREST;
        return way.isLarger(bodyMm - below.mm(), above.mm() - bodyMm, bustVeryLarge) ? above : below;
    }

    private static String how(
            Step below, Step above, Step best, double bodyMm, BetweenSizes between, LengthFormat show) {
        if (between == BetweenSizes.NEAREST || !isBetween(below, above, bodyMm)) {
            return "The nearest in the table is size " + best.row().size() + " with " + show.show(best.mm()) + ".";
        }
        return "That lies between size " + below.row().size() + " with " + show.show(below.mm()) + " and size "
                + above.row().size() + " with " + show.show(above.mm()) + "; size "
                + best.row().size()
                + " is taken: " + between.answer().whole() + ".";
    }

    /**
     * The same choice beside the size that a pattern was taken in.
     *
     * @param taken the size of the pattern
     * @return the choice; with a finding where the pattern is in another size than would be chosen
     */
    public SizeChoice besidePatternIn(SizeRow taken) {
        if (taken.size().equals(row.size())) {
            return this;
        }
        List<Finding> more = new ArrayList<>(findings);
        more.add(Finding.warning(
                by.term(),
                "The pattern was taken in size " + taken.size() + ", and for this body size " + row.size()
                        + " would be chosen; take that size line if the pattern has it, or the alterations get larger than they"
                        + " need be."));
        return new SizeChoice(table, row, by, bodyMm, column, tableMm, reason, more);
    }

    private static String wanted(GarmentKind kind) {
        return switch (kind) {
            case BODICE, DRESS -> "bust girth";
            case SKIRT, TROUSERS -> "hip girth";
        };
    }

    private static Optional<Frame> frame(SizeTable table, Body body, GarmentKind kind, LengthFormat show) {
        return switch (kind) {
            case BODICE, DRESS -> topFrame(table, body, show);
            case SKIRT, TROUSERS ->
                simple(
                        table,
                        body,
                        Measure.HIP_GIRTH,
                        "Skirts and trousers are chosen by the hip girth, here %s.",
                        show);
        };
    }

    private static Optional<Frame> topFrame(SizeTable table, Body body, LengthFormat show) {
        Optional<Frame> across = simple(
                table,
                body,
                Measure.ACROSS_FRONT_WIDTH,
                "The frame decides: across front width is %s, and it moves far less with weight than the bust does.",
                show);
        if (across.isPresent()) {
            return across;
        }
        Measure bustColumn = table.has(Measure.BUST_GIRTH) ? Measure.BUST_GIRTH : Measure.CHEST_GIRTH;
        var upper = body.value(Measure.UPPER_CHEST_GIRTH);
        var bust = body.value(Measure.BUST_GIRTH);
        if (table.has(bustColumn)
                && upper.isPresent()
                && (bust.isEmpty() || bust.get().mm() - upper.get().mm() >= TWO_INCHES_MM - 1e-9)) {
            String why = bust.isEmpty()
                    ? "The upper chest girth, " + show.show(upper.get().mm()) + ", is read against the bust column."
                    : "The full bust is "
                            + show.show(bust.get().mm() - upper.get().mm())
                            + " larger than the upper chest, two inches or more, so the upper chest decides: "
                            + show.show(upper.get().mm())
                            + " is read against the bust column, and the bust is altered afterwards.";
            return Optional.of(new Frame(Measure.UPPER_CHEST_GIRTH, upper.get().mm(), bustColumn, why));
        }
        String why = upper.isPresent()
                ? "The full bust is less than two inches larger than the upper chest, so the bust girth decides: %s."
                : "Across front width and upper chest girth were not measured, so the bust girth has to decide: %s."
                        + " Measure the upper chest, it tells the frame better.";
        return simple(table, body, Measure.BUST_GIRTH, why, show)
                .or(() -> simple(table, body, Measure.CHEST_GIRTH, "The chest girth decides: %s.", show));
    }

    private static Optional<Frame> simple(SizeTable table, Body body, Measure measure, String why, LengthFormat show) {
        if (!table.has(measure)) {
            return Optional.empty();
        }
        return body.value(measure)
                .map(value -> new Frame(measure, value.mm(), measure, why.replace("%s", show.show(value.mm()))));
    }

    private static List<Finding> outside(
            Frame frame, double smallest, double largest, String table, LengthFormat show) {
        List<Finding> findings = new ArrayList<>();
        if (frame.bodyMm() < smallest - 12.7 || frame.bodyMm() > largest + 12.7) {
            findings.add(Finding.warning(
                    frame.by().term(),
                    "This body's " + frame.by().term() + " of " + show.show(frame.bodyMm()) + " lies outside table \""
                            + table + "\" (" + show.show(smallest) + " to " + show.show(largest)
                            + "); the end size was taken, and the alterations will be large."));
        }
        return findings;
    }
}
