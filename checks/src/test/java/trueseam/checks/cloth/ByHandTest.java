package trueseam.checks.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.CutForm;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.lay.Spot;
import trueseam.cloth.lay.Turns;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.packing.Way;
import trueseam.cloth.proof.LayFault;
import trueseam.cloth.proof.LayProof;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;
import trueseam.intake.size.SizeTables;
import trueseam.output.cloth.LayPlaces;
import trueseam.output.words.LayFaultWords;

/** Laying by hand: what lies where, what is wrong with it, how pieces may be turned (common practice, trade.md sections 8 and 9). */
class ByHandTest {

    private static final Pattern BODICE = draft(Garment.bodice);

    private static Pattern draft(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    private static Cloth cloth(Layers layers, boolean oneWay) {
        return new Cloth(1500, layers, oneWay, 0, 0, 10, 0, 0, OptionalDouble.empty(), List.of());
    }

    private static Laying laying(Cloth cloth) {
        return Laying.of(BODICE, cloth, Stuff.FASHION, LayWishes.usual());
    }

    private static List<Spot> with(List<Spot> spots, int at, Spot other) {
        List<Spot> changed = new ArrayList<>(spots);
        changed.set(at, other);
        return changed;
    }

    private static int named(Lay lay, String name) {
        for (int i = 0; i < lay.pieces().size(); i++) {
            if (lay.pieces().get(i).part().piece().name().equals(name)) {
                return i;
            }
        }
        throw new AssertionError("no " + name);
    }

    @Test
    void aKeptLayoutIsTheSameWhenItIsLaidAgain() {
        for (Layers layers : Layers.values()) {
            Laying laying = laying(cloth(layers, false));
            Lay found = laying.search(5, Patience.rounds(4), f -> {});
            Lay again = laying.laid(laying.spots(found)).orElseThrow();
            assertThat(again.neededMm()).as(layers.words()).isCloseTo(found.neededMm(), within(1e-6));
            assertThat(again.density()).isCloseTo(found.density(), within(1e-9));
            assertThat(LayProof.look(again)).isEmpty();
            for (int i = 0; i < found.pieces().size(); i++) {
                assertThat(again.pieces()
                                .get(i)
                                .grainTo()
                                .isNear(found.pieces().get(i).grainTo(), 1e-6))
                        .as("piece %d", i)
                        .isTrue();
            }
        }
    }

    @Test
    void aPiecePushedOntoAnotherStaysThereAndBothAreNamed() {
        Laying laying = laying(cloth(Layers.SINGLE, false));
        Lay good = laying.first(1);
        LaidPiece a = good.pieces().get(0);
        LaidPiece b = good.pieces().get(1);
        Point to = b.cutting().bounds().centre();
        Point from = a.cutting().bounds().centre();
        Spot moved = laying.moved(a, to.x() - from.x(), to.y() - from.y());
        Lay bad = laying.laid(with(laying.spots(good), 0, moved)).orElseThrow();
        assertThat(bad.pieces().get(0).cutting().bounds().centre().isNear(to, 1e-6))
                .isTrue();
        assertThat(bad.byHand(bad.pieces().get(0))).isTrue();
        assertThat(bad.byHand(bad.pieces().get(1))).isFalse();
        LayFault fault = LayProof.look(bad).stream()
                .filter(f ->
                        f.kind() == LayFault.Kind.ON_EACH_OTHER && f.pieces().equals(List.of(0, 1)))
                .findFirst()
                .orElseThrow();
        assertThat(LayFaultWords.sentence(bad, fault, LengthFormat.centimetres()))
                .isEqualTo("1 " + a.part().piece().name() + " and 2 "
                        + b.part().piece().name() + " lie on each other; move one of them away.");
    }

    @Test
    void theLengthFollowsAPieceThatIsMovedToTheEndAndTheRestGoesRoundIt() {
        Laying laying = laying(cloth(Layers.LENGTHWISE, false));
        Lay before = laying.search(1, Patience.rounds(4), f -> {});
        int sleeve = named(before, "sleeve");
        Spot away = laying.moved(before.pieces().get(sleeve), 700, 0);
        Lay after = laying.laid(with(laying.spots(before), sleeve, away)).orElseThrow();
        double end = after.pieces().get(sleeve).cutting().bounds().maxX();
        assertThat(after.neededMm()).isCloseTo(end, within(1e-6));
        Lay round = laying.around(List.of(away)).search(1, Patience.rounds(4), f -> {});
        assertThat(LayProof.look(round)).isEmpty();
        LaidPiece stayed = round.pieces().get(sleeve);
        assertThat(stayed.grainFrom().isNear(new Point(away.alongMm(), away.acrossMm()), 1e-6))
                .isTrue();
        assertThat(round.byHand(stayed)).isTrue();
    }

    @Test
    void aHalfPieceSlidesAlongTheFoldAndNotOffIt() {
        Laying laying = laying(cloth(Layers.LENGTHWISE, false));
        Lay before = laying.first(1);
        int half = 0;
        assertThat(before.pieces().get(half).part().form()).isEqualTo(CutForm.AT_FOLD);
        Spot moved = laying.moved(before.pieces().get(half), 2500, 55);
        Lay after = laying.laid(with(laying.spots(before), half, moved)).orElseThrow();
        assertThat(after.pieces().get(half).cutting().bounds().minY()).isCloseTo(0, within(1e-6));
        assertThat(LayProof.look(after)).isEmpty();
    }

    @Test
    void piecesAreTurnedOnlyAsTheClothAllows() {
        LaidPiece plain =
                laying(cloth(Layers.LENGTHWISE, false)).first(1).pieces().get(2);
        Way round = Turns.headToTail(plain.part(), plain.placed().way()).orElseThrow();
        assertThat(Math.abs(round.turnDegrees() - plain.placed().way().turnDegrees()))
                .isEqualTo(180);
        assertThat(Turns.turnedOver(plain.part(), plain.placed().way())).isPresent();
        Laying nap = laying(cloth(Layers.SINGLE, true));
        LaidPiece up = nap.first(1).pieces().get(0);
        assertThat(Turns.headToTail(up.part(), up.placed().way())).isEmpty();
        // Of a pair in a single layer one is cut face up and one face down: turned over it would be two lefts.
        int sleeve = named(nap.first(1), "sleeve");
        LaidPiece one = nap.first(1).pieces().get(sleeve);
        assertThat(Turns.turnedOver(one.part(), one.placed().way())).isEmpty();
        assertThat(Turns.tilted(one.part(), one.placed().way(), 0.5, 0)).isEmpty();
        assertThat(Turns.tilted(one.part(), one.placed().way(), 0.5, 2))
                .get()
                .extracting(Way::turnDegrees)
                .isEqualTo(0.5);
        Spot turned = nap.turned(one, new Way(180, one.placed().way().mirrored()));
        Lay bad = nap.laid(with(nap.spots(nap.first(1)), sleeve, turned)).orElseThrow();
        assertThat(LayProof.look(bad)).anyMatch(f -> f.kind() == LayFault.Kind.HEAD_TO_TAIL);
        // It was turned about its middle.
        assertThat(bad.pieces()
                        .get(sleeve)
                        .cutting()
                        .bounds()
                        .centre()
                        .isNear(one.cutting().bounds().centre(), 1e-6))
                .isTrue();
    }

    @Test
    void aPieceMovedOnPlaidGoesToTheNearestStripe() {
        Cloth plaid = new Cloth(1500, Layers.SINGLE, false, 0, 0, 10, 80, 60, OptionalDouble.empty(), List.of());
        Laying laying = laying(plaid);
        Lay before = laying.first(1);
        Spot moved = laying.moved(before.pieces().get(0), 1203, 7);
        Lay after = laying.laid(with(laying.spots(before), 0, moved)).orElseThrow();
        assertThat(LayProof.look(after))
                .noneMatch(f -> f.kind() == LayFault.Kind.OFF_CROSSWISE_STRIPE
                        || f.kind() == LayFault.Kind.OFF_LENGTHWISE_STRIPE);
        assertThat(after.pieces().get(0).grainFrom().x()
                        - before.pieces().get(0).grainFrom().x())
                .isCloseTo(1200, within(1e-6));
    }

    @Test
    void stripesAreMatchedAtTheSeamsThatAreChosenOnly() {
        Pattern dress = draft(Garment.dress);
        Cloth plaid = new Cloth(1500, Layers.SINGLE, false, 0, 0, 10, 80, 0, OptionalDouble.empty(), List.of());
        List<String> seams = dress.seams().stream().map(Seam::name).toList();
        LayWishes side = new LayWishes(4, 0, Set.of(), Optional.of(Set.of(seams.get(0))), List.of());
        Lay all = Laying.of(dress, plaid, Stuff.FASHION, LayWishes.usual()).first(1);
        Lay one = Laying.of(dress, plaid, Stuff.FASHION, side).first(1);
        // What cannot be matched as well is said; one seam alone can.
        assertThat(all.findings()).anyMatch(f -> f.sentence().contains("do not match at it too"));
        assertThat(one.findings()).isEmpty();
        assertThat(LayProof.look(one)).isEmpty();
    }

    @Test
    void clothThatIsTooNarrowFoldedIsLaidOpenWhereNothingElseWasSaid() {
        Pattern trousers = draft(Garment.trousers);
        Cloth narrow = cloth(Layers.LENGTHWISE, false).wide(660);
        Lay lay = Laying.asItFits(trousers, narrow, Stuff.FASHION, LayWishes.usual())
                .first(1);
        assertThat(lay.cloth().layers()).isEqualTo(Layers.SINGLE);
        assertThat(lay.findings()).anyMatch(f -> f.sentence().contains("laid in a single layer"));
    }

    @Test
    void theMarkChangesWithTheTaskAndNotWithWhatLiesThereByHand() {
        Laying laying = laying(cloth(Layers.SINGLE, false));
        Lay lay = laying.first(1);
        List<Spot> held = laying.spots(lay).stream().map(s -> s.held(true)).toList();
        assertThat(laying.around(held).mark()).isEqualTo(laying.mark());
        assertThat(laying(cloth(Layers.SINGLE, true)).mark()).isNotEqualTo(laying.mark());
        assertThat(laying(cloth(Layers.SINGLE, false).wide(1400)).mark()).isNotEqualTo(laying.mark());
    }

    @Test
    void bothEndsOfAGrainlineAreMeasuredFromOneLine() {
        for (Layers layers : Layers.values()) {
            Lay lay = laying(cloth(layers, false)).first(2);
            for (LaidPiece piece : lay.pieces()) {
                List<LayPlaces.GrainEnd> ends = LayPlaces.ends(lay, piece);
                assertThat(ends.get(0).from()).isEqualTo(ends.get(1).from());
                assertThat(ends.get(0).acrossMm()).isCloseTo(ends.get(1).acrossMm(), within(0.01));
                for (LayPlaces.GrainEnd end : ends) {
                    assertThat(end.foot().distanceTo(end.at())).isCloseTo(end.acrossMm(), within(1e-9));
                }
            }
        }
    }

    @Test
    void aFlawOverTheMiddleShowsAtTheFold() {
        // Cloth 1500 wide without selvages 1480, folded at 740: from 700 to 800 of the open cloth is from the fold to
        // 50 above.
        assertThat(cloth(Layers.LENGTHWISE, false).asLaid(new Flaw(10, 20, 700, 800)))
                .isEqualTo(new trueseam.geometry.Bounds(10, 0, 20, 50));
    }

    @Test
    void whatIsLeftOverIsWhatTheShopCutsTooMuchAndOfARemnantTheRest() {
        Lay lay = laying(cloth(Layers.SINGLE, false)).first(1);
        double bought = CutLength.FIVE_CM.roundUpMm(lay.toBuyMm());
        assertThat(lay.leftOverMm(CutLength.FIVE_CM)).isCloseTo(bought - lay.neededMm(), within(1e-9));
        Cloth remnant = new Cloth(1500, Layers.SINGLE, false, 0, 0, 10, 0, 0, OptionalDouble.of(3000), List.of());
        Lay of = laying(remnant).first(1);
        assertThat(of.leftOverMm(CutLength.FIVE_CM)).isCloseTo(3000 - of.neededMm(), within(1e-9));
    }
}
