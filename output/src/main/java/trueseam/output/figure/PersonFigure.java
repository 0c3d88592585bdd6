package trueseam.output.figure;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import trueseam.garment.body.Body;
import trueseam.garment.body.Population;
import trueseam.garment.body.Side;
import trueseam.garment.measure.Measure;

/**
 * The figure of one person with the way of the tape for every measure.
 *
 * <p>Drawn from the medians of the public survey, changed within limits by what is known of the person: a breadth goes with its
 * girth as it does for the median person. It is a picture to measure by, and no measure may be taken from it.
 */
public final class PersonFigure {
    private final Form form;
    private final Map<Measure, TapePath> paths = new EnumMap<>(Measure.class);

    private PersonFigure(Proportions proportions) {
        form = new Form(proportions);
        TapePaths laid = new TapePaths(form);
        for (Measure measure : Measure.values()) {
            paths.put(measure, laid.of(measure));
        }
    }

    /**
     * The figure of the median surveyed person.
     *
     * @param people whose medians
     * @return the figure
     */
    public static PersonFigure of(Population people) {
        return new PersonFigure(Proportions.of(people));
    }

    /**
     * The figure of one person, as far as her measures tell it.
     *
     * @param body the measures; none at all is no fault
     * @param people whose medians stand in for what is not known
     * @return the figure
     */
    public static PersonFigure of(Body body, Population people) {
        return new PersonFigure(Proportions.of(body, people));
    }

    /**
     * The drawing without any tape.
     *
     * @return an SVG element, without colours and without a style of its own
     */
    public String svg() {
        return new FigureSvg(form).written();
    }

    /**
     * The drawing with the tape of one measure, shown.
     *
     * @param measure the measure
     * @param side the side in focus, the other one is drawn faintly; both for a measure without sides, or for both alike
     * @return an SVG element, without colours and without a style of its own
     */
    public String svg(Measure measure, Side side) {
        FigureSvg svg = new FigureSvg(form);
        return isSitting(measure) ? svg.sitting(path(measure), side) : svg.with(path(measure), side);
    }

    /**
     * The points that the tape starts from, ends at or runs over, from the top down.
     *
     * @param measure the measure
     * @return the points; none for a girth that only a level fixes
     */
    public Set<BodyPoint> points(Measure measure) {
        return path(measure).marks().keySet();
    }

    /**
     * From where the tape is seen.
     *
     * @param measure the measure
     * @return one view or both; of what is {@linkplain #isSitting shown sitting} the front only
     */
    public Set<FigureView> views(Measure measure) {
        Set<FigureView> views = EnumSet.noneOf(FigureView.class);
        for (FigureView view : FigureView.values()) {
            if (!DrawnTape.of(path(measure), view).seen().isEmpty()) {
                views.add(view);
            }
        }
        if (isSitting(measure)) {
            views.remove(FigureView.BACK);
        }
        return views;
    }

    /**
     * Whether she is drawn sitting, from her right, beside the front view.
     *
     * @param measure the measure
     * @return true for what is measured sitting
     */
    public boolean isSitting(Measure measure) {
        return measure == Measure.BODY_RISE;
    }

    TapePath path(Measure measure) {
        return paths.get(measure);
    }

    Form form() {
        return form;
    }
}
