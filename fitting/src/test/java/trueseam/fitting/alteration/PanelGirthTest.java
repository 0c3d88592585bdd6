package trueseam.fitting.alteration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.PanelledShells;
import trueseam.fitting.Drafted;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.RequestException;
import trueseam.fitting.tissue.Step;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.intake.size.SizeTables;

/** Girths of garments in panels, gores and sleeve pieces (trade facts 4.1 and worked example 38). */
class PanelGirthTest {

    private static final double IN = 25.4;
    private static final DraftEase FITTED = DraftEase.fitted();

    private static DraftFigure size(String size) {
        return DraftFigure.of(SizeTables.named("misses"), size);
    }

    private static Pattern gored(String size) {
        return PanelledShells.gored(size(size), FITTED, Allowances.inches());
    }

    private static Pattern princess(String size) {
        return PanelledShells.princess(size(size), FITTED, Allowances.inches());
    }

    private static Pattern twoPiece(String size) {
        return PanelledShells.twoPieceSleeve(size(size), FITTED, Allowances.inches());
    }

    /** How far each hip mark of all cut pieces lies out, counted as often as its edge is cut. */
    private static List<Double> hipMarks(Pattern pattern, Alteration alteration) {
        List<Double> marks = new ArrayList<>();
        for (PieceWork work : alteration.work(pattern)) {
            Piece piece = pattern.piece(work.piece());
            for (Step step : work.steps()) {
                if (step instanceof Step.Mark mark && mark.name().startsWith("hip mark")) {
                    for (int i = 0; i < piece.timesAround(); i++) {
                        marks.add(Math.abs(mark.acrossMm()) / IN);
                    }
                }
            }
        }
        return marks;
    }

    @Test
    void sixPanelsShareAHipNeedOfThreeInchesOverTwelveEdgesOfAQuarter() {
        // Example 38, common practice: 6 panels, hip need 3: 6 seams, 12 edges, 1/4 each.
        Alteration all = new PanelGirth(0, 0, 3 * IN, HemChoice.CARRIED, PanelChoice.ALL_SEAMS);
        assertThat(hipMarks(gored("14"), all)).hasSize(12).allSatisfy(out -> assertThat(out)
                .isCloseTo(0.25, within(1e-9)));
    }

    @Test
    void theFourSidePanelsAloneShareItOverEightEdgesOfThreeEighths() {
        // Example 38, common practice: CF and CB panels left alone, the 8 edges of the four side panels: 3/8 each.
        Pattern skirt = gored("14");
        Alteration sides = new PanelGirth(0, 0, 3 * IN, HemChoice.CARRIED, PanelChoice.SIDE_PANELS);
        assertThat(hipMarks(skirt, sides)).hasSize(8).allSatisfy(out -> assertThat(out)
                .isCloseTo(0.375, within(1e-9)));
        assertThat(sides.work(skirt))
                .extracting(PieceWork::piece)
                .containsExactlyInAnyOrder("skirt side front", "skirt side back");
    }

    @ParameterizedTest
    @EnumSource(PanelChoice.class)
    void theHipComesOutThreeInchesLargerHoweverItIsShared(PanelChoice seams) {
        Pattern skirt = gored("14");
        FitResult fit = Drafted.altered(
                skirt, Map.of(Measure.HIP_GIRTH, 3 * IN), Drafted.USUAL.withSeams(seams, SleeveSeams.BOTH));
        assertThat(Drafted.gained(fit, Measure.HIP_GIRTH)).isCloseTo(3 * IN, within(0.1));
        assertThat(fit.changes().get(0).edges()).isEqualTo(PanelGirth.cutEdges(skirt, seams));
        assertThat(fit.report().failures()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "8, 25.4, 12.7, 25.4",
        "8, -12.7, -25.4, -12.7",
        "14, 50.8, 25.4, 12.7",
        "14, 19.05, -38.1, 50.8",
        "20, 25.4, 50.8, 25.4"
    })
    void girthsOfPanelsComeOutAsWantedAndEveryProofHolds(String size, double bust, double waist, double hip) {
        for (PanelChoice seams : PanelChoice.values()) {
            FitChoices choices = Drafted.USUAL.withSeams(seams, SleeveSeams.BOTH);
            FitResult bodice = Drafted.altered(
                    princess(size),
                    Map.of(Measure.BUST_GIRTH, bust, Measure.WAIST_GIRTH, waist, Measure.BACK_WAIST_LENGTH, 12.7),
                    choices);
            assertThat(bodice.report().failures()).as(seams + " of " + size).isEmpty();
            assertThat(Drafted.gained(bodice, Measure.BUST_GIRTH)).isCloseTo(bust, within(0.1));
            assertThat(Drafted.gained(bodice, Measure.WAIST_GIRTH)).isCloseTo(waist, within(0.1));
            FitResult skirt = Drafted.altered(
                    gored(size),
                    Map.of(Measure.WAIST_GIRTH, waist, Measure.HIP_GIRTH, hip, Measure.SKIRT_LENGTH, -25.4),
                    choices);
            assertThat(skirt.report().failures()).as(seams + " of " + size).isEmpty();
            assertThat(Drafted.gained(skirt, Measure.HIP_GIRTH)).isCloseTo(hip, within(0.1));
            assertThat(Drafted.gained(skirt, Measure.SKIRT_LENGTH)).isCloseTo(-25.4, within(0.1));
        }
    }

