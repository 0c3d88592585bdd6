package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.drafting.garment.SmallPieces;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.intake.size.SizeTables;

/**
 * Small pieces and marks follow (trade facts, 4.3, small pieces and bands): after every alteration that a garment can take, the
 * buttonholes are where a dressmaker sets them, the placket is as long as its zip, the notch of a band lies where its seam is walked to.
 * What they go by is common practice.
 */
class SmallMarksTest {

    private static final double IN = 25.4;

    private static Pattern draft(Garment garment, SmallPieces... with) {
        Pattern pattern = garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
        for (SmallPieces small : with) {
            pattern = small.addedTo(pattern);
        }
        return pattern;
    }

    private static List<Pattern> marked() {
        return List.of(
                draft(Garment.dress, SmallPieces.buttons, SmallPieces.collar),
                draft(Garment.bodice, SmallPieces.buttons, SmallPieces.neckband),
                draft(Garment.skirt, SmallPieces.channel, SmallPieces.pockets, SmallPieces.placket),
                draft(Garment.gored, SmallPieces.carriers, SmallPieces.pockets, SmallPieces.placket),
                draft(
                        Garment.trousers,
                        SmallPieces.waistband,
                        SmallPieces.carriers,
                        SmallPieces.pockets,
                        SmallPieces.placket));
    }

