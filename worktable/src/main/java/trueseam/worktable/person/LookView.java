package trueseam.worktable.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trueseam.garment.body.Body;
import trueseam.garment.body.Limit;
import trueseam.garment.body.Side;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.intake.body.EntryRules;
import trueseam.output.figure.BodyPoint;
import trueseam.output.figure.FigureView;
import trueseam.output.figure.PersonFigure;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.work.Workings;

/**
 * The figure beside the fields, and what it shows in words and numbers.
 *
 * @param measure the measure whose tape it shows; none before a field was chosen
 * @param side the side in focus
 * @param svg the drawing
 * @param rows the same as a table: what, and how much or where
 */
public record LookView(Optional<Measure> measure, String side, String svg, List<Line> rows) {

    /**
     * One line of the table.
     *
     * @param what what is told
     * @param told what there is to tell
     */
    public record Line(String what, String told) {}

    /** Does not change. */
    public LookView {
        rows = List.copyOf(rows);
    }

    static LookView of(Workings workings, EntryRules rules, String measureName, String side) {
        PersonPart part = workings.project().person();
        Body body = workings.body().body();
        PersonFigure figure = PersonFigure.of(body, part.population());
        Optional<Measure> measure = java.util.Arrays.stream(Measure.values())
                .filter(m -> m.name().equals(measureName))
                .findFirst();
        if (measure.isEmpty()) {
            return new LookView(measure, "", figure.svg(), List.of());
        }
        Side shown =
                switch (side) {
                    case "left" -> Side.LEFT;
                    case "right" -> Side.RIGHT;
                    default -> measure.get().sidesMayDiffer() ? Side.RIGHT : Side.BOTH;
                };
        return new LookView(
                measure, side, figure.svg(measure.get(), shown), lines(measure.get(), figure, body, part, rules));
    }

    /** A page of which the figure is not taken. */
    static LookView notDrawn() {
        return new LookView(Optional.empty(), "", "", List.of());
    }

    private static List<Line> lines(
            Measure measure, PersonFigure figure, Body body, PersonPart part, EntryRules rules) {
        LengthFormat show = part.format();
        List<Line> lines = new ArrayList<>();
        List<String> points =
                figure.points(measure).stream().map(BodyPoint::words).toList();
        lines.add(new Line("Tape", points.isEmpty() ? "level round" : String.join(", ", points)));
        String views = figure.views(measure).stream()
                .map(view -> view == FigureView.FRONT ? "the front" : "the back")
                .collect(Collectors.joining(" and "));
        lines.add(new Line("Seen from", views + (figure.isSitting(measure) ? ", and sitting from her right" : "")));
        body.value(measure).ifPresent(value -> lines.add(new Line("Hers", show.show(value.mm()))));
        rules.plausibility()
                .limit(measure, part.population())
                .ifPresent(limit -> lines.add(new Line("998 of 1000 surveyed", usual(limit, show))));
        if (!measure.isChosen()) {
            lines.add(new Line("Measuring error", show.show(measure.allowableErrorMm()) + " (ISO 20685)"));
        }
        lines.add(new Line("Standard's term", measure.term() + "; " + measure.termConfirmedBy()));
        return lines;
    }

    private static String usual(Limit limit, LengthFormat show) {
        return show.show(limit.usualFromMm()) + " to " + show.show(limit.usualToMm());
    }

    /**
     * What the measure is called.
     *
     * @return the workroom's word; for no measure what the figure is
     */
    public String title() {
        return measure.map(MeasureWords::label).orElse("How the tape runs");
    }
}