    // Trade facts 4.1, common practice: a two-piece sleeve has 4 edges, N/4 each; often the back seam only, N/2 each.
    @ParameterizedTest
    @CsvSource({"BOTH, 4", "BACK, 2"})
    void aTwoPieceSleeveSharesItsGirthOverFourEdgesOrTheTwoOfTheBackSeam(SleeveSeams seams, int edges) {
        double need = 0.75 * IN;
        Pattern bodice = twoPiece("14");
        List<Double> marks = new ArrayList<>();
        for (PieceWork work : new TwoPieceSleeveGirth(need, 0, seams).work(bodice)) {
            for (Step step : work.steps()) {
                if (step instanceof Step.Mark mark && mark.name().startsWith("arm mark")) {
                    marks.add(Math.abs(mark.acrossMm()));
                }
            }
        }
        assertThat(marks).hasSize(edges).allSatisfy(out -> assertThat(out).isCloseTo(need / edges, within(1e-9)));
        FitResult fit = Drafted.altered(
                bodice,
                Map.of(Measure.UPPER_ARM_GIRTH, need, Measure.WRIST_GIRTH, -12.7, Measure.ARM_LENGTH, 19.05),
                Drafted.USUAL.withSeams(PanelChoice.ALL_SEAMS, seams));
        assertThat(fit.report().failures()).isEmpty();
        assertThat(Drafted.gained(fit, Measure.UPPER_ARM_GIRTH)).isCloseTo(need, within(0.1));
        assertThat(Drafted.gained(fit, Measure.WRIST_GIRTH)).isCloseTo(-12.7, within(0.1));
        assertThat(Drafted.gained(fit, Measure.ARM_LENGTH)).isCloseTo(19.05, within(0.1));
        assertThat(fit.changes()).anySatisfy(change -> {
            assertThat(change.measure()).isEqualTo(Measure.UPPER_ARM_GIRTH);
            assertThat(change.edges()).isEqualTo(edges);
        });
        // The seams swing out below their upper ends: the cap has as much to ease in as before (design bound 0.5 mm).
        Seam armhole = bodice.seams().stream()
                .filter(seam -> seam.name().equals("armhole"))
                .findFirst()
                .orElseThrow();
        assertThat(fit.worked().altered().mismatchMm(armhole) - bodice.mismatchMm(armhole))
                .isCloseTo(0, within(0.5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"8", "14", "20"})
    void theGirthOfABodiceWithAYokeChangesBelowTheYoke(String size) {
        Pattern bodice = PanelledShells.yoke(size(size), FITTED, Allowances.inches());
        FitResult fit = Drafted.altered(
                bodice,
                Map.of(Measure.BUST_GIRTH, 25.4, Measure.WAIST_GIRTH, 38.1, Measure.BACK_WAIST_LENGTH, -12.7),
                Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        assertThat(Drafted.gained(fit, Measure.BUST_GIRTH)).isCloseTo(25.4, within(0.1));
        assertThat(Drafted.gained(fit, Measure.BACK_WAIST_LENGTH)).isCloseTo(-12.7, within(0.1));
    }

    @Test
    void whatIsWrittenForAWholeBackIsRefusedOnAYokeWithWhatToDo() {
        Pattern bodice = PanelledShells.yoke(size("14"), FITTED, Allowances.inches());
        assertThat(Repertoire.of(bodice)).noneMatch(entry -> entry.name().equals("sway-back"));
        Applied swayBack = Applied.usual(Repertoire.named("sway-back").orElseThrow(), 10);
        assertThatThrownBy(() -> swayBack.work(bodice))
                .isInstanceOf(RequestException.class)
                .hasMessageContaining("tape the parts together along the seam");
        FitResult fit = Fitting.fit(
                bodice,
                Body.named("broad back").with(Reading.taped(Measure.ACROSS_BACK_WIDTH, 420)),
                Optional.empty(),
                Drafted.USUAL.withOverrules(Map.of(Measure.ACROSS_BACK_WIDTH, new Overrule.Alter())));
        assertThat(fit.needs().get(0).decision().reason()).contains("tape the parts together along the seam");
        assertThat(fit.report().failures()).isEmpty();
    }

    @Test
    void panelsMakeTheGarmentThatTheirWholeWouldMake() {
        assertThat(Fitting.kindOf(princess("14"))).isEqualTo(GarmentKind.BODICE);
        assertThat(Fitting.kindOf(gored("14"))).isEqualTo(GarmentKind.SKIRT);
        assertThat(Fitting.kindOf(twoPiece("14"))).isEqualTo(GarmentKind.BODICE);
    }
}
