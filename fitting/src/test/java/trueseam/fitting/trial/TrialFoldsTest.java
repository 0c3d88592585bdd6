package trueseam.fitting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;

class TrialFoldsTest {

    /**
     * The rows of the trade's list of folds (trade facts, section 7): symptom, the likely cause named first, a change that the row names,
     * its source mark. Written from the list, not from the tables.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | pull lines | full-bust | full bust + | CP",
                "1 | front waist rises | full-bust | front length + | CP",
                "2 | to the bust | full-bust | full bust + | CP",
                "2 | to the bust | dart-high | bust point height + | CP",
                "2 | to the bust | dart-low | bust point height - | CP",
                "3 | below the bust | small-bust | full bust - | DM1911",
                "3 | below the bust | front-long | front length - | DM1911",
                "4 | shoulder tip | square-shoulder | square shoulder + | WSU2246",
                "5 | armhole sags | sloping-shoulder | sloping shoulder + | CP",
                "6 | across the upper chest | square-shoulder | square shoulder + | ND1921",
                "6 | across the upper chest | hollow-chest | full or hollow chest - | ND1921",
                "7 | below the collar | neck-high-behind | neck + | CP",
                "8 | stands away | round-back | round back + | DM1911",
                "9 | up at the centre back | round-back | round back + | CP",
                "10 | drops at the centre back | erect-back | erect back + | CP",
                "11 | stop short of the sides | sway-back | sway-back + | web:sway1",
                "12 | reach the sides and the front | short-waisted | length below the bust - | web:sway1",
                "13 | smooth when the skirt is pulled down | tight-hip | skirt hip + | web:sway2",
                "13 | smooth when the skirt is pulled down | tight-seat | large seat + | web:sway2",
                "14 | arms reach forward | broad-back | across back + | CP",
                "15 | up and down | narrow-back | across back - | CP",
                "16 | pulled off the neck point | shoulder-long | shoulder width - | WSU2246",
                "16 | pulled off the neck point | neck-wide | neck - | WSU2246",
                "17 | behind the ridge | forward-shoulder | forward shoulder + | CP",
                "18 | neck line gapes | neck-over-hollow-chest | gaping neck + | CP",
                "18 | neck line gapes | neck-over-full-bust | gaping neck + | CP",
                "19 | gapes in front | armhole-over-full-bust | gaping armhole + | CP",
                "20 | cuts in front | armhole-high | armhole height - | CP",
                "20 | cuts in front | chest-wide | shoulder width - | CP",
                "21 | swings forward | back-narrow-below | back below armholes + | CP",
                "21 | swings forward | abdomen | full abdomen + | CP",
                "22 | swings back | front-narrow | full bust + | CP",
                "23 | down to the underarm | cap-low | cap height + | CP",
                "24 | across the sleeve cap | cap-high | cap height - | CP",
                "25 | across the upper arm | large-arm | upper arm girth + | CP",
                "26 | to the back or to the front | arm-forward | cap turn + | CP",
                "27 | ripples | cap-ease-much | cap ease - | CP",
                "28 | when the arm bends | no-elbow-fullness | elbow fullness + | CP",
                "29 | stands out | abdomen | full abdomen + | ND1921",
                "30 | under the seat | large-seat | large seat + | CP",
                "31 | below the band | sway-back | sway-back of a skirt + | CP",
                "32 | across at the hip | tight-hip | skirt hip + | CP",
                "33 | to one side | one-hip-high | one hip higher + | CP",
                "34 | smile | rise-short | crotch depth + | web:smile",
                "34 | smile | crotch-point-short | back crotch length + | web:rise",
                "34 | smile | full-seat | trouser seat + | web:smile",
                "35 | frown | crotch-point-long | inner thigh - | web:smile",
                "35 | frown | front-rise-long | front crotch length - | web:smile",
                "36 | taut | tight-trouser-seat | trouser waist + | web:pants",
                "37 | fork to the side seam | abdomen | trouser abdomen + | web:pants",
                "38 | up and down at the fork | fork-wide | inner thigh - | web:pants",
                "39 | under the seat | flat-seat | trouser seat - | CP",
                "40 | bottom of the inseam | leg-set-in | bow leg + | HERTZ",
                "41 | crotch to the thigh | full-inner-thigh | inner thigh + | CP",
                "41 | crotch to the thigh | full-outer-thigh | outer thigh + | CP",
                "42 | on sitting | back-rise-short | back crotch length + | CP",
                "43 | collar stands off | collar-neck-long | collar neck edge - | CP",
                "43 | collar stands off | collar-edge-short | collar outer edge + | CP",
            })
    void everyRowOfTheTradesListIsThereWithItsCausesChangesAndSource(
            int number, String words, String cause, String change, String source) {
        Symptom symptom = TrialFolds.symptom(number).orElseThrow();

        assertThat(symptom.seen()).contains(words);
        assertThat(symptom.source()).contains(source);
        assertThat(symptom.causes()).extracting(Cause::key).contains(cause);
        assertThat(TrialFolds.cause(cause).orElseThrow().remedies())
                .extracting(remedy -> remedy.entry().name() + (remedy.isPlus() ? " +" : " -"))
                .contains(change);
    }

    @Test
    void numbersRunOnWithoutAGapFromTheTradesList() {
        List<Integer> numbers =
                TrialFolds.symptoms().stream().map(Symptom::number).toList();

        assertThat(numbers).hasSizeGreaterThanOrEqualTo(43);
        for (int i = 0; i < numbers.size(); i++) {
            assertThat(numbers.get(i)).isEqualTo(i + 1);
        }
    }

    @Test
    void everySymptomHasACauseThatCanBeDone() {
        for (Symptom symptom : TrialFolds.symptoms()) {
            assertThat(symptom.causes().stream()
                            .anyMatch(cause -> !cause.remedies().isEmpty()))
                    .as(symptom.seen())
                    .isTrue();
        }
    }

    @Test
    void aCauseThatNothingIsDoneAboutMustSayWhy() {
        assertThatThrownBy(() -> new Cause("key", "words", List.of(), " "))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not say why");
    }

    @Test
    void everyCauseIsNamedBySomeSymptom() {
        Set<Cause> named = new HashSet<>();
        TrialFolds.symptoms().forEach(symptom -> named.addAll(symptom.causes()));

        assertThat(TrialFolds.causes()).allMatch(named::contains);
    }

    @Test
    void everyAlterationThatSaysAFoldCallsForItIsReachedFromASymptomOfItsOwnWords() {
        for (Entry entry : Repertoire.all()) {
            if (entry.folds().isEmpty()) {
                continue;
            }
            Set<String> words = words(String.join(" ", entry.folds()));
            List<Symptom> leading = TrialFolds.symptoms().stream()
                    .filter(symptom -> symptom.causes().stream()
                            .flatMap(cause -> cause.remedies().stream())
                            .anyMatch(remedy -> remedy.entry().equals(entry)))
                    .toList();

            assertThat(leading).as(entry.name()).isNotEmpty();
            assertThat(leading)
                    .as("a symptom that says what %s says is seen: %s", entry.name(), entry.folds())
                    .anyMatch(symptom -> {
                        Set<String> common = words(symptom.seen() + " " + symptom.tried());
                        common.retainAll(words);
                        return common.size() >= 2;
                    });
        }
    }

    /** Words that say something: five letters or more, without their endings. */
    private static Set<String> words(String text) {
        Set<String> words = new HashSet<>();
        for (String word : text.toLowerCase(java.util.Locale.ROOT).split("[^a-z]+")) {
            if (word.length() >= 4
                    && !Set.of("that", "they", "them", "with", "from", "where").contains(word)) {
                words.add(word.replaceAll("(ing|es|s|d)$", ""));
            }
        }
        return words;
    }

