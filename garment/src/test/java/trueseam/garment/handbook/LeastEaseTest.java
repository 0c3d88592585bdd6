package trueseam.garment.handbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;

/** The least ease by source, against the ranges that the trade facts quote (section 2.1, and section 11, items 1 and 2). */
class LeastEaseTest {

    private static final double IN = 25.4;

    private static EaseRow row(LeastEase.Place place, String word, GarmentKind kind, Measure measure) {
        return LeastEase.USUAL.with(place, word).table().wearing(kind, measure).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        // CWU16 1 1/2 to 2; EASE-W 2 1/2 and 2; SSH 2 1/2 to 4; NM228 3 to 4; MPC 10 cm.
        "BUST, college-text, DRESS, 38.1",
        "BUST, encyclopedia, DRESS, 63.5",
        "BUST, encyclopedia-second, DRESS, 50.8",
        "BUST, school-handbook, BODICE, 63.5",
        "BUST, extension-guide, BODICE, 76.2",
        "BUST, block-text, BODICE, 100",
        // CWU16 dress 3/4 to 1, skirt and trousers 1/2 to 3/4, elsewhere trousers 3/4 to 1; NM209 as tight as the band
        // is worn.
        "WAIST, college-text, DRESS, 19.05",
        "WAIST, college-text, SKIRT, 12.7",
        "WAIST, college-text-more, TROUSERS, 19.05",
        "WAIST, extension-guide, SKIRT, 0",
        "WAIST, school-handbook, SKIRT, 25.4",
        // CWU16 2 to 2 3/4, trousers seat 1 1/2 to 2; SSH 2 to 2 1/2; EASE-W 3 and 2.
        "HIP, college-text, SKIRT, 50.8",
        "HIP, college-text, TROUSERS, 38.1",
        "HIP, school-handbook, TROUSERS, 50.8",
        "HIP, encyclopedia, SKIRT, 76.2",
        "HIP, encyclopedia-second, SKIRT, 50.8"
    })
    void theLeastIsWhatTheSourceSays(LeastEase.Place place, String word, GarmentKind kind, double leastMm) {
        Measure measure =
                switch (place) {
                    case BUST -> Measure.BUST_GIRTH;
                    case WAIST -> Measure.WAIST_GIRTH;
                    case HIP -> Measure.HIP_GIRTH;
                };
        assertThat(row(place, word, kind, measure).minimumMm()).isCloseTo(leastMm, within(1e-9));
    }

    @Test
    void theUsualEaseIsTheMiddleOfWhatTheSourceGives() {
        assertThat(row(LeastEase.Place.BUST, "school-handbook", GarmentKind.DRESS, Measure.BUST_GIRTH)
                        .usualMm())
                .isCloseTo((2.5 + 4) / 2 * IN, within(1e-9));
        assertThat(row(LeastEase.Place.HIP, "college-text", GarmentKind.SKIRT, Measure.HIP_GIRTH)
                        .usualMm())
                .isCloseTo((2 + 2.75) / 2 * IN, within(1e-9));
    }

    @Test
    void whatIsNotChosenAndWhatASourceIsSilentAboutKeepsTheTable() {
        EaseTable standard = EaseTable.standard();
        assertThat(LeastEase.USUAL.table()).isEqualTo(standard);
        assertThat(LeastEase.USUAL.with(LeastEase.Place.BUST, "table")).isEqualTo(LeastEase.USUAL);
        EaseTable guide =
                LeastEase.USUAL.with(LeastEase.Place.WAIST, "extension-guide").table();
        assertThat(guide.wearing(GarmentKind.DRESS, Measure.WAIST_GIRTH))
                .isEqualTo(standard.wearing(GarmentKind.DRESS, Measure.WAIST_GIRTH));
        assertThat(guide.wearing(GarmentKind.SKIRT, Measure.HIP_GIRTH))
                .isEqualTo(standard.wearing(GarmentKind.SKIRT, Measure.HIP_GIRTH));
    }

    @ParameterizedTest
    @EnumSource(LeastEase.Place.class)
    void everyAnswerHasAWordOfItsOwnAReasonAndASource(LeastEase.Place place) {
        Question question = LeastEase.question(place);
        assertThat(question.answers()).extracting(Answer::word).doesNotHaveDuplicates();
        assertThat(question.answers())
                .allSatisfy(answer -> assertThat(answer.source()).isNotBlank())
                .allSatisfy(answer -> assertThat(answer.reason()).isNotBlank());
    }

    @Test
    void aSourceThatIsNotThereIsRefusedWithTheWordsThereAre() {
        assertThatThrownBy(() -> new LeastEase(Map.of(LeastEase.Place.HIP, "block-text")))
                .isInstanceOf(HandbookException.class)
                .hasMessageContaining("block-text")
                .hasMessageContaining("school-handbook");
    }
}
