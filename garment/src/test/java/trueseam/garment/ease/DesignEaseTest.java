package trueseam.garment.ease;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DesignEaseTest {

    @Test
    void aPatternsEaseIsItsMeasureLessTheChartsBody() {
        // Worked example (web note on finished measures): chart bust 34 in, finished bust 41 1/2 in: ease 7 1/2 in.
        Ease ease = Ease.ofPattern(41.5 * 25.4, 34 * 25.4, 2.5 * 25.4);
        assertThat(ease.totalMm()).isCloseTo(7.5 * 25.4, within(1e-9));
        assertThat(ease.designMm()).isCloseTo(5 * 25.4, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // Pattern-envelope convention (common practice); 7 1/2 in on a dress is loose in the same worked example.
        "DRESS, 7.5, loose",
        "DRESS, 0, close fitting",
        "DRESS, -1, close fitting",
        "DRESS, 2.875, close fitting",
        "DRESS, 2.9, close fitting",
        "DRESS, 3, fitted",
        "DRESS, 4, fitted",
        "DRESS, 4.125, semi-fitted",
        "DRESS, 8, loose",
        "DRESS, 8.01, very loose",
        "JACKET, 4, fitted",
        "COAT, 7, semi-fitted",
        "SKIRT_OR_TROUSERS, 2.5, fitted",
        "SKIRT_OR_TROUSERS, 6.5, very loose"
    })
    void wholeEaseNamesTheBand(DesignBand.Style style, double easeIn, String name) {
        assertThat(DesignBand.of(style, easeIn * 25.4).name()).isEqualTo(name);
    }

    @ParameterizedTest
    @EnumSource
    void bandsFollowOneAnotherAndTheLastIsOpen(DesignBand.Style style) {
        var bands = DesignBand.of(style);
        for (int i = 1; i < bands.size(); i++) {
            assertThat(bands.get(i).fromMm())
                    .isGreaterThanOrEqualTo(bands.get(i - 1).toMm());
        }
        assertThat(bands.get(bands.size() - 1).toMm()).isInfinite();
    }

    @Test
    void wearingEaseIsNeverNegative() {
        assertThatThrownBy(() -> new Ease(-1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Ease(0, -12.7).totalMm()).isEqualTo(-12.7);
    }
}
