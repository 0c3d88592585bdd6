package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
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
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;

/** Lining and facing take the same changes at the same places ([DM1911]; trade.md 9). */
class FacingsTest {

    private static final double WIDE_MM = 50;

    private static final Pattern SHELL =
            Shells.bodice(DraftFigure.of(SizeTables.named("misses"), "14"), DraftEase.fitted());

    @Test
    void facingLiesOnEveryAlteredPieceAndKeepsItsWidth() {
        Pattern faced = Layers.withNeckFacings(SHELL, WIDE_MM);
        int altered = 0;
        for (Entry entry : Repertoire.of(faced)) {
            WorkedPattern worked;
            try {
                worked = WorkedPattern.altered(faced, List.of(Applied.usual(entry, entry.usualMm() / 2)));
            } catch (AlterationException refused) {
                continue; // refusals are held to their own law
            }
            assertThat(Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures())
                    .as(entry.name())
                    .isEmpty();
            for (String part : List.of("front", "back")) {
                Piece piece = worked.altered().piece("bodice " + part);
                Piece facing = worked.altered().piece("bodice " + part + " neck facing");
                assertThat(facing.edge("neck").length())
                        .as(entry.name())
                        .isCloseTo(piece.sewnLength("neck"), within(1e-6));
                assertThat(facing.edge("shoulder").length()).as(entry.name()).isCloseTo(WIDE_MM, within(1e-6));
                altered += worked.piece(facing.name()).orElseThrow().isAltered() ? 1 : 0;
            }
        }
        assertThat(altered).as("facings that some alteration reached").isGreaterThan(5);
    }

    @Test
    void liningHasTheOutlineOfItsPieceAfterEveryAlteration() {
        Pattern lined = Layers.withLining(SHELL);
        for (Entry entry : Repertoire.of(lined)) {
            WorkedPattern worked;
            try {
                worked = WorkedPattern.altered(lined, List.of(Applied.usual(entry, entry.usualMm() / 2)));
            } catch (AlterationException refused) {
                continue; // refusals are held to their own law
            }
            for (Piece piece : SHELL.pieces()) {
                List<Edge> lining =
                        worked.altered().piece(piece.name() + " lining").edges();
                assertThat(lining)
                        .as(entry.name() + ", " + piece.name())
                        .isEqualTo(worked.altered().piece(piece.name()).edges());
            }
        }
    }

    @Test
    void facingsAndLiningsComeThroughThePatternFile() {
        for (Pattern pattern : List.of(Layers.withNeckFacings(SHELL, WIDE_MM), Layers.withLining(SHELL))) {
            assertThat(PatternFile.read("f.svg", PatternFile.write(pattern)).pattern())
                    .isEqualTo(pattern);
        }
    }
}
