package trueseam.checks.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.proof.LayProof;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/** Drafted garments laid on cloth: rules of laying are common practice, trade.md sections 8 and 9. */
class LayingTest {

    private static Pattern draft(Garment garment, String size) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), size), Allowances.inches());
    }

    private static Lay lay(Pattern pattern, Cloth cloth, LayWishes wishes, int rounds) {
        return Laying.of(pattern, cloth, Stuff.FASHION, wishes).search(3, Patience.rounds(rounds), f -> {});
    }

    private static Cloth cloth(double width, Layers layers, boolean oneWay) {
        return new Cloth(width, layers, oneWay, 0, 0, 10, 0, 0, OptionalDouble.empty(), List.of());
    }

    @ParameterizedTest
    @EnumSource(Garment.class)
    void everyGarmentIsLaidValidlyOnEveryCloth(Garment garment) {
        assertThat(onEveryCloth(garment, "14")).isGreaterThan(garment == Garment.kimono ? 1 : 5);
    }

    private static int onEveryCloth(Garment garment, String size) {
        Pattern pattern = draft(garment, size);
        int laid = 0;
        for (Layers layers : Layers.values()) {
            for (boolean oneWay : layers == Layers.CROSSWISE ? new boolean[] {false} : new boolean[] {false, true}) {
                for (double width : new double[] {1150, 1700}) {
                    LayWishes wishes = width < 1700
                            ? new LayWishes(0, 2, Set.of(), Optional.empty(), List.of())
                            : LayWishes.usual();
                    Lay lay;
                    try {
                        lay = lay(pattern, cloth(width, layers, oneWay), wishes, 1);
                    } catch (LayException e) {
                        // Too wide for half of a narrow cloth: said with what to do instead.
                        assertThat(e).hasMessageContaining("does not fit across the cloth");
                        // A kimono is as wide as from wrist to wrist.
                        assertThat(layers == Layers.LENGTHWISE || garment == Garment.kimono)
                                .as("%s %s on %s mm: %s", garment, size, width, e.getMessage())
                                .isTrue();
                        continue;
                    }
                    assertThat(LayProof.faults(lay))
                            .as("%s %s on %s mm %s, %s, %s", garment, size, width, layers, oneWay, wishes)
                            .isEmpty();
                    laid++;
                }
            }
        }
        return laid;
    }

    @Test
    void asMuchIsCutAsThePatternAsksFor() {
        for (Garment garment : Garment.values()) {
            Pattern pattern = draft(garment, "14");
            double asked = 0;
            for (var piece : pattern.pieces()) {
                double area =
                        Math.abs(trueseam.garment.pattern.CuttingLine.of(piece).signedArea());
                asked += area * piece.cutCount() * (piece.fold().isPresent() ? 2 : 1);
            }
            Lay single = lay(pattern, cloth(1900, Layers.SINGLE, false), LayWishes.usual(), 1);
            Lay folded = lay(pattern, cloth(1900, Layers.LENGTHWISE, false), LayWishes.usual(), 1);
            double one = single.pieces().stream()
                    .mapToDouble(p -> Math.abs(p.cutting().signedArea()))
                    .sum();
            double two = 2
                    * folded.pieces().stream()
                            .mapToDouble(p -> Math.abs(p.cutting().signedArea())
                                    * (p.part().spare() ? 0.5 : 1))
                            .sum();
            assertThat(one).as(garment.toString()).isCloseTo(asked, within(asked * 1e-4));
            assertThat(two).as(garment.toString()).isCloseTo(asked, within(asked * 1e-4));
            assertThat(single.density()).isCloseTo(one / (single.usedMm() * 1880), within(1e-9));
        }
    }

    @Test
    void piecesOnAFoldLieAtTheFoldAndPairsOfASingleLayerLieOnceOnTheirFace() {
        Pattern bodice = draft(Garment.bodice, "14");
        Lay folded = lay(bodice, cloth(1500, Layers.LENGTHWISE, false), LayWishes.usual(), 2);
        assertThat(folded.pieces().stream()
                        .filter(p -> p.part().form() == CutForm.AT_FOLD)
                        .count())
                .isEqualTo(bodice.pieces().stream()
                        .filter(p -> p.fold().isPresent())
                        .count())
                .isPositive();
        Lay single = lay(bodice, cloth(1500, Layers.SINGLE, true), LayWishes.usual(), 2);
        List<LaidPiece> sleeves = single.pieces().stream()
                .filter(p -> p.part().piece().name().equals("sleeve"))
                .toList();
        assertThat(sleeves).hasSize(2);
        assertThat(sleeves.get(0).lie().mirrored())
                .isNotEqualTo(sleeves.get(1).lie().mirrored());
    }

    @Test
    void whatIsLaidByHandStaysAndTheRestGoesRoundIt() {
        Pattern bodice = draft(Garment.bodice, "14");
        Cloth cloth = cloth(1500, Layers.SINGLE, false);
        Lay before = lay(bodice, cloth, LayWishes.usual(), 3);
        Placed first = before.pieces().get(0).placed();
        Placed moved = new Placed(first.part(), first.way(), first.x() + 400, first.y());
        Lay after = lay(bodice, cloth, LayWishes.usual().withByHand(List.of(moved)), 3);
        assertThat(after.pieces().stream().map(LaidPiece::placed)).contains(moved);
        assertThat(after.pieces()).hasSameSizeAs(before.pieces());
        assertThat(LayProof.faults(after)).isEmpty();
    }

    @Test
    void flawsOfARemnantAreGoneRoundAndTooLittleClothIsSaid() {
        Pattern skirt = draft(Garment.skirt, "14");
        List<Flaw> flaws = List.of(new Flaw(200, 260, 100, 180), new Flaw(500, 540, 900, 1400));
        for (Layers layers : List.of(Layers.SINGLE, Layers.LENGTHWISE)) {
            Cloth cloth = new Cloth(1500, layers, false, 0, 0, 10, 0, 0, OptionalDouble.of(700), flaws);
            Lay lay = lay(skirt, cloth, LayWishes.usual(), 3);
            assertThat(LayProof.faults(lay)).as(layers.words()).isEmpty();
            assertThat(lay.findings()).as(layers.words()).anyMatch(f -> f.sentence()
                    .contains("are missing"));
        }
        assertThatThrownBy(() -> lay(
                        skirt,
                        new Cloth(1500, Layers.CROSSWISE, false, 0, 0, 10, 0, 0, OptionalDouble.empty(), flaws),
                        LayWishes.usual(),
                        1))
                .isInstanceOf(LayException.class)
                .hasMessageContaining("single layer");
    }

    @Test
    void stripesRunOnAtTheSeamsThatAreMatched() {
        // Match at the stitching line, not the cut edge (common practice, trade.md section 9).
        Pattern dress = draft(Garment.dress, "14");
        for (Layers layers : List.of(Layers.SINGLE, Layers.LENGTHWISE)) {
            Cloth plaid = new Cloth(1500, layers, false, 0, 0, 10, 80, 60, OptionalDouble.empty(), List.of());
            Lay lay = lay(dress, plaid, LayWishes.usual(), 4);
            assertThat(LayProof.faults(lay)).as(layers.words()).isEmpty();
            assertThat(lay.pieces()).allMatch(p -> p.part().match().isPresent());
            LaidPiece front = piece(lay, "dress front");
            LaidPiece back = piece(lay, "dress back");
            double apart = sideHem(front) - sideHem(back);
            assertThat(Math.IEEEremainder(apart, 80)).as(layers.words()).isCloseTo(0, within(0.01));
            assertThat(lay.neededMm())
                    .isGreaterThanOrEqualTo(lay(dress, cloth(1500, layers, true), LayWishes.usual(), 8)
                            .neededMm());
        }
    }

    private static LaidPiece piece(Lay lay, String name) {
        return lay.pieces().stream()
                .filter(p -> p.part().piece().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Where the lower end of the side seam lies along the cloth. */
    private static double sideHem(LaidPiece laid) {
        var side =
                laid.part().piece().only(trueseam.garment.pattern.EdgeRole.SIDE).path();
        var lower = side.start().y() < side.end().y() ? side.start() : side.end();
        return laid.lie().apply(lower).x();
    }

    @Test
    void theProofFindsAPieceThatWasPushedOntoAnother() {
        Pattern bodice = draft(Garment.bodice, "14");
        Lay good = lay(bodice, cloth(1500, Layers.SINGLE, false), LayWishes.usual(), 3);
        List<LaidPiece> pieces = new ArrayList<>(good.pieces());
        LaidPiece a = pieces.get(0);
        LaidPiece b = pieces.get(1);
        pieces.set(0, new LaidPiece(b.part(), b.placed(), b.lie(), b.cutting(), b.grainFrom(), b.grainTo()));
        Lay bad = new Lay(good.cloth(), good.stuff(), good.wishes(), pieces, good.usedMm(), good.density(), List.of());
        assertThat(LayProof.faults(bad)).anyMatch(f -> f.sentence().contains("lie on each other"));
        pieces.set(0, a);
        Lay shortened = new Lay(
                good.cloth(), good.stuff(), good.wishes(), pieces, good.usedMm() - 1, good.density(), List.of());
        assertThat(LayProof.faults(shortened)).anyMatch(f -> f.sentence().contains("beside the cloth"));
    }
}
