package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.Bands;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Layers;
import trueseam.drafting.Shells;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;

/** A shaped collar follows its neck at the centre back; its edges are altered by name (trade.md 4.3, small pieces; symptom 43). */
class CollarTest {

    private static final double HEIGHT_MM = 76.2;
    private static final double MM = 12.7;
    private static final DraftEase EASE = DraftEase.fitted();
    private static final Pattern COLLARED = Bands.withCollar(Shells.bodice(figure("14"), EASE), HEIGHT_MM);

    @Test
    void collarIsAsLongAsItsNeckInEverySizeAndComesThroughThePatternFile() {
        SizeTables.named("misses").rows().forEach(row -> {
            Pattern pattern = Bands.withCollar(Shells.dress(figure(row.size()), EASE), HEIGHT_MM);
            assertThat(pattern.mismatchMm(seam(pattern))).isCloseTo(0, within(1e-6));
            assertThat(PatternFile.read("c.svg", PatternFile.write(pattern)).pattern())
                    .isEqualTo(pattern);
        });
    }

    @Test
    void collarFollowsEveryAlterationAndKeepsItsHeightAndItsFold() {
        int followed = 0;
        for (Entry entry : Repertoire.of(COLLARED)) {
            for (double share : entry.isBothWays() ? new double[] {1, -1} : new double[] {1}) {
                WorkedPattern worked;
                try {
                    worked = worked(COLLARED, entry, "", share * entry.usualMm());
                } catch (AlterationException refused) {
                    continue; // refusals are held to their own law
                }
                Piece collar = worked.altered().piece("collar");
                double asked = worked.bandEaseMm().getOrDefault("collar", 0.0);
                assertThat(worked.altered().mismatchMm(seam(COLLARED)))
                        .as(entry.name() + " " + share)
                        .isCloseTo(asked, within(0.1));
                assertThat(collar.edge("centre back").length()).isCloseTo(HEIGHT_MM, within(1e-6));
                // The fold stays upright: along the grain.
                assertThat(collar.edge("centre back").path().endTangent().x()).isCloseTo(0, within(1e-9));
                followed += collar.equals(COLLARED.piece("collar")) ? 0 : 1;
            }
        }
        assertThat(followed).as("alterations that reached the collar").isGreaterThan(8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {MM, -MM})
    void collarTakesWhatTheNeckTookAtTheCentreBack(double mm) {
        // [ND1921], trade.md 4.1: N in the piece, N/2 on a half piece at the fold, at the centre back.
        WorkedPattern worked = worked(COLLARED, "neck", "", mm);
        Piece before = COLLARED.piece("collar");
        Piece after = worked.altered().piece("collar");
        assertThat(grown(before, after, "neck")).isCloseTo(mm / 2, within(0.1));
        assertThat(grown(before, after, "outer edge")).isCloseTo(mm / 2, within(0.1));
        assertThat(after.edge("front edge")).isEqualTo(before.edge("front edge"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {9.525, 25.4, -9.525, -25.4})
    void outerEdgeTakesTheAmountAndTheNeckEdgeNone(double mm) {
        WorkedPattern worked = worked(COLLARED, "collar outer edge", "", mm);
        Piece before = COLLARED.piece("collar");
        Piece after = worked.altered().piece("collar");
        // What is drawn over the three openings is a tenth of a millimetre shorter than their corners at the most.
        assertThat(grown(before, after, "outer edge")).isCloseTo(mm / 2, within(0.1));
        assertThat(grown(before, after, "neck")).isCloseTo(0, within(0.1));
        // The fold lies still, but for the hair that smoothing over the hinges takes from the neck edge.
        assertThat(after.edge("centre back").path().start().x()).isCloseTo(0, within(0.1));
        // The point is carried and not changed.
        assertThat(grown(before, after, "front edge")).isCloseTo(0, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {6.35, -6.35, 12.7, -12.7})
    void neckEdgeOfTheCollarChangesAgainstTheNeckAsAsked(double mm) {
        for (String way : List.of("hinged at the outer edge", "at the centre back")) {
            WorkedPattern worked = worked(COLLARED, "collar neck edge", way, mm);
            Piece before = COLLARED.piece("collar");
            Piece after = worked.altered().piece("collar");
            assertThat(worked.altered().mismatchMm(seam(COLLARED))).isCloseTo(mm / 2, within(0.1));
            boolean hinged = way.startsWith("hinged");
            assertThat(grown(before, after, "outer edge")).isCloseTo(hinged ? 0 : mm / 2, within(0.1));
            assertThat(worked.altered().piece("bodice front")).isEqualTo(COLLARED.piece("bodice front"));
        }
    }

    @Test
    void collarWhoseNeckEdgeWasAlteredStillFollowsTheNeck() {
        WorkedPattern worked = WorkedPattern.altered(
                COLLARED,
                List.of(applied("neck", "", MM), applied("collar neck edge", "hinged at the outer edge", -6.35)));
        assertThat(worked.altered().mismatchMm(seam(COLLARED))).isCloseTo(-6.35 / 2, within(0.1));
        assertThat(Prover.prove(worked, Map.of(), false).failures()).isEmpty();
    }

    @Test
    void underCollarAndCollarFacingTakeTheSameChange() {
        for (PieceKind kind : List.of(PieceKind.COLLAR, PieceKind.FACING, PieceKind.LINING)) {
            Pattern pattern = withCopy(kind);
            for (String name : List.of("neck", "collar outer edge", "collar neck edge")) {
                WorkedPattern worked = worked(pattern, name, "", 6.35);
                List<Edge> collar = worked.altered().piece("collar").edges();
                List<Edge> copy = worked.altered().piece("under collar").edges();
                assertThat(collar).isNotEqualTo(COLLARED.piece("collar").edges());
                for (int i = 0; i < collar.size(); i++) {
                    assertThat(copy.get(i).path().length())
                            .as(kind + ", " + name)
                            .isCloseTo(collar.get(i).path().length(), within(1e-6));
                    assertThat(copy.get(i)
                                    .path()
                                    .start()
                                    .isNear(collar.get(i).path().start(), 1e-6))
                            .as(kind + ", " + name)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void facingsThatLieOnTheNeckDoNotMakeABandLonger() {
        Pattern faced = Layers.withNeckFacings(Shells.bodice(figure("14"), EASE), 50);
        Pattern plain = Shells.bodice(figure("14"), EASE);
        assertThat(Bands.withNeckband(faced, 30).piece("neckband").edge("neck").length())
                .isEqualTo(Bands.withNeckband(plain, 30)
                        .piece("neckband")
                        .edge("neck")
                        .length());
    }

    @Test
    void tooLowACollarAndTooLargeAnAmountAreAnsweredInOneSentence() {
        Pattern bodice = Shells.bodice(figure("14"), EASE);
        assertThat(catchThrowable(() -> Bands.withCollar(bodice, 20)))
                .hasMessageContaining("give 1 1/2 in or more, or a neckband");
        assertThat(catchThrowable(() -> worked(COLLARED, "collar outer edge", "", 150)))
                .isInstanceOf(AlterationException.class)
                .hasMessageContaining("cut the collar new to its neck");
    }

    /** The collared bodice with a second collar, such as an under collar that has a piece of its own. */
    private static Pattern withCopy(PieceKind kind) {
        Piece collar = COLLARED.piece("collar");
        Piece copy = new Piece(
                "under collar",
                kind,
                1,
                collar.fold(),
                collar.edges(),
                collar.darts(),
                collar.notches(),
                collar.landmarks(),
                collar.levels(),
                collar.markings(),
                collar.grain());
        List<Piece> pieces = new ArrayList<>(COLLARED.pieces());
        pieces.add(copy);
        List<Seam> seams = new ArrayList<>(COLLARED.seams());
        if (kind == PieceKind.COLLAR) {
            seams.add(
                    new Seam("under collar", seam(COLLARED).first(), List.of(new EdgeRef("under collar", "neck")), 0));
        } else if (kind == PieceKind.FACING) {
            seams.add(Seam.of("under collar", new EdgeRef("collar", "neck"), new EdgeRef("under collar", "neck"), 0));
        }
        return new Pattern(
                COLLARED.name(),
                COLLARED.size(),
                COLLARED.sizeTable(),
                COLLARED.source(),
                pieces,
                seams,
                COLLARED.easeMm());
    }

    private static Seam seam(Pattern pattern) {
        return pattern.seams().stream()
                .filter(seam -> seam.name().equals("collar"))
                .findFirst()
                .orElseThrow();
    }

    private static double grown(Piece before, Piece after, String edge) {
        return after.edge(edge).length() - before.edge(edge).length();
    }

    private static WorkedPattern worked(Pattern pattern, String name, String way, double mm) {
        return worked(pattern, Repertoire.named(name).orElseThrow(), way, mm);
    }

    private static WorkedPattern worked(Pattern pattern, Entry entry, String way, double mm) {
        WorkedPattern worked = WorkedPattern.altered(
                pattern, List.of(new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty())));
        assertThat(Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures())
                .as(entry.name() + " " + mm)
                .isEmpty();
        return worked;
    }

    private static Applied applied(String name, String way, double mm) {
        Entry entry = Repertoire.named(name).orElseThrow();
        return new Applied(entry, entry.variant(way).orElseThrow(), mm, Optional.empty());
    }

    private static DraftFigure figure(String size) {
        return DraftFigure.of(SizeTables.named("misses"), size);
    }
}