    @TestFactory
    Stream<DynamicTest> afterEveryAlterationTheSmallMarksAreWhereTheyBelong() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Pattern pattern : marked()) {
            for (Entry entry : Repertoire.of(pattern)) {
                for (double share : entry.isBothWays() ? new double[] {1, -1} : new double[] {1}) {
                    Applied applied =
                            new Applied(entry, entry.variants().get(0), share * entry.usualMm(), Optional.empty());
                    tests.add(DynamicTest.dynamicTest(
                            pattern.name() + ": " + applied.title() + " " + applied.mm(),
                            () -> belong(pattern, applied)));
                }
            }
        }
        return tests.stream();
    }

    private static void belong(Pattern pattern, Applied applied) {
        WorkedPattern worked;
        try {
            worked = WorkedPattern.altered(pattern, List.of(applied));
        } catch (AlterationException refused) {
            return; // RepertoireTest says when a piece may refuse
        }
        assertThat(Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures())
                .isEmpty();
        for (Piece piece : worked.altered().pieces()) {
            buttonholes(pattern.piece(piece.name()), piece);
            placket(pattern.piece(piece.name()), piece);
            for (Marking marking : piece.markings()) {
                assertThat(marking.path().length())
                        .isCloseTo(
                                pattern.piece(piece.name()).markings().stream()
                                        .filter(other -> other.name().equals(marking.name()))
                                        .findFirst()
                                        .orElseThrow()
                                        .path()
                                        .length(),
                                within(1e-6));
            }
        }
        if (worked.bandEaseMm().isEmpty()) {
            bands(worked.altered());
        }
    }

    private static List<Double> heights(Piece piece) {
        return piece.markings().stream()
                .filter(marking -> marking.is(Marking.BUTTONHOLE))
                .map(marking -> marking.path().start().y())
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private static void buttonholes(Piece before, Piece after) {
        List<Double> holes = heights(after);
        if (holes.isEmpty()) {
            return;
        }
        Path was = before.only(EdgeRole.CENTRE).path();
        Path is = after.only(EdgeRole.CENTRE).path();
        // 5/8 in below the neck and 1 1/2 in above the lower edge, as drafted.
        assertThat(is.bounds().maxY() - holes.get(0))
                .isCloseTo(was.bounds().maxY() - heights(before).get(0), within(0.1));
        assertThat(holes.get(holes.size() - 1) - is.bounds().minY())
                .isCloseTo(heights(before).get(holes.size() - 1) - was.bounds().minY(), within(0.1));
        List<Integer> kept = new ArrayList<>(List.of(0));
        for (LevelName level : List.of(LevelName.BUST, LevelName.WAIST)) {
            double y = before.level(level).orElse(Double.NaN);
            for (int i = 1; i < holes.size() - 1; i++) {
                if (Math.abs(heights(before).get(i) - y) < 0.1) {
                    kept.add(i);
                    assertThat(holes.get(i))
                            .as("buttonhole at the " + level.word())
                            .isCloseTo(after.level(level).orElseThrow(), within(0.1));
                }
            }
        }
        kept.add(holes.size() - 1);
        assertThat(kept.size()).isGreaterThanOrEqualTo(3);
        for (int k = 1; k < kept.size(); k++) {
            double step = (holes.get(kept.get(k - 1)) - holes.get(kept.get(k))) / (kept.get(k) - kept.get(k - 1));
            for (int i = kept.get(k - 1) + 1; i <= kept.get(k); i++) {
                assertThat(holes.get(i - 1) - holes.get(i)).isCloseTo(step, within(0.2));
            }
        }
    }

    private static void placket(Piece before, Piece after) {
        for (Marking end : after.markings()) {
            if (end.is(Marking.PLACKET)) {
                Edge side = after.only(EdgeRole.SIDE);
                Point at = end.path().start();
                PathPlace place = side.path().nearest(at);
                assertThat(place.point().distanceTo(at)).as("on the side seam").isLessThan(0.2);
                boolean upwards = side.path().end().y() > side.path().start().y();
                assertThat(upwards ? side.length() - place.alongMm() : place.alongMm())
                        .as("a zip of 8 in, " + before.name())
                        .isCloseTo(8 * IN, within(0.2));
            }
        }
    }

    private static void bands(Pattern pattern) {
        pattern.seams().stream().filter(seam -> seam.second().size() == 1).forEach(seam -> {
            Piece band = pattern.piece(seam.second().get(0).piece());
            if (band.kind() != PieceKind.WAISTBAND && band.kind() != PieceKind.COLLAR) {
                return;
            }
            double back = pattern.sewnLength(seam.first().stream()
                    .filter(ref -> pattern.piece(ref.piece()).kind().isBack())
                    .toList());
            double whole = band.edge(seam.second().get(0).edge()).length();
            double at = band.notches().get(0).atMm();
            // A collar begins at its fold at the centre back, a straight band at its fold at the centre front.
            assertThat(band.name().equals("collar") ? at : whole - at)
                    .as("notch of the " + band.name() + " at the walked place")
                    .isCloseTo(back, within(0.1));
            band.markings().stream()
                    .filter(marking -> marking.is(Marking.CARRIER))
                    .forEach(carrier -> {
                        double along = band.edge(seam.second().get(0).edge())
                                .path()
                                .nearest(carrier.path().start())
                                .alongMm();
                        assertThat(along).isBetween(0.0, whole);
                        if (carrier.name().endsWith("2")) {
                            assertThat(along).as("carrier at the side seam").isCloseTo(at, within(0.1));
                        }
                    });
        });
    }

    @Test
    void aLongerDressHasItsButtonholesEvenlyFartherApartBelowTheWaist() {
        Pattern dress = draft(Garment.dress, SmallPieces.buttons);
        Entry entry = Repertoire.named("length below the bust").orElseThrow();
        Pattern longer = WorkedPattern.altered(
                        dress, List.of(new Applied(entry, entry.variants().get(0), 2 * IN, Optional.empty())))
                .altered();
        List<Double> was = heights(dress.piece("dress front"));
        List<Double> is = heights(longer.piece("dress front"));
        // Drafted at 5/8 in below the neck, bust, waist, 1 1/2 in above the hem: 2 + 2 + 2 gaps. Two inches go in
        // between bust and
        // waist, one to each gap there.
        assertThat(was).hasSize(7);
        for (int gap = 1; gap < 7; gap++) {
            double more = is.get(gap - 1) - is.get(gap) - was.get(gap - 1) + was.get(gap);
            assertThat(more).as("gap " + gap).isCloseTo(gap == 3 || gap == 4 ? IN : 0, within(0.05));
        }
    }

    @Test
    void aChannelIsAsLongAsItsWaistAndFollowsIt() {
        Pattern skirt = draft(Garment.skirt, SmallPieces.channel);
        Entry entry = Repertoire.named("skirt waist").orElseThrow();
        Pattern wider = WorkedPattern.altered(
                        skirt, List.of(new Applied(entry, entry.variants().get(0), 2 * IN, Optional.empty())))
                .altered();
        // The piece is half of it, on the fold: half of two inches.
        assertThat(wider.piece("drawstring channel").only(EdgeRole.WAIST).length()
                        - skirt.piece("drawstring channel").only(EdgeRole.WAIST).length())
                .isCloseTo(IN, within(0.1));
    }
}
