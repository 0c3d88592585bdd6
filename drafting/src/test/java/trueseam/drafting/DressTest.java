package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.Span;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;

class DressTest {

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeMeasuresRightWalksAndCloses(DraftFigure figure) {
        DraftProof.prove(Shells.dress(figure, DraftEase.fitted()), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeRunsSmoothWhereItIsSewn(DraftFigure figure) {
        UpperCorners.prove(Shells.dress(figure, DraftEase.fitted()), "dress", "hem");
    }

    // Alterations below the waist walk only if front and back side seams are the same line there.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void frontAndBackGoOutAlikeFromWaistToHip(DraftFigure figure) {
        Pattern p = Shells.dress(figure, DraftEase.fitted());
        assertThat(outwards(p.piece("dress front"))).isCloseTo(outwards(p.piece("dress back")), within(1e-6));
    }

    private static double outwards(Piece piece) {
        double hip = piece.level(LevelName.HIP).orElseThrow();
        double waist = piece.level(LevelName.WAIST).orElseThrow();
        return Span.at(piece, hip).orElseThrow().right().x()
                - Span.at(piece, waist).orElseThrow().right().x();
    }

    @Test
    void aDressHasABustDartAndADartPointedAtBothEnds() {
        Piece front =
                Shells.dress(TableFigures.misses("14"), DraftEase.fitted()).piece("dress front");
        assertThat(front.darts()).hasSize(2);
        assertThat(front.darts()).anyMatch(d -> d instanceof Dart.DiamondDart e && e.intakeMm() > 10);
        assertThat(front.darts())
                .anyMatch(d -> d instanceof Dart.EdgeDart e && e.edge().equals("side"));
    }

    @Test
    void aMansChestIsDraftedWithoutABustDart() {
        SizeTable men = SizeTables.named("men");
        Piece front =
                Shells.dress(DraftFigure.of(men, "40"), DraftEase.fitted()).piece("dress front");
        assertThat(front.dartsOn("side")).isEmpty();
        assertThat(front.landmarks()).isEmpty();
    }

    @Test
    void aLengthAboveTheHipIsRefused() {
        DraftFigure figure =
                DraftFigure.of(SizeTables.named("misses").body("14").with(Reading.taped(Measure.DRESS_LENGTH, 500)));
        assertThatThrownBy(() -> Shells.dress(figure, DraftEase.fitted()))
                .isInstanceOfSatisfying(
                        DraftException.class, e -> assertThat(e.measure()).isEqualTo(Measure.DRESS_LENGTH));
    }
}
