package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.drafting.Bands;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.intake.size.SizeTables;

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

    @Test
    void aSleeveOfTwoPiecesFollowsItsArmholeAndKeepsItsLengthItsGirthAndItsSeams() {
        // Design: cap less armhole unchanged, 0.5 mm. The ease lies between the notches (trade.md 5): the under
        // sleeve's cap is carried.
        for (Pattern pattern : DraftedGarments.inParts("8", "14", "20")) {
            if (pattern.firstOf(PieceKind.UNDER_SLEEVE).isEmpty()) {
                continue;
            }
            for (double mm : new double[] {MM, -MM}) {
                for (String name : List.of("length above the bust", "armhole height")) {
                    WorkedPattern worked = WorkedPattern.altered(
                            pattern,
                            List.of(Applied.usual(Repertoire.named(name).orElseThrow(), mm)));
                    double front = longer(worked, "bodice front", "armhole");
                    double back = longer(worked, "bodice back", "armhole");
                    assertThat(Math.min(Math.abs(front), Math.abs(back))).isGreaterThan(MM / 2);
                    assertThat(longer(worked, "upper sleeve", "cap front")).isCloseTo(front, within(0.25));
                    assertThat(longer(worked, "upper sleeve", "cap back")).isCloseTo(back, within(0.25));
                    assertThat(longer(worked, "under sleeve", "cap under")).isCloseTo(0, within(1e-6));
                    for (String seam : List.of("front seam", "back seam")) {
                        assertThat(longer(worked, "upper sleeve", seam))
                                .isCloseTo(longer(worked, "under sleeve", seam), within(0.1));
                    }
                    for (Measure measure : List.of(Measure.ARM_LENGTH, Measure.UPPER_ARM_GIRTH)) {
                        assertThat(mm(worked.altered(), measure)).isCloseTo(mm(pattern, measure), within(0.1));
                    }
                }
            }
        }
    }

    @Test
    void everyBandFollowsEveryAlterationAndKeepsItsHeight() {
        // trade.md 4.1: waistband, collar, neckband take the full amount; 4.3: each follows the piece that it is sewn
        // to.
        for (Pattern pattern : banded()) {
            Seam seam = pattern.seams().get(pattern.seams().size() - 1);
            String band = seam.second().get(0).piece();
            for (Entry entry : Repertoire.of(pattern)) {
                if (entry.on().equals(Set.of(PieceKind.COLLAR))) {
                    continue; // it alters the band itself: CollarTest
                }
                for (double share : entry.isBothWays() ? new double[] {1, -0.5} : new double[] {1}) {
                    WorkedPattern worked;
                    try {
                        worked = WorkedPattern.altered(pattern, List.of(Applied.usual(entry, share * entry.usualMm())));
                    } catch (AlterationException refused) {
                        continue; // refusals are held to their own law
                    }
                    assertThat(worked.altered().mismatchMm(seam))
                            .as(entry.name() + " " + share + ", " + seam.name())
                            .isCloseTo(pattern.mismatchMm(seam), within(0.1));
                    assertThat(worked.altered().piece(band).outline().bounds().width())
                            .isCloseTo(pattern.piece(band).outline().bounds().width(), within(1e-6));
                }
            }
        }
    }

    @Test
    void aWaistbandTakesTheWholeAmountAtTheCentreBack() {
        // [ND1921], trade.md 4.1: a waistband is altered at centre back; N in the piece, N/2 on a half piece at the
        // fold.
        Pattern skirt = Bands.withWaistband(Shells.skirt(figure(), DraftEase.fitted()), 38.1);
        WorkedPattern worked = WorkedPattern.altered(
                skirt, List.of(Applied.usual(Repertoire.named("skirt waist").orElseThrow(), MM)));
        Piece before = skirt.piece("waistband");
        Piece after = worked.altered().piece("waistband");
        assertThat(after.edge("waist").length() - before.edge("waist").length())
                .isCloseTo(
                        (mm(worked.altered(), Measure.WAIST_GIRTH) - mm(skirt, Measure.WAIST_GIRTH)) / 2, within(0.1));
        assertThat(after.edge("centre front")).isEqualTo(before.edge("centre front"));
        assertThat(after.edge("centre back")).isNotEqualTo(before.edge("centre back"));
    }

    private static List<Pattern> banded() {
        DraftEase ease = DraftEase.fitted();
        return List.of(
                Bands.withCuffs(Shells.bodice(figure(), ease), 63.5),
                Bands.withNeckband(Shells.dress(figure(), ease), 38.1),
                Bands.withWaistband(Shells.skirt(figure(), ease), 38.1),
                Bands.withWaistband(Shells.trousers(figure(), ease), 38.1));
    }

    private static DraftFigure figure() {
        return DraftFigure.of(SizeTables.named("misses"), "14");
    }

    private static double longer(WorkedPattern worked, String piece, String edge) {
        return worked.altered().piece(piece).sewnLength(edge)
                - worked.original().piece(piece).sewnLength(edge);
    }

    private static double mm(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }
}
