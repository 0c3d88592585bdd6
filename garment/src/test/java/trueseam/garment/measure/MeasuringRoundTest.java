package trueseam.garment.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasuringRoundTest {
    private static final List<Measure> ORDER = Arrays.stream(MeasuringRound.values())
            .flatMap(round -> round.measures().stream())
            .toList();

    @Test
    void everyMeasureIsTakenOnce() {
        assertThat(ORDER).containsExactlyInAnyOrder(Measure.values());
    }

    @Test
    void levelGirthsOfTheTrunkAreTakenFromTheTopDown() {
        // The levels of the body as shared in ISO 8559 landmarks: armpit, bust, under-bust, waist, hip.
        assertThat(ORDER)
                .containsSubsequence(
                        Measure.UPPER_CHEST_GIRTH,
                        Measure.BUST_GIRTH,
                        Measure.UNDER_BUST_GIRTH,
                        Measure.WAIST_GIRTH,
                        Measure.HIP_GIRTH);
    }

    @Test
    void theWaistIsMarkedByItsGirthBeforeAnyLengthRunsToIt() {
        // Common practice: "mark it and keep that level for every length" (how the waist girth is taken).
        for (Measure measure : ORDER) {
            if (measure.kind() != MeasureKind.GIRTH && measure.term().contains("waist")) {
                assertThat(ORDER.indexOf(measure)).as(measure.term()).isGreaterThan(ORDER.indexOf(Measure.WAIST_GIRTH));
            }
        }
    }

    @Test
    void whatTheWearerChoosesComesLast() {
        assertThat(MeasuringRound.CHOSEN_LENGTHS.measures()).allMatch(Measure::isChosen);
        assertThat(ORDER.subList(0, ORDER.size() - 3)).noneMatch(Measure::isChosen);
    }
}
