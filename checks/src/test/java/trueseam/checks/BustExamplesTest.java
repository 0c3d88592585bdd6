package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.size.SizeTables;

/** Fronts against published and common examples. */
class BustExamplesTest {

    private static final double INCH_MM = 25.4;

    @Test
    void threeInchesOfBustAreAnInchAndAHalfInEachHalfFrontAndNothingInTheBack() {
        // trade.md 6, example 3: high bust 36 is size 14 [TX372]; full bust 39: need 3, fronts only, 1 1/2 each half.
        WorkedPattern bodice = altered(bodice(), "full bust", "", 3 * INCH_MM);
        assertThat(intake(bodice.altered(), "bodice front", "waist dart")
                        - intake(bodice.original(), "bodice front", "waist dart"))
                .isCloseTo(1.5 * INCH_MM, within(0.5));
        WorkedPattern dress = altered(dress(), "full bust", "let the hem grow", 3 * INCH_MM);
        assertThat(change(dress, Measure.HIP_GIRTH)).isCloseTo(3 * INCH_MM, within(0.1));
        assertThat(change(dress, Measure.WAIST_GIRTH)).isCloseTo(0, within(0.1));
        assertThat(dress.altered().piece("dress back"))
                .isEqualTo(dress.original().piece("dress back"));
        assertHolds(bodice);
        assertHolds(dress);
    }

    @Test
    void aPatternDrawnForFourOverTheUnderBustGetsHalfAnInchInEachHalfFrontForFive() {
        // trade.md 6, example 4: bust less under-bust is 5 in, the pattern is drawn for 4: 1/2 in for each half front.
        WorkedPattern dress = altered(dress(), "full bust", "let the hem grow", INCH_MM);
        assertThat(dress.altered().piece("dress front").sewnLength("hem")
                        - dress.original().piece("dress front").sewnLength("hem"))
                .isCloseTo(0.5 * INCH_MM, within(0.1));
        WorkedPattern kept = altered(dress(), "full bust", "keep the hem", INCH_MM);
        assertThat(kept.altered().piece("dress front").sewnLength("hem")
                        - kept.original().piece("dress front").sewnLength("hem"))
                .isCloseTo(0, within(0.5));
    }

    @Test
    void aFrontWithoutASideDartGetsOneAndItsSideSeamStaysAsLongAsItWas() {
        // trade.md 4.3, full bust: the side seam's sewn length is unchanged; a front without a dart is given one
        // (common practice).
        Pattern whole = bodice();
        Piece front = whole.piece("bodice front");
        Piece plain = withoutDartsOn(front, "side");
        Pattern pattern = whole.withPieces(List.of(plain, whole.piece("bodice back"), whole.piece("sleeve")));
        WorkedPattern worked = altered(pattern, "full bust", "", INCH_MM);
        assertThat(worked.altered().piece("bodice front").dartsOn("side")).hasSize(1);
        assertThat(worked.altered().piece("bodice front").sewnLength("side"))
                .isCloseTo(plain.sewnLength("side"), within(0.1));
        assertHolds(worked);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, -0.5})
    void theBustPointGoesByTheWholeAmountDownAndByHalfOfItOnEachHalfFront(double inches) {
        // trade.md 4.3: bust point up or down: no division; in or out: N/2; what the dart takes up stays.
        for (String way : List.of("move the dart", "aim the dart")) {
            WorkedPattern down = altered(bodice(), "bust point height", way, inches * INCH_MM);
            Piece before = down.original().piece("bodice front");
            Piece after = down.altered().piece("bodice front");
            assertThat(after.landmark("bust point").orElseThrow().y())
                    .isCloseTo(before.landmark("bust point").orElseThrow().y() - inches * INCH_MM, within(1e-6));
            assertThat(intake(down.altered(), "bodice front", "waist dart"))
                    .isCloseTo(intake(down.original(), "bodice front", "waist dart"), within(0.1));
            WorkedPattern out = altered(bodice(), "bust point width", way, inches * INCH_MM);
            assertThat(change(out, Measure.BUST_POINT_WIDTH)).isCloseTo(inches * INCH_MM, within(1e-6));
        }
    }

    @Test
    void aHollowChestLosesAtTheCentreAndNothingAtTheArmhole() {
        // trade.md 4.3, hollow chest: centre front neck lowered d, to 0 at the armhole.
        WorkedPattern worked = altered(bodice(), "full or hollow chest", "", -INCH_MM / 4);
        Piece before = worked.original().piece("bodice front");
        Piece after = worked.altered().piece("bodice front");
        assertThat(after.sewnLength("centre front") - before.sewnLength("centre front"))
                .isCloseTo(-INCH_MM / 4, within(0.3));
        assertThat(after.sewnLength("armhole")).isCloseTo(before.sewnLength("armhole"), within(0.1));
        assertThat(after.sewnLength("shoulder")).isCloseTo(before.sewnLength("shoulder"), within(0.1));
    }

    private static Piece withoutDartsOn(Piece piece, String edge) {
        List<Dart> darts = piece.darts().stream()
                .filter(dart -> !(dart instanceof Dart.EdgeDart d && d.edge().equals(edge)))
                .toList();
        return new Piece(
                piece.name(),
                piece.kind(),
                piece.cutCount(),
                piece.fold(),
                piece.edges(),
                darts,
                piece.notches(),
                piece.landmarks(),
                piece.levels(),
                piece.markings(),
                piece.grain());
    }

    private static void assertHolds(WorkedPattern worked) {
        assertThat(Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures())
                .isEmpty();
    }

    private static Pattern bodice() {
        return Shells.bodice(DraftFigure.of(SizeTables.named("misses"), "14"), DraftEase.fitted());
    }

    private static Pattern dress() {
        return Shells.dress(DraftFigure.of(SizeTables.named("misses"), "14"), DraftEase.fitted());
    }

    private static double intake(Pattern pattern, String piece, String dart) {
        return pattern.piece(piece).darts().stream()
                .filter(d -> d.name().equals(dart))
                .mapToDouble(d -> d instanceof Dart.EdgeDart e ? e.mouthMm() : ((Dart.DiamondDart) d).intakeMm())
                .sum();
    }

    private static WorkedPattern altered(Pattern pattern, String name, String way, double mm) {
        Entry entry = Repertoire.named(name).orElseThrow();
        return WorkedPattern.altered(
                pattern, List.of(new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty())));
    }

    private static double change(WorkedPattern worked, Measure measure) {
        return FlatPattern.measure(worked.altered(), measure).orElseThrow().mm()
                - FlatPattern.measure(worked.original(), measure).orElseThrow().mm();
    }
}
