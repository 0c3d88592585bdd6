package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Side;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Sides;

/**
 * A mirrored piece comes out mirrored: every alteration of skirts and trousers, done on right and left pieces, gives both the shape that
 * it gives the half piece; and done on one side alone it holds every proof. (Pieces with an armhole are not held to this here.)
 */
class RepertoireMirrorTest {

    /**
     * A hundredth of a millimetre along a waist line of 200 mm, mm²: a corner whose two lines both bend is trued one line after the
     * other in the order of the outline, and a mirrored outline runs the other way.
     */
    private static final double SAME_AREA_MM2 = 2;

    @TestFactory
    Stream<DynamicTest> everyAlterationGivesRightAndLeftTheShapeThatItGivesTheHalfPiece() {
        List<DynamicTest> tests = new ArrayList<>();
        List<Pattern> patterns = new ArrayList<>(DraftedGarments.inSizes("14"));
        patterns.addAll(DraftedGarments.inParts("14"));
        for (Pattern pattern : patterns) {
            boolean upper = pattern.pieces().stream().map(Piece::kind).anyMatch(k -> k.isUpper() || k.isSleeve());
            for (Entry entry : upper ? List.<Entry>of() : Repertoire.of(pattern)) {
                for (Variant variant : entry.variants()) {
                    for (double share : entry.isBothWays() ? new double[] {1, -1} : new double[] {1}) {
                        double mm = share * entry.usualMm();
                        tests.add(DynamicTest.dynamicTest(
                                pattern.name() + ": " + entry.name() + ", " + variant.name() + " " + mm,
                                () -> holds(pattern, entry, variant, mm)));
                    }
                }
            }
        }
        return tests.stream();
    }

    private static void holds(Pattern half, Entry entry, Variant variant, double mm) {
        Pattern parted = Sides.split(half);
        WorkedPattern both;
        try {
            both = worked(parted, new Applied(entry, variant, mm, Optional.empty()));
        } catch (AlterationException refused) {
            return; // RepertoireTest says when a piece may refuse
        }
        WorkedPattern one = worked(half, new Applied(entry, variant, mm, Optional.empty()));
        for (Piece piece : half.pieces()) {
            double area = one.altered().piece(piece.name()).outline().signedArea();
            for (String side : List.of(", right", ", left")) {
                assertThat(both.altered().piece(piece.name() + side).outline().signedArea())
                        .as(piece.name() + side)
                        .isCloseTo(area, within(SAME_AREA_MM2));
            }
        }
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            worked(parted, new Applied(entry, variant, mm, Optional.of(side)));
        }
    }

    private static WorkedPattern worked(Pattern pattern, Applied applied) {
        WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
        assertThat(Prover.prove(worked, Map.of(), false).failures()).isEmpty();
        return worked;
    }
}
