package trueseam.fitting.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.Blocks;
import trueseam.fitting.Drafted;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPart;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.size.SizeTables;

/**
 * The worked examples of the trade facts, section 6, that are about what happens to the paper. P: the numbers are in the source; R:
 * the rule is published; D: common practice; DER: derived, recomputable. All in inches unless noted.
 */
class WorkedExamplesOnPaperTest {

    private static final double IN = 25.4;

    private static DraftFigure size(String size) {
        return DraftFigure.of(SizeTables.named("misses"), size);
    }

    @Test
    void aCapThreeQuartersShorterThanItsArmholeLacksAnInchAndAHalf() {
        // Example 5, P: a grading-school note on sleeve caps: 3/8 ease wanted front and back, so 1 1/2 is to be added.
        Pattern bodice = Shells.bodice(size("14"), DraftEase.fitted().withCap(-0.75 * IN));
        Seam armhole = bodice.seams().stream()
                .filter(s -> s.name().contains("armhole"))
                .findFirst()
                .orElseThrow();
        Seam wanted = new Seam(armhole.name(), armhole.first(), armhole.second(), (0.375 + 0.375) * IN);
        assertThat(bodice.mismatchMm(wanted)).isCloseTo(-1.5 * IN, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"bodice front", "bodice back"})
    void theBodiceIsLengthenedTwoAndAHalfInchesAboveTheWaist(String name) {
        // Example 12, P: The Dressmaker, c. 1911. (The line half way between underarm and neck is not in this issue.)
        Piece piece = Shells.bodice(size("14"), DraftEase.fitted()).piece(name);
        double waist = piece.level(LevelName.WAIST).orElseThrow();
        assertThat(piece.level(LevelName.BODICE_LENGTH).orElseThrow() - waist).isCloseTo(2.5 * IN, within(1e-9));
    }

