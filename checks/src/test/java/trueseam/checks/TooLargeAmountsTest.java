package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.drafting.Shells;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.plan.LargeAmounts;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.tissue.BeyondReachException;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/**
 * Every alteration of skirts and trousers at two and four times the largest amount that its entry is trusted with: either the pieces
 * take it and every proof holds, or it is refused with one sentence that says what to do instead.
 */
class TooLargeAmountsTest {

    private static final LengthFormat SHOW = LengthFormat.inches(8);

    /** What handbooks offer where a piece cannot take an amount: another size, another place of the pattern, an opening inside, less. */
    private static final String WAY_OUT =
            "next size|another size|smaller size|open the piece inside|side seams|at the side|crotch depth|hem line|take half";

    static Stream<Pattern> garments() {
        List<Pattern> all = new ArrayList<>();
        for (DraftFigure figure : List.of(
                DraftFigure.of(SizeTables.named("misses"), "6"),
                DraftFigure.of(SizeTables.named("misses"), "14"),
                DraftFigure.of(SizeTables.named("women"), "44"))) {
            all.add(Shells.skirt(figure, DraftEase.fitted()));
            all.add(PanelledShells.gored(figure, DraftEase.fitted(), Allowances.inches()));
            all.add(Shells.trousers(figure, DraftEase.fitted()));
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("garments")
    void whatThePiecesCannotTakeIsRefusedWithOneSentenceThatSaysWhatToDo(Pattern pattern) {
        int taken = 0;
        int refused = 0;
        for (Entry entry : Repertoire.of(pattern)) {
            for (Variant variant : entry.variants()) {
                for (double times : entry.isBothWays() ? new double[] {2, 4, -2, -4} : new double[] {2, 4}) {
                    Applied applied = new Applied(entry, variant, times * entry.mostMm(), Optional.empty());
                    try {
                        LargeAmounts.requireTaken(pattern, applied, SHOW);
                        taken++;
                    } catch (AlterationException | BeyondReachException e) {
                        refused++;
                        assertThat(e.getMessage())
                                .containsPattern(WAY_OUT)
                                .endsWith(".")
                                .doesNotContain("\n", "[", "@");
                    }
                }
            }
        }
        assertThat(taken).isPositive();
        assertThat(refused).isPositive();
    }
}
