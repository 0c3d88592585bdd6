package trueseam.garment.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;

class BodyChangeTest {
    private static Body body(Reading... readings) {
        return new Body("Ann", List.of(readings));
    }

    @Test
    void onlyWhatBothDaysHaveIsCompared() {
        Body before = body(Reading.taped(Measure.BUST_GIRTH, 960), Reading.taped(Measure.NECK_GIRTH, 350));
        Body now = body(Reading.taped(Measure.BUST_GIRTH, 975), Reading.taped(Measure.HIP_GIRTH, 1010));
        assertThat(BodyChange.between(before, now))
                .containsExactly(new BodyChange(Measure.BUST_GIRTH, Side.BOTH, 960, 975));
    }

    @Test
    void aDifferenceWithinMeasuringErrorIsNoChangeOfTheBody() {
        // ISO 20685-1:2018 as reproduced in Anthropometry, Apparel Sizing and Design, p. 41: large girths 9 mm, segment
        // lengths 5 mm.
        assertThat(change(Measure.WAIST_GIRTH, 760, 769).isBeyondMeasuringError())
                .isFalse();
        assertThat(change(Measure.WAIST_GIRTH, 760, 750.9).isBeyondMeasuringError())
                .isTrue();
        assertThat(change(Measure.BACK_WAIST_LENGTH, 400, 405.1).isBeyondMeasuringError())
                .isTrue();
        assertThat(change(Measure.WAIST_GIRTH, 760, 750).moreMm()).isCloseTo(-10, within(1e-9));
    }

    private static BodyChange change(Measure measure, double before, double now) {
        return BodyChange.between(body(Reading.taped(measure, before)), body(Reading.taped(measure, now)))
                .get(0);
    }

    @Test
    void sidesTakenApartOnOneDayAreHeldAgainstWhatWasTakenForBothOnTheOther() {
        Body before = body(Reading.taped(Measure.SHOULDER_LENGTH, 125));
        Body now = body(
                Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 122),
                Reading.taped(Measure.SHOULDER_LENGTH, Side.RIGHT, 131));
        assertThat(BodyChange.between(before, now))
                .containsExactly(
                        new BodyChange(Measure.SHOULDER_LENGTH, Side.LEFT, 125, 122),
                        new BodyChange(Measure.SHOULDER_LENGTH, Side.RIGHT, 125, 131));
    }
}
