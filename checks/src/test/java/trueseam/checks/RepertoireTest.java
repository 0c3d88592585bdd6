package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Stay;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * Every alteration of the repertoire alone, larger and smaller, each way of doing it, on every drafted garment that can take it: every
 * proof of the design holds, and every edge that the entry says stays has kept its sewn length (trade.md 4.3, column "unchanged").
 */
class RepertoireTest {

    /** What a stay may change by: as much as a seam may when it is walked. */
    private static final double STAY_MM = 0.1;

    @TestFactory
    Stream<DynamicTest> everyAlterationAloneHoldsEveryProofAndKeepsWhatMustStay() {
        List<DynamicTest> tests = new ArrayList<>();
        List<Pattern> patterns = new ArrayList<>(DraftedGarments.inSizes("8", "14", "20"));
        patterns.addAll(DraftedGarments.inParts("8", "14", "20"));
        patterns.addAll(DraftedGarments.withCollar("8", "14", "20"));
        for (Pattern pattern : patterns) {
            for (Entry entry : Repertoire.of(pattern)) {
                for (Variant variant : entry.variants()) {
                    for (double share : entry.isBothWays() ? new double[] {0.5, 1, -0.5, -1} : new double[] {0.5, 1}) {
                        Applied applied = new Applied(entry, variant, share * entry.usualMm(), Optional.empty());
                        tests.add(DynamicTest.dynamicTest(
                                pattern.name() + " " + pattern.size() + ": " + applied.title() + " " + applied.mm(),
                                () -> holds(pattern, applied)));
                    }
                }
            }
        }
        return tests.stream();
    }

    private static void holds(Pattern pattern, Applied applied) {
        WorkedPattern worked;
        try {
            worked = WorkedPattern.altered(pattern, List.of(applied));
        } catch (AlterationException refused) {
            // A piece may refuse a whole usual amount with a sentence that says what to do, never half of one.
            assertThat(Math.abs(applied.mm()))
                    .as(refused.getMessage())
                    .isGreaterThan(0.6 * applied.entry().usualMm());
            return;
        }
        FitReport report = Prover.prove(worked, Map.of(), worked.capEaseAsked());
        assertThat(report.failures()).isEmpty();
        assertThat(worked.chapters()).isNotEmpty();
        for (Stay stay : applied.entry().stays()) {
            for (Piece piece : pattern.pieces()) {
                for (Edge edge : piece.edgesOf(stay.role())) {
                    if (stay.concerns(piece)) {
                        assertThat(worked.altered().piece(piece.name()).sewnLength(edge.name())
                                        - piece.sewnLength(edge.name()))
                                .as(stay.words() + " of " + piece.name())
                                .isBetween(-STAY_MM, STAY_MM);
                    }
                }
            }
        }
    }
}
