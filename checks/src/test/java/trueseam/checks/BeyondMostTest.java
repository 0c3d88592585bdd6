package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.plan.BeyondTakenException;
import trueseam.fitting.plan.LargeAmounts;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.polygon.Region;

/**
 * Two and four times the largest amount that an alteration is trusted with: where a piece cannot take it (a hinge folds over, a line
 * crosses, a dart gives out), the answer is one sentence that names the way out; nothing is drawn that is no piece.
 */
class BeyondMostTest {

    /** What a refusal tells her to do: another size, another amount, another way, or the place that gives the rest. */
    private static final String WAY_OUT =
            ".*\\b(take|takes|lap|move|aim|cut|make|let|lower|share|go|raise|flare|mark|sew|open|alter|narrow|lay|widen)\\b.*";

    private static final LengthFormat SHOW = LengthFormat.inches(8);

    /** A refusal also says how much can be taken. */
    private static final String HOW_MUCH = ".*; (of the .+ about .+|hardly any of the .+) can be taken\\.";

    static Stream<Pattern> garments() {
        List<Pattern> all = new ArrayList<>(DraftedGarments.inSizes("6", "14", "20"));
        all.addAll(DraftedGarments.inParts("14"));
        all.addAll(DraftedGarments.withCollar("14"));
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("garments")
    void everyAmountBeyondTheMostIsASoundPieceOrASentence(Pattern pattern) {
        int taken = 0;
        int refused = 0;
        for (Entry entry : Repertoire.of(pattern)) {
            for (Variant variant : entry.variants()) {
                for (double times : entry.isBothWays() ? new double[] {2, -2, 4, -4} : new double[] {2, 4}) {
                    Applied applied = new Applied(entry, variant, times * entry.mostMm(), Optional.empty());
                    try {
                        LargeAmounts.requireTaken(pattern, applied, SHOW);
                        WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
                        assertThat(failures(worked)).as(applied.title()).isEmpty();
                        worked.altered().pieces().forEach(piece -> assertSound(applied, pattern, piece));
                        taken++;
                    } catch (BeyondTakenException e) {
                        refused++;
                        assertThat(e.getMessage())
                                .matches(WAY_OUT)
                                .matches(HOW_MUCH)
                                .doesNotContain("\n");
                        assertCanBeTaken(pattern, applied, e.takenMm());
                    }
                }
            }
        }
        assertThat(taken).as("amounts that the pieces took").isPositive();
        assertThat(refused).as("amounts that a sentence answered").isPositive();
    }

    private static List<Proof> failures(WorkedPattern worked) {
        return Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures();
    }

    /** What a refusal says can be taken is less than what was asked, and can. */
    private static void assertCanBeTaken(Pattern pattern, Applied applied, double mm) {
        assertThat(mm / applied.mm()).as(applied.title()).isBetween(0.0, 0.999);
        WorkedPattern worked = WorkedPattern.altered(
                pattern, List.of(new Applied(applied.entry(), applied.variant(), mm, applied.side())));
        assertThat(failures(worked)).as(applied.title() + " " + mm).isEmpty();
    }

    private static void assertSound(Applied applied, Pattern before, Piece piece) {
        String what = applied.title() + " " + applied.mm() + ", " + piece.name();
        assertThat(piece.outline().signedArea()).as(what).isPositive();
        Region paper = Region.within(piece.outline(), 0.1);
        for (Dart dart : piece.darts()) {
            if (dart instanceof Dart.EdgeDart d) {
                assertThat(paper.contains(d.apex())).as(what + ", " + d.name()).isTrue();
            }
        }
        if (piece.fold().isPresent() && !piece.kind().isBand()) {
            double fold = before.piece(piece.name())
                    .edge(piece.fold().orElseThrow())
                    .path()
                    .start()
                    .x();
            assertThat(piece.outline().bounds().minX()).as(what).isGreaterThan(fold - 0.5);
        }
    }
}
