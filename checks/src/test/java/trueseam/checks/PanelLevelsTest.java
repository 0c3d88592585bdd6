package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Hip and bust lines meet at the seams between panels, and a panel that is moved against its neighbour is found out. */
class PanelLevelsTest {

    private static Pattern garment(String word) {
        return DraftedGarments.inParts("14").stream()
                .filter(pattern -> pattern.name().startsWith(word))
                .findFirst()
                .orElseThrow();
    }

    private static List<Proof> levels(WorkedPattern worked) {
        return Prover.prove(worked, Map.of(), false).proofs().stream()
                .filter(proof ->
                        proof.kind() == Proof.Kind.LEVEL && proof.where().contains("panel"))
                .toList();
    }

    @Test
    void hipLinesOfGoresMeetAfterTheHipIsMadeLargerAtEverySeam() {
        WorkedPattern worked = WorkedPattern.altered(
                garment("gored"), List.of(new PanelGirth(0, 25.4, 50.8, HemChoice.CARRIED, PanelChoice.ALL_SEAMS)));
        assertThat(levels(worked)).hasSize(2).allSatisfy(proof -> assertThat(proof.holds())
                .as(proof.sentence())
                .isTrue());
    }

    @Test
    void bustLinesOfPanelsMeetAfterTheBustIsMadeLargerAtEverySeam() {
        WorkedPattern worked = WorkedPattern.altered(
                garment("princess"), List.of(new PanelGirth(38.1, 25.4, 0, HemChoice.CARRIED, PanelChoice.ALL_SEAMS)));
        assertThat(levels(worked)).hasSize(2).allSatisfy(proof -> assertThat(proof.holds())
                .as(proof.sentence())
                .isTrue());
    }

    @Test
    void aGoreThatIsLengthenedAloneIsOffByWhatItIsLonger() {
        Pattern gored = garment("gored");
        WorkedPattern worked = WorkedPattern.of(gored)
                .then(
                        "one gore alone",
                        new LengthAtLine("length", LevelName.SKIRT_LENGTH, Set.of(PieceKind.SKIRT_CENTRE_FRONT), 10)
                                .work(gored),
                        false);
        // DER: 10 mm down the grain along an edge that leans by the flare is 10 / cos(lean), a hair more.
        assertThat(levels(worked))
                .filteredOn(proof -> !proof.holds())
                .singleElement()
                .satisfies(proof -> {
                    assertThat(proof.where()).isEqualTo("front panel, hip line");
                    assertThat(proof.value()).isCloseTo(10, within(0.1));
                });
    }
}
