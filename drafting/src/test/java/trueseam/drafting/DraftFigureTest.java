package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.body.MissingMeasureException;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.finding.Finding;
import trueseam.garment.measure.Measure;

class DraftFigureTest {

    private static final Body FOUR = Body.named("four")
            .with(Reading.taped(Measure.BUST_GIRTH, 914.4))
            .with(Reading.taped(Measure.WAIST_GIRTH, 711.2))
            .with(Reading.taped(Measure.HIP_GIRTH, 965.2))
            .with(Reading.taped(Measure.BACK_WAIST_LENGTH, 419.1));

    @Test
    void whatWasTapedStaysAndWhatIsMissingIsFlaggedAsAnEstimate() {
        DraftFigure figure = DraftFigure.of(FOUR);
        assertThat(figure.mm(Measure.BUST_GIRTH)).isEqualTo(914.4);
        assertThat(figure.isEstimated(Measure.BUST_GIRTH)).isFalse();
        assertThat(figure.values().get(Measure.ACROSS_BACK_WIDTH).origin()).isEqualTo(Origin.ESTIMATED);
        assertThat(figure.estimates())
                .extracting(Finding::place)
                .contains("across back width", "stature", "body rise")
                .doesNotContain("bust girth", "waist girth", "hip girth", "back neck point to waist");
        assertThat(figure.estimates()).allMatch(note -> note.sentence().contains("measure it"));
    }

    @Test
    void anEstimateFromTheSurveySaysFromWhomAndHowFarToTrustIt() {
        DraftFigure figure = DraftFigure.of(FOUR);
        assertThat(figure.values().get(Measure.ACROSS_BACK_WIDTH).note())
                .isEqualTo(
                        "Estimated from bust girth and stature by the line through 1986 surveyed people, two in three of"
                                + " whom are within 21 mm of it; measure it.");
    }

    @Test
    void aTypicalSurveyedWomanIsEstimatedAsTheSurveyMeasuredHer() {
        // data/bodies/ansur2-summary.csv, women, means: a line of least squares passes through the means.
        DraftFigure mean = DraftFigure.of(Body.named("mean")
                .with(Reading.taped(Measure.BUST_GIRTH, 946.8972))
                .with(Reading.taped(Measure.WAIST_GIRTH, 860.931))
                .with(Reading.taped(Measure.HIP_GIRTH, 1020.998))
                .with(Reading.taped(Measure.STATURE, 1628.471)));
        assertThat(mean.mm(Measure.ACROSS_BACK_WIDTH)).isCloseTo(395.7, within(0.5));
        assertThat(mean.mm(Measure.UPPER_ARM_GIRTH)).isCloseTo(305.6, within(0.5));
        assertThat(mean.mm(Measure.THIGH_GIRTH)).isCloseTo(616, within(0.5));
    }

    @Test
    void aBodyWithAChestGirthIsAMansAndItsBustIsTheChest() {
        DraftFigure figure = DraftFigure.of(Body.named("man")
                .with(Reading.taped(Measure.CHEST_GIRTH, 1016))
                .with(Reading.taped(Measure.WAIST_GIRTH, 890)));
        assertThat(figure.build()).isEqualTo(Build.MEN);
        assertThat(figure.trunkGirth()).isEqualTo(Measure.CHEST_GIRTH);
        assertThat(figure.mm(Measure.BUST_GIRTH)).isEqualTo(1016);
        assertThat(figure.values().get(Measure.BUST_GIRTH).origin()).isEqualTo(Origin.STAND_IN);
    }

    @Test
    void withoutAWaistNothingIsDrafted() {
        Body waistless = FOUR.without(Measure.WAIST_GIRTH);
        assertThatThrownBy(() -> DraftFigure.of(waistless))
                .isInstanceOfSatisfying(MissingMeasureException.class, e -> assertThat(e.measure())
                        .isEqualTo(Measure.WAIST_GIRTH));
    }

    @Test
    void aSizeKeepsItsNameAndTable() {
        DraftFigure figure = TableFigures.misses("14");
        assertThat(figure.size()).isEqualTo("14");
        assertThat(figure.sizeTable()).isEqualTo("misses");
        assertThat(Shells.skirt(figure, DraftEase.fitted()).size()).isEqualTo("14");
    }
}
