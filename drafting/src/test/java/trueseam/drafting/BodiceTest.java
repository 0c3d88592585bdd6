package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

class BodiceTest {

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeMeasuresRightWalksAndCloses(DraftFigure figure) {
        DraftProof.prove(Shells.bodice(figure, DraftEase.fitted()), figure);
    }

    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void everySizeRunsSmoothWhereItIsSewn(DraftFigure figure) {
        Pattern p = Shells.bodice(figure, DraftEase.fitted());
        UpperCorners.prove(p, "bodice", "waist");
    }

    // Common practice: CF and CB square to neck and waist.
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void neckAndWaistAreSquareToTheFold(DraftFigure figure) {
        Pattern p = Shells.bodice(figure, DraftEase.fitted());
        for (String side : new String[] {"front", "back"}) {
            Piece piece = p.piece("bodice " + side);
            assertThat(SewnCorners.degrees(piece, "neck", "centre " + side)).isCloseTo(90, within(1e-6));
            assertThat(SewnCorners.degrees(piece, "centre " + side, "waist")).isCloseTo(90, within(1e-6));
        }
    }

    // Shoulder Fitting for Patterns (magazine column): misses 4 3/4 in (sizes 6 to 8) to 5 1/4 in (18 to 20).
    @Test
    void missesShouldersAreAsLongAsPublished() {
        for (String size : new String[] {"6", "8", "10", "12", "14", "16", "18", "20"}) {
            Pattern p = Shells.bodice(TableFigures.misses(size), DraftEase.fitted());
            double inches = FlatPattern.measure(p, Measure.SHOULDER_LENGTH)
                            .orElseThrow()
                            .mm()
                    / 25.4;
            assertThat(inches).as("size " + size).isBetween(4.75 - 0.01, 5.25 + 0.01);
        }
    }

    // Common practice: the back shoulder is 1/4 to 1/2 in longer than the front one and eased in.
    @Test
    void theBackShoulderIsEasedToTheFrontOne() {
        Pattern p = Shells.bodice(TableFigures.misses("14"), DraftEase.fitted());
        double longer = p.piece("bodice back").sewnLength("shoulder")
                - p.piece("bodice front").sewnLength("shoulder");
        assertThat(longer / 25.4).isBetween(0.25 - 1e-6, 0.5);
    }

    // Sources disagree on the cap's ease: 3/4 in at least (sleeve-cap note) to 1 1/2 in (drafting text).
    @ParameterizedTest
    @MethodSource("trueseam.drafting.TableFigures#all")
    void theCapIsEasedIntoTheArmhole(DraftFigure figure) {
        Pattern p = Shells.bodice(figure, DraftEase.fitted());
        double cap =
                p.piece("sleeve").sewnLength("cap front") + p.piece("sleeve").sewnLength("cap back");
        double armhole = p.piece("bodice front").sewnLength("armhole")
                + p.piece("bodice back").sewnLength("armhole");
        assertThat((cap - armhole) / 25.4).isBetween(0.75, 1.5);
    }

    @Test
    void aBustPointNearerThanItIsAsideIsRefused() {
        DraftFigure figure = DraftFigure.of(Body.named("slip")
                .with(Reading.taped(Measure.BUST_GIRTH, 914))
                .with(Reading.taped(Measure.WAIST_GIRTH, 711))
                .with(Reading.taped(Measure.BUST_POINT_HEIGHT, 26))
                .with(Reading.taped(Measure.BUST_POINT_WIDTH, 250)));
        assertThatThrownBy(() -> Shells.bodice(figure, DraftEase.fitted()))
                .isInstanceOfSatisfying(DraftException.class, e -> {
                    assertThat(e.shell()).isEqualTo("bodice");
                    assertThat(e.measure()).isEqualTo(Measure.BUST_POINT_HEIGHT);
                    assertThat(e.amountMm()).isEqualTo(26);
                });
    }

    @Test
    void aBackTooBroadForTheBustIsRefusedWithWhatIsLeftForTheArmhole() {
        DraftFigure figure = DraftFigure.of(Body.named("broad")
                .with(Reading.taped(Measure.BUST_GIRTH, 760))
                .with(Reading.taped(Measure.WAIST_GIRTH, 700))
                .with(Reading.taped(Measure.ACROSS_BACK_WIDTH, 460)));
        assertThatThrownBy(() -> Shells.bodice(figure, DraftEase.fitted()))
                .isInstanceOfSatisfying(DraftException.class, e -> {
                    assertThat(e.measure()).isEqualTo(Measure.BUST_GIRTH);
                    assertThat(e.amountMm()).isLessThan(e.limitMm());
                });
    }

    // Threads, Set-in Sleeve Solutions: upper arm ease of 2 in at least.
    @Test
    void chosenEaseReplacesTheUsualOne() {
        DraftFigure figure = TableFigures.misses("14");
        Pattern usual = Shells.bodice(figure, DraftEase.fitted());
        Pattern loose = Shells.bodice(figure, DraftEase.fitted().with(Measure.BUST_GIRTH, 120));
        assertThat(usual.easeMm().get(Measure.UPPER_ARM_GIRTH)).isEqualTo(50.8);
        assertThat(loose.easeMm().get(Measure.BUST_GIRTH)).isEqualTo(120);
        DraftProof.prove(loose, figure);
    }
}
