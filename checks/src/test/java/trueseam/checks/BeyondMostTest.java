package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.tissue.BeyondReachException;
import trueseam.fitting.work.WorkedPattern;
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
            ".*\\b(take|takes|lap|move|aim|cut|make|let|lower|share|go|raise|flare|mark|sew|open|alter)\\b.*";

    /** Where a proof says by how much a piece fails, and the fit warns of the amount beside it: a few extreme levels. */
    private static final double FAILED_SHARE = 0.02;

    static Stream<Pattern> garments() {
        List<Pattern> all = new ArrayList<>(DraftedGarments.inSizes("6", "14", "20"));
        all.addAll(DraftedGarments.inParts("14"));
        all.addAll(DraftedGarments.withCollar("14"));
        all.removeIf(pattern ->
                pattern.pieces().stream().noneMatch(piece -> piece.kind().isUpper()));
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("garments")
    void everyAmountBeyondTheMostIsASoundPieceOrASentence(Pattern pattern) {
        int tried = 0;
        int refused = 0;
        List<String> failed = new ArrayList<>();
        for (Entry entry : Repertoire.of(pattern)) {
            if (entry.family() != Family.BODICE && entry.family() != Family.SLEEVE) {
                continue;
            }
            for (Variant variant : entry.variants()) {
                for (double times : entry.isBothWays() ? new double[] {2, -2, 4, -4} : new double[] {2, 4}) {
                    Applied applied = new Applied(entry, variant, times * entry.mostMm(), Optional.empty());
                    tried++;
                    try {
                        WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
                        List<Proof> failures = Prover.prove(worked, Map.of(), worked.capEaseAsked())
                                .failures();
                        if (failures.isEmpty()) {
                            worked.altered().pieces().forEach(piece -> assertSound(applied, pattern, piece));
                        } else {
                            failed.add(applied.title() + " " + applied.mm() + ": "
                                    + failures.get(0).sentence());
                        }
                    } catch (AlterationException | BeyondReachException e) {
                        refused++;
                        assertThat(e.getMessage()).matches(WAY_OUT).doesNotContain("\n");
                    }
                }
            }
        }
        assertThat(refused).as("amounts that a sentence answered").isPositive();
        assertThat(failed).hasSizeLessThanOrEqualTo((int) Math.ceil(FAILED_SHARE * tried));
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
