package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

class SkirtTest {

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeMeasuresRightWalksAndCloses(DraftFigure figure) {
        DraftProof.prove(Shells.skirt(figure, DraftEase.fitted()), figure);
    }

    // Common practice: waist and hem square to the fold, the side square to the hem, one smooth line across the side.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeIsSquareAndSmooth(DraftFigure figure) {
        Pattern p = Shells.skirt(figure, DraftEase.fitted());
        assertThat(SewnCorners.sewn(p, "skirt front", "side", "waist", "skirt back", "side", "waist"))
                .isCloseTo(180, within(DraftProof.SMOOTH_DEGREES));
        assertThat(SewnCorners.sewn(p, "skirt front", "hem", "side", "skirt back", "hem", "side"))
                .isCloseTo(180, within(DraftProof.SMOOTH_DEGREES));
        for (String side : new String[] {"front", "back"}) {
            Piece piece = p.piece("skirt " + side);
            assertThat(SewnCorners.degrees(piece, "waist", "centre " + side)).isCloseTo(90, within(1e-6));
            assertThat(SewnCorners.degrees(piece, "centre " + side, "hem")).isCloseTo(90, within(1e-6));
        }
    }

    // The New Dressmaker (Butterick, 1921): a gored skirt is lengthened 6 in below the hip line.
    @Test
    void aKneeLengthSkirtIsLengthenedSixInchesBelowTheHip() {
        Piece front =
                Shells.skirt(TableFigures.misses("14"), DraftEase.fitted()).piece("skirt front");
        double below = front.level(LevelName.HIP).orElseThrow()
                - front.level(LevelName.SKIRT_LENGTH).orElseThrow();
        assertThat(below / 25.4).isCloseTo(6, within(1e-9));
    }

    @Test
    void aWaistLargerThanTheHipFlaresTheSideAndLeavesTheDartsOut() {
        DraftFigure figure = DraftFigure.of(Body.named("apple")
                .with(Reading.taped(Measure.BUST_GIRTH, 1100))
                .with(Reading.taped(Measure.WAIST_GIRTH, 1120))
                .with(Reading.taped(Measure.HIP_GIRTH, 1060))
                .with(Reading.taped(Measure.STATURE, 1630)));
        Pattern p = Shells.skirt(figure, DraftEase.fitted());
        assertThat(p.piece("skirt front").darts()).isEmpty();
        assertThat(p.piece("skirt back").darts()).isEmpty();
        DraftProof.prove(p, figure);
    }

    @Test
    void aSkirtThatEndsAboveTheHipIsRefusedWithTheShortestLength() {
        DraftFigure figure = DraftFigure.of(Body.named("mini")
                .with(Reading.taped(Measure.WAIST_GIRTH, 700))
                .with(Reading.taped(Measure.HIP_GIRTH, 960))
                .with(Reading.taped(Measure.WAIST_TO_HIP, 200))
                .with(Reading.taped(Measure.SKIRT_LENGTH, 150)));
        assertThatThrownBy(() -> Shells.skirt(figure, DraftEase.fitted()))
                .isInstanceOfSatisfying(DraftException.class, e -> {
                    assertThat(e.shell()).isEqualTo("skirt");
                    assertThat(e.measure()).isEqualTo(Measure.SKIRT_LENGTH);
                    assertThat(e.amountMm()).isEqualTo(150);
                    assertThat(e.limitMm()).isBetween(190.0, 230.0);
                });
    }
}