    @Test
    void whereTwoCausesShareTheFoldsAQuestionTellsTheFirstFromEveryOther() {
        for (Symptom symptom : TrialFolds.symptoms()) {
            Cause first = symptom.causes().get(0);
            for (Cause other : symptom.causes().subList(1, symptom.causes().size())) {
                assertThat(TrialFolds.questions())
                        .as("%d: %s or %s", symptom.number(), first.key(), other.key())
                        .anyMatch(question -> question.tellsApart(first, other));
            }
        }
    }

    @Test
    void everyQuestionTellsApartCausesOfOneSymptomOrOfFoldsAtOnePlace() {
        for (TellingQuestion question : TrialFolds.questions()) {
            assertThat(TrialFolds.causes().stream().anyMatch(one -> TrialFolds.causes().stream()
                            .anyMatch(other -> question.tellsApart(one, other) && meet(one, other))))
                    .as(question.key())
                    .isTrue();
        }
    }

    private static boolean meet(Cause one, Cause other) {
        Set<GarmentPlace> places = places(one);
        places.retainAll(places(other));
        return !places.isEmpty();
    }

    private static Set<GarmentPlace> places(Cause cause) {
        Set<GarmentPlace> places = new HashSet<>();
        for (Symptom symptom : TrialFolds.symptoms()) {
            if (symptom.causes().contains(cause)) {
                places.addAll(symptom.places());
            }
        }
        return places;
    }

    @Test
    void everyPlaceOnTheGarmentIsNamedBySomeSymptom() {
        Set<GarmentPlace> named = new HashSet<>();
        TrialFolds.symptoms().forEach(symptom -> named.addAll(symptom.places()));

        assertThat(named).containsExactlyInAnyOrder(GarmentPlace.values());
    }
}
