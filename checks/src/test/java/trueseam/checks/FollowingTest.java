package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

/** What is sewn to an edge that was altered on purpose follows it. */
class FollowingTest {

    private static final double MM = 12.7;

    @Test
    void anArmholeThatGrowsByTheLengthAboveTheBustTakesTheCapWithItAndLeavesTheSleeveItsLength() {
        for (Pattern pattern : DraftedGarments.inSizes("8", "14", "20")) {
            if (pattern.pieces().stream().noneMatch(piece -> piece.name().equals("sleeve"))) {
                continue;
            }
            WorkedPattern worked = WorkedPattern.altered(
                    pattern,
                    List.of(Applied.usual(
                            Repertoire.named("length above the bust").orElseThrow(), MM)));
            String front = pattern.pieces().get(0).name();
            String back = pattern.pieces().get(1).name();
            // trade.md 4.3, length above the bust: the armhole grows by about d in front and d at the back.
            assertThat(longer(worked, front, "armhole")).isCloseTo(MM, within(0.5));
            assertThat(longer(worked, back, "armhole")).isCloseTo(MM, within(0.5));
            // Each half of the cap takes what its own armhole took; the proof of the whole allows 0.5 mm.
            assertThat(longer(worked, "sleeve", "cap front")).isCloseTo(longer(worked, front, "armhole"), within(0.25));
            assertThat(longer(worked, "sleeve", "cap back")).isCloseTo(longer(worked, back, "armhole"), within(0.25));
            // The arm is as long and as thick as before.
            for (Measure measure : List.of(Measure.ARM_LENGTH, Measure.UPPER_ARM_GIRTH)) {
                assertThat(mm(worked.altered(), measure)).isCloseTo(mm(pattern, measure), within(0.1));
            }
        }
    }

    private static double longer(WorkedPattern worked, String piece, String edge) {
        return worked.altered().piece(piece).sewnLength(edge)
                - worked.original().piece(piece).sewnLength(edge);
    }

    private static double mm(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }
}
