package trueseam.output.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.body.Population;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.MeasureKind;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.polygon.Region;

class TapePathsTest {
    /** The tape hangs beside the body, or down from the hip to the floor. */
    private static final Set<Measure> HELD_AWAY = EnumSet.of(
            Measure.STATURE,
            Measure.KNEE_HEIGHT,
            Measure.SHOULDER_SLOPE,
            Measure.INSIDE_LEG_LENGTH,
            Measure.OUTSIDE_LEG_LENGTH,
            Measure.SKIRT_LENGTH,
            Measure.DRESS_LENGTH,
            Measure.TROUSER_LENGTH);

    /** Half the width of the drawn tape, mm, and what the view from above shifts a place by within it. */
    private static final double ON_THE_LINE_MM = 6;

    private final PersonFigure woman = PersonFigure.of(Population.WOMEN);

    @Test
    void everyMeasureHasATapeInAtLeastOneView() {
        for (Measure measure : Measure.values()) {
            assertThat(woman.views(measure)).as(measure.term()).isNotEmpty();
        }
    }

    @Test
    void everyTapeLiesOnTheFigureUnlessItHangsBesideIt() {
        for (PersonFigure figure : People.figures()) {
            for (FigureView view : FigureView.values()) {
                Contour contour = new Contour(figure.form(), view);
                Region grown = Region.within(closed(contour.body()), 0.1).grown(ON_THE_LINE_MM);
                for (Measure measure : EnumSet.complementOf(EnumSet.copyOf(HELD_AWAY))) {
                    List<List<Point>> drawn = new ArrayList<>(
                            DrawnTape.of(figure.path(measure), view).seen());
                    assertThat(drawn.stream().flatMap(List::stream).filter(p -> !grown.contains(p)))
                            .as("%s, %s: places off the body", measure, view)
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void levelGirthsRunAtTheHeightWhereTheMeasureIsTaken() {
        // Medians of the ANSUR II survey, women (data/bodies/ansur2-summary.csv): chestheight, buttockheight,
        // kneeheightmidpatella,
        // lateralmalleolusheight; the waist midway between tenthribheight 1054 and iliocristaleheight 993.
        assertLevel(Measure.BUST_GIRTH, 1169);
        assertLevel(Measure.WAIST_GIRTH, 1023.5);
        assertLevel(Measure.HIP_GIRTH, 831);
        assertLevel(Measure.KNEE_GIRTH, 448);
        assertLevel(Measure.ANKLE_GIRTH, 63);
    }

    private void assertLevel(Measure measure, double heightMm) {
        assertThat(woman.path(measure).strokes().get(0)).as(measure.term()).allSatisfy(spot -> assertThat(spot.y())
                .isCloseTo(heightMm, within(1.0)));
    }

    @Test
    void girthsStandInTheOrderOfTheBody() {
        for (PersonFigure figure : People.figures()) {
            List<Measure> downwards = List.of(
                    Measure.NECK_GIRTH,
                    Measure.UPPER_CHEST_GIRTH,
                    Measure.BUST_GIRTH,
                    Measure.UNDER_BUST_GIRTH,
                    Measure.WAIST_GIRTH,
                    Measure.TOP_HIP_GIRTH,
                    Measure.HIP_GIRTH,
                    Measure.THIGH_GIRTH,
                    Measure.KNEE_GIRTH,
                    Measure.CALF_GIRTH,
                    Measure.ANKLE_GIRTH);
            assertThat(downwards.stream().map(measure -> -middle(figure.path(measure))))
                    .isSorted();
        }
    }

    private static double middle(TapePath path) {
        return path.strokes().stream()
                .flatMap(List::stream)
                .mapToDouble(Spot::y)
                .average()
                .orElseThrow();
    }

    @Test
    void girthsReachFromOneSideOfTheBodyOrLimbToTheOther() {
        Path outline = closed(new Contour(woman.form(), FigureView.FRONT).body());
        for (Measure measure : Measure.values()) {
            boolean level = measure.kind() == MeasureKind.GIRTH
                    && !Set.of(
                                    Measure.TRUNK_CIRCUMFERENCE,
                                    Measure.ARMSCYE_GIRTH,
                                    Measure.NECK_GIRTH,
                                    Measure.NECK_BASE_GIRTH,
                                    Measure.UPPER_CHEST_GIRTH)
                            .contains(measure);
            if (level) {
                List<Spot> ring = woman.path(measure).strokes().get(0);
                for (Spot end : List.of(ring.get(0), ring.get(ring.size() / 2))) {
                    Point seen = FigureView.FRONT.seen(end);
                    assertThat(outline.nearest(seen).point().distanceTo(seen))
                            .as("%s ends on the outline", measure)
                            .isLessThan(1.5);
                }
            }
        }
    }

    @Test
    void drawnTapesAreAboutAsLongAsTheSurveyMeasuredThem() {
        // Medians, women, ANSUR II (data/bodies/ansur2-summary.csv), of the columns that mapping.csv calls taped as the
        // measure asks.
        // A figure of level ovals is no body: its girths are short of the tape's, which rounds out hollows the other
        // way.
        Map<Measure, Double> surveyed = new EnumMap<>(Map.of(
                Measure.STATURE, 1626.0,
                Measure.SHOULDER_LENGTH, 135.0,
                Measure.ACROSS_BACK_WIDTH, 373.0,
                Measure.NECK_BASE_GIRTH, 370.0,
                Measure.HIP_GIRTH, 1018.0,
                Measure.INSIDE_LEG_LENGTH, 780.0,
                Measure.KNEE_HEIGHT, 448.0,
                Measure.THIGH_GIRTH, 613.0,
                Measure.CALF_GIRTH, 372.0,
                Measure.WRIST_GIRTH, 154.0));
        surveyed.put(Measure.TRUNK_CIRCUMFERENCE, 1555.0);
        surveyed.put(Measure.NECK_GIRTH, 328.0);
        surveyed.forEach((measure, mm) ->
                assertThat(woman.path(measure).drawnMm()).as(measure.term()).isBetween(0.85 * mm, 1.1 * mm));
    }

    @Test
    void lengthsRunBetweenTheirLandmarks() {
        assertEnds(Measure.SHOULDER_LENGTH, BodyPoint.NECK_SIDE, BodyPoint.SHOULDER);
        assertEnds(Measure.BACK_WAIST_LENGTH, BodyPoint.NAPE, BodyPoint.WAIST);
        assertEnds(Measure.FRONT_WAIST_LENGTH, BodyPoint.NECK_PIT, BodyPoint.WAIST);
        assertEnds(Measure.FRONT_WAIST_LENGTH_OVER_BUST, BodyPoint.NECK_SIDE, BodyPoint.WAIST);
        assertEnds(Measure.BUST_POINT_HEIGHT, BodyPoint.NECK_SIDE, BodyPoint.BUST_POINT);
        assertEnds(Measure.SCYE_DEPTH, BodyPoint.NAPE, BodyPoint.ARMPIT);
        assertEnds(Measure.WAIST_TO_HIP, BodyPoint.WAIST, BodyPoint.HIP);
        assertEnds(Measure.NAPE_TO_WRIST_LENGTH, BodyPoint.NAPE, BodyPoint.WRIST);
        assertEnds(Measure.ARM_LENGTH, BodyPoint.SHOULDER, BodyPoint.WRIST);
        assertEnds(Measure.UPPER_ARM_LENGTH, BodyPoint.SHOULDER, BodyPoint.ELBOW);
        assertEnds(Measure.BODY_RISE, BodyPoint.WAIST, BodyPoint.SEAT);
        assertEnds(Measure.FRONT_CROTCH_LENGTH, BodyPoint.WAIST, BodyPoint.CROTCH);
        assertEnds(Measure.BACK_CROTCH_LENGTH, BodyPoint.WAIST, BodyPoint.CROTCH);
        assertEnds(Measure.INSIDE_LEG_LENGTH, BodyPoint.CROTCH, BodyPoint.FLOOR);
        assertEnds(Measure.OUTSIDE_LEG_LENGTH, BodyPoint.WAIST, BodyPoint.FLOOR);
    }

    private void assertEnds(Measure measure, BodyPoint from, BodyPoint to) {
        TapePath path = woman.path(measure);
        List<List<Spot>> strokes = path.strokes();
        Spot first = strokes.get(0).get(0);
        List<Spot> lastStroke = strokes.get(strokes.size() - 1);
        Spot last = lastStroke.get(lastStroke.size() - 1);
        assertThat(path.marks().get(from))
                .as("%s starts at the %s", measure, from)
                .anyMatch(s -> near(s, first));
        assertThat(path.marks().get(to)).as("%s ends at the %s", measure, to).anyMatch(s -> near(s, last));
    }

    private static boolean near(Spot a, Spot b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) < 1 && Math.abs(a.z() - b.z()) < 5;
    }

    @Test
    void frontAndBackCrotchLengthTogetherAreTheTotal() {
        assertThat(woman.path(Measure.FRONT_CROTCH_LENGTH).drawnMm()
                        + woman.path(Measure.BACK_CROTCH_LENGTH).drawnMm())
                .isCloseTo(woman.path(Measure.TOTAL_CROTCH_LENGTH).drawnMm(), within(1e-6));
    }

    @Test
    void theFigureChangesWithThePerson() {
        Body stout = Body.named("stout").with(Reading.taped(Measure.WAIST_GIRTH, 1158));
        // half as much again round the waist is half as much again across it
        assertThat(across(PersonFigure.of(stout, Population.WOMEN))).isCloseTo(1.5 * across(woman), within(0.5));
    }

    private static double across(PersonFigure figure) {
        DoubleSummaryStatistics x = figure.path(Measure.WAIST_GIRTH).strokes().get(0).stream()
                .mapToDouble(Spot::x)
                .summaryStatistics();
        return x.getMax() - x.getMin();
    }

    @Test
    void aSlipOfThePenSpoilsTheDrawingOnlySoFar() {
        Body slip = Body.named("slip").with(Reading.taped(Measure.WAIST_GIRTH, 77_200));
        assertThat(across(PersonFigure.of(slip, Population.WOMEN))).isLessThan(2 * across(woman));
        Body wrongUnit = Body.named("slip").with(Reading.taped(Measure.STATURE, 64));
        assertThat(PersonFigure.of(wrongUnit, Population.WOMEN).form().mm(FigureSize.STATURE))
                .isEqualTo(0.55 * 1626);
    }

    @Test
    void theOutlineOfEverySurveyedPersonIsOneSoundLine() {
        for (PersonFigure figure : People.figures()) {
            for (FigureView view : FigureView.values()) {
                assertThat(Region.faultOf(closed(new Contour(figure.form(), view).body()), 0.5))
                        .isEmpty();
            }
        }
    }

    private static Path closed(Path open) {
        return open.then(Path.through(open.end(), open.start()));
    }
}
