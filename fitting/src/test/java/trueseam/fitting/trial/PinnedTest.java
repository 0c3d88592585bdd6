package trueseam.fitting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.body.Side;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;

class PinnedTest {

    static Pinned pinned(String change, String amount, PinnedAs as, PinnedAt at) {
        String name = change.substring(0, change.length() - 2);
        Entry entry = Repertoire.named(name).orElseThrow();
        Remedy remedy = new Remedy(entry, entry.variants().get(0), change.endsWith("+"));
        double mm = Length.parse(amount, LengthUnit.INCH).mm();
        return new Pinned(Optional.empty(), Optional.empty(), remedy, mm, as, at, "");
    }

    /**
     * Common practice: a fold lies double; a tuck for N is N/2 deep (Costume construction text, Central Washington University, chapter
     * 17); girths share N over left and right, lengths and crotch seams are never halved or added (trade facts, 4.1).
     */
    @ParameterizedTest
    @CsvSource({
        // a fold 1/4 in deep takes up 1/2 in; at both side seams alike the hip loses 1 in
        "skirt hip -, 1/4, FOLD_DEPTH, BOTH, -1",
        "skirt hip -, 1/2, TAKEN_UP, BOTH, -1",
        // 1/4 in let out on each edge of both side seams: four edges, 1 in (trade facts 4.1: N/4)
        "skirt hip +, 1/4, EACH_EDGE, BOTH, 1",
        // across the centre back, once: half of it on each half piece on the fold
        "across back +, 1/2, OPENED, CENTRE, 1/2",
        "across back +, 1/2, OPENED, BOTH, 1",
        "skirt waist -, 1/4, FOLD_DEPTH, CENTRE, -1/2",
        // lengths: a tuck 1/4 in deep shortens by 1/2 in, wherever it was pinned
        "length below the bust -, 1/4, FOLD_DEPTH, BOTH, -1/2",
        "sway-back +, 1/4, FOLD_DEPTH, CENTRE, 1/2",
        "crotch depth +, 3/4, OPENED, BOTH, 3/4",
        // a wedge of the neck line: as much on each half front; across the centre each half gets half
        "gaping neck +, 3/8, TAKEN_UP, BOTH, 3/8",
        "gaping neck +, 3/8, TAKEN_UP, CENTRE, 3/16",
        // a shoulder seam that takes up 1/2 in lowers front and back by 1/4 in each
        "sloping shoulder +, 1/4, FOLD_DEPTH, BOTH, 1/4",
        "square shoulder +, 1/4, EACH_EDGE, BOTH, 1/4",
        // each sleeve and each leg by itself
        "upper arm girth +, 3/4, OPENED, BOTH, 3/4",
        "inner thigh -, 1/4, FOLD_DEPTH, BOTH, -1/2",
        // a mark is moved as far as it is moved; bust points go apart by both sides together
        "bust point height +, 1/2, MOVED, BOTH, 1/2",
        "bust point width -, 1/4, MOVED, BOTH, -1/2",
        "one hip larger +, 1/2, OPENED, LEFT, 1/2",
    })
    void whatThePinsTakeUpInAllBecomesTheAlterationsAmount(
            String change, String amount, PinnedAs as, PinnedAt at, String wanted) {
        boolean minus = wanted.startsWith("-");
        double mm = Length.parse(minus ? wanted.substring(1) : wanted, LengthUnit.INCH)
                        .mm()
                * (minus ? -1 : 1);

        assertThat(pinned(change, amount, as, at).amountMm()).isCloseTo(mm, within(1e-9));
    }

    @Test
    void everyAlterationSaysHowPinsCountForIt() {
        for (Entry entry : Repertoire.all()) {
            assertThat(PinCounting.of(entry).minus().isPresent())
                    .as(entry.name())
                    .isEqualTo(entry.isBothWays());
        }
    }

    @Test
    void onOneSideAGirthTakesWhatWasPinnedThereAndTheOtherSideNothing() {
        Pinned left = pinned("skirt hip +", "1/2", PinnedAs.OPENED, PinnedAt.LEFT);

        // The entry shares N over four edges; two of them, N/2 = 1/2 in, are on the left.
        assertThat(left.amountMm()).isCloseTo(25.4, within(1e-9));
        assertThat(left.request().side()).contains(Side.LEFT);
    }

    @Test
    void theReckoningIsSaidInWords() {
        assertThat(pinned("skirt hip -", "1/4", PinnedAs.FOLD_DEPTH, PinnedAt.BOTH)
                        .reckoning(LengthFormat.inches(8)))
                .isEqualTo(
                        "A fold 1/4 in deep takes up 1/2 in on each side; it counts round the whole body: left and right"
                                + " are added: skirt hip -1 in, which makes the hip smaller.");
    }

    @Test
    void aFoldIsNoWayToMeasureWhatWasLetOut() {
        assertThatThrownBy(() -> pinned("skirt hip +", "1/4", PinnedAs.FOLD_DEPTH, PinnedAt.BOTH))
                .isInstanceOfSatisfying(
                        PinnedException.class, e -> assertThat(e.field()).isEqualTo(PinnedException.Field.AS))
                .hasMessageContaining("let out")
                .hasMessageContaining("\"opened\" or \"each edge\"");
    }

    @Test
    void aChangeOfOneSideNeedsItsSide() {
        assertThatThrownBy(() -> pinned("one hip higher +", "1/4", PinnedAs.OPENED, PinnedAt.BOTH))
                .isInstanceOfSatisfying(
                        PinnedException.class, e -> assertThat(e.field()).isEqualTo(PinnedException.Field.SIDE));
    }

    @Test
    void anAmountIsALengthAboveZero() {
        Entry entry = Repertoire.named("sway-back").orElseThrow();
        Remedy remedy = new Remedy(entry, entry.variants().get(0), true);
        for (double mm : new double[] {0, -3, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Pinned(
                            Optional.empty(), Optional.empty(), remedy, mm, PinnedAs.TAKEN_UP, PinnedAt.BOTH, ""))
                    .isInstanceOf(PinnedException.class)
                    .hasMessageContaining("above zero");
        }
    }
}
