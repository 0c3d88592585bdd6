package trueseam.worktable.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.worktable.project.PersonPart.Typed;

class ReadingsTest {
    private static final String SHOULDER = "shoulder length";

    private static Typed typed(String measure, String side, String text) {
        return new Typed(measure, side, text, "in");
    }

    private final List<Typed> day =
            List.of(typed("bust girth", "", "38"), typed(SHOULDER, "", "5"), typed("bust girth", "", "38 1/4"));

    @Test
    void typingOverOneReadingLeavesTheOthers() {
        assertThat(Readings.typed(day, typed("bust girth", "", "39"), 1))
                .containsExactly(day.get(0), day.get(1), typed("bust girth", "", "39"));
        assertThat(Readings.typed(day, typed("waist girth", "", "31"), 0))
                .hasSize(4)
                .startsWith(day.toArray(Typed[]::new));
    }

    @Test
    void aReadingFarBeyondTheLastIsNotMadeUp() {
        assertThat(Readings.typed(day, typed("bust girth", "", "39"), 7)).isEqualTo(day);
    }

    @Test
    void anotherReadingStandsBehindThoseOfItsMeasure() {
        assertThat(Readings.again(List.of(), "hip girth", "", "in"))
                .containsExactly(typed("hip girth", "", ""), typed("hip girth", "", ""));
        assertThat(Readings.of(Readings.again(day, "bust girth", "", "in"), "bust girth", ""))
                .containsExactly(day.get(0), day.get(2), typed("bust girth", "", ""));
    }

    @Test
    void takenApartBothSidesBeginWithWhatWasReadForBothAndTogetherTheRightOneStays() {
        List<Typed> apart = Readings.apart(day, SHOULDER, "in");
        assertThat(Readings.of(apart, SHOULDER, "left")).containsExactly(typed(SHOULDER, "left", "5"));
        assertThat(Readings.of(apart, SHOULDER, "right")).containsExactly(typed(SHOULDER, "right", "5"));
        List<Typed> changed = Readings.typed(apart, typed(SHOULDER, "right", "4 7/8"), 0);
        assertThat(Readings.of(Readings.together(changed, SHOULDER), SHOULDER, ""))
                .containsExactly(typed(SHOULDER, "", "4 7/8"));
    }

    @Test
    void droppingTakesTheOneReadingOnly() {
        assertThat(Readings.without(day, "bust girth", "", 0)).containsExactly(day.get(1), day.get(2));
        assertThat(Readings.without(day, "bust girth", "left", 0)).isEqualTo(day);
    }
}
