package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.Chapter;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;

/** The numbers that handbooks give for back, shoulder and neck, on the drafted bodice of size 14. */
class BackAndShoulderTest {

    private static final double INCH = 25.4;
    private static final Pattern BODICE = DraftedGarments.inSizes("14").get(0);

    /** What a seam may change by when it is walked. */
    private static final double WALK_MM = 0.1;

    private static WorkedPattern worked(String name, String way, double mm) {
        Entry entry = Repertoire.named(name).orElseThrow();
        return WorkedPattern.altered(
                BODICE, List.of(new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty())));
    }

    private static Pattern altered(String name, String way, double mm) {
        return worked(name, way, mm).altered();
    }

    private static double longer(Pattern altered, String piece, String edge) {
        return altered.piece(piece).sewnLength(edge) - BODICE.piece(piece).sewnLength(edge);
    }

    private static double more(Pattern altered, Measure measure) {
        return FlatPattern.measure(altered, measure).orElseThrow().mm()
                - FlatPattern.measure(BODICE, measure).orElseThrow().mm();
    }

    @Test
    void halfAnInchSlashedIntoTheBackIsSharedByBackAndFrontArmholeAtTheShoulder() {
        // [ND1921], trade.md example 8: back spread 1/2, of which 1/4 comes off the back armhole edge at the shoulder
        // and 1/4 is
        // added to the front armhole edge, tapering to the notch. Spread on each half, so 1 inch across the whole back.
        Pattern altered = altered("across back", "slash", INCH);
        assertThat(longer(altered, "bodice back", "waist")).isEqualTo(INCH / 2, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "shoulder")).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "shoulder")).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(0, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "armhole")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void theQuarterInchOnTheFrontArmholeTapersToNothingAtTheNotch() {
        // [ND1921], trade.md example 8; as drawn, before truing smooths the armhole.
        Chapter drawn = worked("across back", "slash", INCH).chapters().stream()
                .filter(chapter -> chapter.after().name().equals("bodice front"))
                .findFirst()
                .orElseThrow();
        Path before = drawn.before().edge("armhole").path();
        Path after = drawn.after().edge("armhole").path();
        assertThat(after.end().distanceTo(before.end())).isBetween(INCH / 4, 0.3 * INCH);
        double notch = before.atLevel(drawn.before().level(LevelName.ACROSS).orElseThrow())
                .orElseThrow()
                .alongMm();
        for (double at = 0; at < notch; at += 5) {
            assertThat(after.pointAt(at).distanceTo(before.pointAt(at)))
                    .as("front armhole at " + at)
                    .isLessThan(1e-6);
        }
    }

    @ParameterizedTest
    // [HERTZ], trade.md example 13: back length by posture, in inches; the very bent at the upper end of 1/2 to 3/4.
    @CsvSource({
        "erect back, all across, 0.25, -0.25",
        "round back, neck dart, 0.25, 0.25",
        "round back, neck dart, 0.75, 0.75"
    })
    void backLengthFollowsPosture(String name, String way, double inches, double longerInches) {
        Pattern altered = altered(name, way, inches * INCH);
        assertThat(more(altered, Measure.BACK_WAIST_LENGTH)).isEqualTo(longerInches * INCH, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "side")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void anErectBackLosesAtTheBackArmholeWhatItLosesAtTheCentre() {
        // [HERTZ], trade.md example 13: the same amount off the back armhole.
        Pattern altered = altered("erect back", "all across", INCH / 4);
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(-INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice front", "armhole")).isEqualTo(0, within(WALK_MM));
    }

    @Test
    void aRoundBackKeepsItsNeckByADartAndItsArmhole() {
        // Common practice: the gained width is given to a dart, so that neck and armhole are sewn as before.
        Pattern altered = altered("round back", "neck dart", INCH / 2);
        assertThat(longer(altered, "bodice back", "neck")).isEqualTo(0, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "armhole")).isEqualTo(0, within(WALK_MM));
        assertThat(altered.piece("bodice back").dartsOn("neck")).hasSize(1);
    }

    @Test
    void shoulderBladesEnlargeTheDartByTheAmount() {
        // Common practice: the dart takes the amount and the shoulder is sewn as long as before.
        Pattern altered = altered("shoulder blades", "", INCH / 4);
        assertThat(mouth(altered) - mouth(BODICE)).isEqualTo(INCH / 4, within(WALK_MM));
        assertThat(longer(altered, "bodice back", "shoulder")).isEqualTo(0, within(WALK_MM));
    }

    private static double mouth(Pattern pattern) {
        Piece back = pattern.piece("bodice back");
        var dart = back.dartsOn("shoulder").get(0);
        return back.edge("shoulder")
                .path()
                .pointAt(dart.fromMm())
                .distanceTo(back.edge("shoulder").path().pointAt(dart.toMm()));
    }
}
