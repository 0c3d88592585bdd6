package trueseam.garment.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.measure.Measure;

/** The trend of a measure, and the note when to measure again. */
class MeasureAgainTest {

    private static final LocalDate MAY = LocalDate.of(2026, 5, 31);

    private static MeasureTrend trend(Measure measure, double... mm) {
        List<MeasureTrend.Point> points = java.util.stream.IntStream.range(0, mm.length)
                .mapToObj(i -> new MeasureTrend.Point(MAY.minusMonths(6L * (mm.length - 1 - i)), mm[i]))
                .toList();
        return new MeasureTrend(measure, Side.BOTH, points);
    }

    @Test
    void aChangeCountsOnlyBeyondMeasuringErrorAndSmallStepsAddUp() {
        // ISO 20685: 9 mm for large girths, as read in Anthropometry, Apparel Sizing and Design, p. 41.
        MeasureTrend waist = trend(Measure.WAIST_GIRTH, 800, 806, 812);
        assertThat(waist.latest().orElseThrow().isBeyondMeasuringError()).isFalse();
        assertThat(waist.overall().orElseThrow().moreMm()).isEqualTo(12);
        assertThat(waist.overall().orElseThrow().isBeyondMeasuringError()).isTrue();
        assertThat(trend(Measure.WAIST_GIRTH, 800).latest()).isEmpty();
    }

    @Test
    void whoGrewMoreThanTheTapeMayErrIsMeasuredAgainSooner() {
        // ISO 20685: 4 mm for heights.
        assertThat(MeasureAgain.isGrowing(Optional.of(trend(Measure.STATURE, 1300, 1305))))
                .isTrue();
        assertThat(MeasureAgain.isGrowing(Optional.of(trend(Measure.STATURE, 1300, 1304))))
                .isFalse();
        assertThat(MeasureAgain.isGrowing(Optional.of(trend(Measure.STATURE, 1305, 1300))))
                .isFalse();
        assertThat(MeasureAgain.isGrowing(Optional.of(trend(Measure.WAIST_GIRTH, 800, 900))))
                .isFalse();
        assertThat(MeasureAgain.isGrowing(Optional.empty())).isFalse();
        assertThat(MeasureAgain.usual().due(MAY, false)).isEqualTo("2026-11-30");
        assertThat(MeasureAgain.usual().due(MAY, true)).isEqualTo("2026-08-31");
        assertThat(new MeasureAgain(2, 12).due(MAY, true)).isEqualTo("2026-07-31");
    }

    @Test
    void longAgoTellsNothingOfGrowing() {
        MeasureTrend years = new MeasureTrend(
                Measure.STATURE,
                Side.BOTH,
                List.of(new MeasureTrend.Point(MAY.minusYears(9), 1300), new MeasureTrend.Point(MAY, 1650)));
        assertThat(MeasureAgain.isGrowing(Optional.of(years))).isFalse();
    }

    @Test
    void whatIsNoRuleIsRefused() {
        assertThatThrownBy(() -> new MeasureAgain(0, 3)).hasMessageContaining("1 to 60");
        assertThatThrownBy(() -> new MeasureAgain(6, 61)).hasMessageContaining("1 to 60");
        MeasureTrend.Point once = new MeasureTrend.Point(MAY, 1);
        assertThatThrownBy(() -> new MeasureTrend(Measure.STATURE, Side.BOTH, List.of(once, once)))
                .hasMessageContaining("not after");
    }
}
