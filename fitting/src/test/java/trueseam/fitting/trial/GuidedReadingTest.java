package trueseam.fitting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.repertoire.Family;
import trueseam.garment.ease.GarmentKind;

class GuidedReadingTest {

    private static List<String> keys(GuidedReading reading) {
        return reading.causes().stream().map(ranked -> ranked.cause().key()).toList();
    }

    @Test
    void questionsFollowTheOrderOfLookingWhereWhichWaySlackOrStrain() {
        GuidedReading reading = GuidedReading.ofAnyGarment();
        assertThat(reading.next().orElseThrow().key()).isEqualTo("part");
        reading = reading.answered("part", "bodice");
        assertThat(reading.next().orElseThrow().key()).isEqualTo("place");
        reading = reading.answered("place", "armhole-front");
        assertThat(reading.next().orElseThrow().key()).isEqualTo("folds");
        reading = reading.answered("folds", "slanting");
        assertThat(reading.next().orElseThrow().key()).isEqualTo("cloth");
    }

    @Test
    void swayBackAndTightSeatAreToldApartByPullingTheSkirtDown() {
        // trade facts, section 11, 8: two opposite cures for the same folds [web:sway1] [web:sway2]; pull the skirt
        // down.
        GuidedReading folds = GuidedReading.of(Drafted.shell(GarmentKind.SKIRT, "14"))
                .answered("place", "skirt-band-back")
                .answered("folds", "across");
        assertThat(keys(folds)).contains("sway-back", "tight-seat", "tight-hip");
        Question question = folds.answered("seen", GuidedReading.UNSURE).next().orElseThrow();
        assertThat(question.key()).isEqualTo("pull-down");
        assertThat(question.source()).contains("web:sway1").contains("web:sway2");

        GuidedReading smooth = folds.answered("pull-down", "smooth");
        assertThat(keys(smooth)).startsWith("tight-hip", "tight-seat").endsWith("sway-back");
        assertThat(smooth.causes().get(0).remedies().get(0).words()).isEqualTo("skirt hip");
        GuidedReading stay = folds.answered("pull-down", "stay");
        assertThat(keys(stay)).startsWith("sway-back");
        assertThat(stay.causes().get(0).remedies().get(0).words()).isEqualTo("sway-back of a skirt");
        assertThat(stay.causes().get(0).reasons()).anyMatch(reason -> reason.startsWith("Speaks for it: Pull"));
        assertThat(stay.causes().get(2).isSpokenAgainst()).isTrue();
    }

    @Test
    void fullBustAndADartTooHighAreToldApartByWhereTheDartPoints() {
        GuidedReading two = GuidedReading.ofAnyGarment().answered("seen", "2");
        assertThat(keys(two)).containsExactly("full-bust", "dart-high", "dart-low");
        assertThat(two.next().orElseThrow().key()).isEqualTo("dart-points");
        assertThat(keys(two.answered("dart-points", "above"))).startsWith("dart-high");
        assertThat(keys(two.answered("dart-points", "at"))).startsWith("full-bust");
        assertThat(keys(two.answered("dart-points", "below"))).startsWith("dart-low");
    }

    @Test
    void whenOneCauseIsLeftNothingMoreIsAsked() {
        GuidedReading reading =
                GuidedReading.ofAnyGarment().answered("seen", "2").answered("dart-points", "above");
        assertThat(reading.next()).isEmpty();
        assertThat(reading.without("dart-points").next()).isPresent();
    }

    @Test
    void aGarmentIsOnlyAskedAboutPartsThatItHas() {
        GuidedReading trousers = GuidedReading.of(Drafted.shell(GarmentKind.TROUSERS, "14"));
        assertThat(trousers.next().orElseThrow().key()).isEqualTo("place");
        assertThat(trousers.next().orElseThrow().answers()).allMatch(answer -> List.of(GarmentPlace.values()).stream()
                .anyMatch(place -> place.key().equals(answer.key()) && place.family() == Family.TROUSERS));
    }

    @Test
    void aDressIsGivenTheChangesOfADress() {
        GuidedReading dress =
                GuidedReading.of(Drafted.shell(GarmentKind.DRESS, "14")).answered("seen", "11");
        assertThat(dress.causes().get(0).remedies())
                .extracting(Remedy::words)
                .containsExactly("sway-back without a waist seam");
    }

    /** Random answers, seeds 1 to 200: laws (1) to (4) of the reading. */
    @Test
    void anyWayThroughTheQuestionsNarrowsAndEnds() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            GuidedReading reading = seed % 2 == 0
                    ? GuidedReading.ofAnyGarment()
                    : GuidedReading.of(
                            Drafted.shell(List.of(GarmentKind.values()).get(random.nextInt(4)), "14"));
            int asked = 0;
            Optional<Question> next = reading.next();
            while (next.isPresent()) {
                Question question = next.get();
                assertThat(reading.answers()).as("seed " + seed).doesNotContainKey(question.key());
                assertThat(question.answers()).as("seed " + seed).hasSizeGreaterThan(1);
                GuidedReading unsure = reading.answered(question.key(), GuidedReading.UNSURE);
                assertThat(unsure.symptoms()).isEqualTo(reading.symptoms());
                assertThat(keys(unsure)).isEqualTo(keys(reading));
                int pick = random.nextInt(question.answers().size() + 1);
                GuidedReading answered = pick == question.answers().size()
                        ? unsure
                        : reading.answered(
                                question.key(), question.answers().get(pick).key());
                assertThat(reading.symptoms()).as("seed " + seed).containsAll(answered.symptoms());
                assertThat(answered.symptoms()).as("seed " + seed).isNotEmpty();
                reading = answered;
                next = reading.next();
                assertThat(++asked).as("seed " + seed).isLessThan(30);
            }
            GuidedReading backwards = GuidedReading.ofAnyGarment();
            for (Map.Entry<String, String> answer : reading.answers().entrySet().stream()
                    .sorted((a, b) -> b.getKey().compareTo(a.getKey()))
                    .toList()) {
                backwards = backwards.answered(answer.getKey(), answer.getValue());
            }
            if (seed % 2 == 0) {
                assertThat(keys(backwards)).as("seed " + seed).isEqualTo(keys(reading));
            }
        }
    }

    @Test
    void whatNoQuestionKnowsIsRefusedWithWhatMayBeAnswered() {
        assertThatThrownBy(() -> GuidedReading.ofAnyGarment().answered("part", "hat"))
                .isInstanceOf(AnswerException.class)
                .hasMessageContaining("bodice, ")
                .hasMessageContaining("unsure");
        assertThatThrownBy(() -> GuidedReading.ofAnyGarment().answered("colour", "red"))
                .isInstanceOf(AnswerException.class)
                .hasMessageContaining("pull-down");
    }
}