    @Test
    void theSkirtIsLengthenedSixInchesBelowTheHipLineInEveryPieceByTheFullAmount() {
        // Examples 6 and 7: The New Dressmaker, 1921: 6 in below the hip line, + 2 in every gore; here the two pieces
        // of a
        // straight skirt. (Half of a change of 4 or 5 at the hem is not done: all of it goes to the line.)
        Pattern skirt = Shells.skirt(size("14"), DraftEase.fitted());
        FitResult fit = Drafted.altered(skirt, Map.of(Measure.SKIRT_LENGTH, 2 * IN), Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        for (Piece piece : skirt.pieces()) {
            double line = piece.level(LevelName.SKIRT_LENGTH).orElseThrow();
            assertThat(piece.level(LevelName.HIP).orElseThrow() - line).isCloseTo(6 * IN, within(1e-9));
            Piece after = fit.worked().altered().piece(piece.name());
            double before = piece.only(EdgeRole.CENTRE).length();
            assertThat(after.only(EdgeRole.CENTRE).length() - before).isCloseTo(2 * IN, within(0.1));
        }
    }

    @Test
    void halfABustOf84CentimetresAndFiveIsAHalfBlockOf47() {
        // Example 19, P: Metric Pattern Cutting for Women's Wear, 5th ed. 2008, close fitting bodice block, ease 10 cm.
        Body body = SizeTables.named("misses").body("10").with(Reading.taped(Measure.BUST_GIRTH, 840));
        Pattern bodice = Shells.bodice(DraftFigure.of(body), DraftEase.fitted().with(Measure.BUST_GIRTH, 100));
        FlatMeasure bust = FlatPattern.measure(bodice, Measure.BUST_GIRTH).orElseThrow();
        double half = bust.parts().stream().mapToDouble(FlatPart::mm).sum();
        assertThat(half).isCloseTo(470, within(0.1));
        assertThat(bust.mm()).isCloseTo(940, within(0.1));
    }

    @Test
    void aCrotchThreeQuartersDeeperIsThreeQuartersOnEveryPieceAndOneAndAHalfLongerInTheSeam() {
        // Example 29, D, Guide C-209 for the ease; the crotch seam is DER: + N in the front and + N in the back.
        Pattern trousers = Shells.trousers(size("16"), DraftEase.fitted());
        FitResult fit = Drafted.altered(trousers, Map.of(Measure.BODY_RISE, 0.75 * IN), Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        assertThat(Drafted.gained(fit, Measure.BODY_RISE)).isCloseTo(0.75 * IN, within(0.1));
        assertThat(Drafted.gained(fit, Measure.TOTAL_CROTCH_LENGTH)).isCloseTo(1.5 * IN, within(0.5));
        // Section 4.3: outseam + N, inseam the same.
        assertThat(Drafted.gained(fit, Measure.TROUSER_LENGTH)).isCloseTo(0.75 * IN, within(0.1));
        assertThat(Drafted.gained(fit, Measure.INSIDE_LEG_LENGTH)).isCloseTo(0, within(0.1));
    }

    @Test
    void aBodiceHalfAnInchShorterLeavesSleeveArmholeAndBustAlone() {
        // Example 31, D: the line lies below the armhole, so the sleeve is unchanged.
        Pattern bodice = Shells.bodice(size("14"), DraftEase.fitted());
        FitResult fit = Drafted.altered(bodice, Map.of(Measure.BACK_WAIST_LENGTH, -0.5 * IN), Drafted.USUAL);
        Pattern after = fit.worked().altered();
        assertThat(fit.report().failures()).isEmpty();
        assertThat(after.piece("sleeve")).isEqualTo(bodice.piece("sleeve"));
        for (String name : List.of("bodice front", "bodice back")) {
            Piece before = bodice.piece(name);
            assertThat(after.piece(name).only(EdgeRole.ARMHOLE)).isEqualTo(before.only(EdgeRole.ARMHOLE));
            double centre = before.only(EdgeRole.CENTRE).length();
            assertThat(after.piece(name).only(EdgeRole.CENTRE).length() - centre)
                    .isCloseTo(-0.5 * IN, within(0.1));
        }
        assertThat(Drafted.gained(fit, Measure.BUST_GIRTH)).isCloseTo(0, within(0.1));
    }

    @Test
    void aSleeveHalfAnInchLongerIsAQuarterAboveAndAQuarterBelowTheElbow() {
        // Example 32, D: half and half unless measured.
        Pattern bodice = Shells.bodice(size("14"), DraftEase.fitted());
        FitResult fit = Drafted.altered(bodice, Map.of(Measure.ARM_LENGTH, 0.5 * IN), Drafted.USUAL);
        assertThat(fit.report().failures()).isEmpty();
        assertThat(Drafted.gained(fit, Measure.ARM_LENGTH)).isCloseTo(0.5 * IN, within(0.1));
        assertThat(Drafted.gained(fit, Measure.UPPER_ARM_LENGTH)).isCloseTo(0.25 * IN, within(0.1));
    }

    @Test
    void aNeckLineAnEighthLowerIsThreeQuartersOfAnInchLonger() {
        // Example 34, DER: a parallel change t alters the neck seam by 2 pi t, so 3/4 wants 0.119 in. Here a round
        // neck,
        // each quarter a circle's arc by one cubic (its length is good to 0.03 %).
        double t = 0.75 * IN / (2 * Math.PI);
        assertThat(t / IN).isCloseTo(0.119, within(5e-4));
        double before = Drafted.mm(withNeckRadius(60), Measure.NECK_BASE_GIRTH);
        double after = Drafted.mm(withNeckRadius(60 + t), Measure.NECK_BASE_GIRTH);
        assertThat(after - before).isCloseTo(0.75 * IN, within(0.05));
    }

    private static Pattern withNeckRadius(double radiusMm) {
        double handle = 0.5522847498 * radiusMm;
        Path neck = Path.of(Cubic.of(
                new Point(radiusMm, 400), new Vec(0, -handle), new Vec(handle, 0), new Point(0, 400 - radiusMm)));
        Pattern bodice = Blocks.bodice();
        List<Piece> pieces =
                bodice.pieces().stream().map(piece -> withNeck(piece, neck)).toList();
        return bodice.withPieces(pieces);
    }

    private static Piece withNeck(Piece piece, Path neck) {
        Point shoulder = piece.only(EdgeRole.SHOULDER).path().start();
        Point foot = piece.only(EdgeRole.CENTRE).path().end();
        List<Edge> edges = piece.edges().stream()
                .map(edge -> switch (edge.role()) {
                    case NECK -> edge.withPath(neck);
                    case SHOULDER -> edge.withPath(Path.through(shoulder, neck.start()));
                    case CENTRE -> edge.withPath(Path.through(neck.end(), foot));
                    default -> edge;
                })
                .toList();
        return piece.toBuilder().edges(edges).build();
    }
}
