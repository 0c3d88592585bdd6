package trueseam.garment.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;

class BodyTest {
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 9);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 9);

    @Test
    void readingsOfTheLatestDateAreAveraged() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.BUST_GIRTH, 900).on(MARCH))
                .with(Reading.taped(Measure.BUST_GIRTH, 960).on(JUNE))
                .with(Reading.taped(Measure.BUST_GIRTH, 964).on(JUNE))
                .with(Reading.taped(Measure.BUST_GIRTH, 800));
        assertThat(body.value(Measure.BUST_GIRTH)).contains(new BodyValue(962, 4, 2, Origin.TAPED, ""));
    }

    @Test
    void undatedReadingsCountWhereNoneIsDated() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.HIP_GIRTH, 1000))
                .with(Reading.taped(Measure.HIP_GIRTH, 1004));
        assertThat(body.mm(Measure.HIP_GIRTH)).isEqualTo(1002);
    }

    @Test
    void aSidedMeasureIsTheMeanOfItsSides() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 120).on(MARCH))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.RIGHT, 124).on(JUNE));
        assertThat(body.value(Measure.SHOULDER_LENGTH)).contains(new BodyValue(122, 0, 2, Origin.TAPED, ""));
        assertThat(body.value(Measure.SHOULDER_LENGTH, Side.LEFT).orElseThrow().mm())
                .isEqualTo(120);
        assertThat(body.value(Measure.SHOULDER_LENGTH, Side.RIGHT).orElseThrow().mm())
                .isEqualTo(124);
    }

    @Test
    void oneSideAloneStandsForTheWhole() {
        Body body = Body.named("Ann").with(Reading.taped(Measure.THIGH_GIRTH, Side.LEFT, 600));
        assertThat(body.mm(Measure.THIGH_GIRTH)).isEqualTo(600);
        assertThat(body.value(Measure.THIGH_GIRTH, Side.RIGHT)).isEmpty();
    }

    @Test
    void aReadingForBothServesTheSideThatHasNone() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.ARM_LENGTH, 580).on(MARCH))
                .with(Reading.taped(Measure.ARM_LENGTH, Side.LEFT, 590).on(JUNE));
        assertThat(body.value(Measure.ARM_LENGTH, Side.LEFT).orElseThrow().mm()).isEqualTo(590);
        assertThat(body.value(Measure.ARM_LENGTH, Side.RIGHT).orElseThrow().mm())
                .isEqualTo(580);
        assertThat(body.mm(Measure.ARM_LENGTH)).isEqualTo(585);
    }

    @Test
    void aNewerReadingForBothReplacesTheSides() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.ARM_LENGTH, Side.LEFT, 590).on(MARCH))
                .with(Reading.taped(Measure.ARM_LENGTH, Side.RIGHT, 584).on(MARCH))
                .with(Reading.taped(Measure.ARM_LENGTH, 580).on(JUNE));
        assertThat(body.mm(Measure.ARM_LENGTH)).isEqualTo(580);
    }

    @Test
    void whatWasTapedCountsBeforeWhatATableSays() {
        Body body = new SizedBody()
                .body()
                .with(Reading.taped(Measure.BUST_GIRTH, 950))
                .with(Reading.of(Measure.BUST_GIRTH, 940, Origin.STAND_IN, "over a jumper"));
        assertThat(body.value(Measure.BUST_GIRTH)).contains(new BodyValue(950, 0, 1, Origin.TAPED, ""));
        assertThat(body.value(Measure.WAIST_GIRTH).orElseThrow().origin()).isEqualTo(Origin.TABLE);
    }

    /** A size 14 of the misses' table, as far as this test needs it. */
    private record SizedBody() {
        Body body() {
            return Body.named("size 14")
                    .with(Reading.of(Measure.BUST_GIRTH, 914.4, Origin.TABLE, ""))
                    .with(Reading.of(Measure.WAIST_GIRTH, 711.2, Origin.TABLE, ""));
        }
    }

    @Test
    void notesOfAveragedReadingsAreKeptOnce() {
        Body body = Body.named("Ann")
                .with(Reading.of(Measure.BODY_RISE, 270, Origin.ESTIMATED, "from the trousers"))
                .with(Reading.of(Measure.BODY_RISE, 272, Origin.ESTIMATED, "from the trousers"))
                .with(Reading.of(Measure.BODY_RISE, 275, Origin.ESTIMATED, ""))
                .with(Reading.of(Measure.BODY_RISE, 274, Origin.ESTIMATED, "by eye"));
        assertThat(body.value(Measure.BODY_RISE).orElseThrow().note()).isEqualTo("from the trousers; by eye");
    }

    @Test
    void aMissingMeasureSaysHowToTakeIt() {
        assertThat(Body.named("Ann").value(Measure.BUST_GIRTH)).isEqualTo(Optional.empty());
        assertThatThrownBy(() -> Body.named("Ann").mm(Measure.BODY_RISE))
                .isInstanceOfSatisfying(MissingMeasureException.class, e -> {
                    assertThat(e.body()).isEqualTo("Ann");
                    assertThat(e.measure()).isEqualTo(Measure.BODY_RISE);
                })
                .hasMessageStartingWith("\"Ann\" has no body rise; measure it: Sitting upright");
    }

    @Test
    void impossibleReadingsAreRefused() {
        assertThatThrownBy(() -> Reading.taped(Measure.BUST_GIRTH, 0))
                .isInstanceOfSatisfying(BodyMeasureException.class, e -> {
                    assertThat(e.measure()).isEqualTo(Measure.BUST_GIRTH);
                    assertThat(e.mm()).isZero();
                })
                .hasMessageContaining("bust girth cannot be 0.0 mm");
        assertThatThrownBy(() -> Reading.taped(Measure.BUST_GIRTH, -3)).isInstanceOf(BodyMeasureException.class);
        assertThatThrownBy(() -> Reading.taped(Measure.BUST_GIRTH, Double.NaN))
                .isInstanceOf(BodyMeasureException.class);
        assertThatThrownBy(() -> Reading.taped(Measure.BUST_GIRTH, Side.LEFT, 900))
                .isInstanceOfSatisfying(BodyMeasureException.class, e -> assertThat(e.reason())
                        .isEqualTo("this measure has no left and right"));
        // Shoulders may be level.
        assertThat(Reading.taped(Measure.SHOULDER_SLOPE, 0).mm()).isZero();
    }

    @Test
    void aBodyNeverChanges() {
        Body before = Body.named("Ann");
        Body after = before.with(Reading.taped(Measure.BUST_GIRTH, 900));
        assertThat(before.readings()).isEmpty();
        assertThat(after.measures()).containsExactly(Measure.BUST_GIRTH);
        assertThat(after.without(Measure.BUST_GIRTH)).isEqualTo(before);
        assertThatThrownBy(() -> Body.named("  ")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Body.named("Ann\nBerta")).isInstanceOf(IllegalArgumentException.class);
        assertThat(Body.named(" Ann ")).isEqualTo(Body.named("Ann"));
    }
}
