package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Need;
import trueseam.fitting.compare.Verdict;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.profile.EaseProfile;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.handbook.LeastEase;
import trueseam.garment.handbook.TrouserHem;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;
import trueseam.output.handbook.Disagreement;
import trueseam.output.handbook.DisagreementText;

/** Where handbooks disagree (trade facts, section 11), what is chosen is what is done. */
class HandbookChoicesTest {

    private static final double IN = 25.4;
    private static final LengthFormat SHOW = LengthFormat.inches(8);
    private static final FitChoices USUAL = FitChoices.usual(SHOW);

    private static Pattern draft(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    private static Body body(Object... measuresAndInches) {
        Body body = Body.named("Rosalind");
        for (int i = 0; i < measuresAndInches.length; i += 2) {
            body = body.with(Reading.taped(
                    (Measure) measuresAndInches[i], ((Number) measuresAndInches[i + 1]).doubleValue() * IN));
        }
        return body;
    }

    @Test
    void theDocumentIsTheOneThatTheChoicesWrite() throws IOException {
        assertThat(Files.readString(Path.of("..", "docs", "choices.md")))
                .as("write it anew: ./trueseam choices --markdown > docs/choices.md")
                .isEqualTo(DisagreementText.markdown(Disagreement.all()));
    }

    @Test
    void aHipThatOneHandbookLeavesAnotherLetsOut() {
        // A skirt of size 14 measures 40 1/2 in at the hip (38 and 2 1/2); a hip of 38 1/8 leaves 2 3/8 in of ease:
        // more than CWU16
        // and SSH ask for (2 in), less than the encyclopedia's first source (3 in).
        Pattern skirt = draft(Garment.skirt);
        Body body = body(Measure.WAIST_GIRTH, 28, Measure.HIP_GIRTH, 38.125);
        assertThat(hip(skirt, body, USUAL).decision().verdict()).isEqualTo(Verdict.LEAVE);
        FitChoices three = USUAL.withWearing(
                LeastEase.USUAL.with(LeastEase.Place.HIP, "encyclopedia").table());
        Need need = hip(skirt, body, three);
        assertThat(need.decision().verdict()).isEqualTo(Verdict.ALTER);
        assertThat(need.decision().amountMm()).isCloseTo((38.125 + 3 - 40.5) * IN, within(0.05));
        assertThat(need.easeSource()).contains("EASE-W");
    }

    private static Need hip(Pattern skirt, Body body, FitChoices choices) {
        return Fitting.chart(skirt, body, Optional.empty(), Optional.empty(), choices.withMethod(Method.FLAT)).stream()
                .filter(need -> need.measure() == Measure.HIP_GIRTH)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theEaseProfileGoesByTheChosenLeastEase() {
        FitChoices three = USUAL.withWearing(
                LeastEase.USUAL.with(LeastEase.Place.HIP, "encyclopedia").table());
        FitResult fit = Fitting.fit(
                draft(Garment.skirt), body(Measure.WAIST_GIRTH, 28, Measure.HIP_GIRTH, 38), Optional.empty(), three);
        double least = EaseProfile.of(fit).stream()
                .filter(profile -> profile.part() == BodyPart.TRUNK)
                .flatMap(profile -> profile.levels().stream())
                .filter(level -> level.body().measure() == Measure.HIP_GIRTH)
                .findFirst()
                .orElseThrow()
                .body()
                .leastEaseMm()
                .orElseThrow();
        assertThat(least).isCloseTo(3 * IN, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // ND1921: 7 in; WSC78 5 to 7; NM209 3 to 4 for the abdomen; the person's own, here 8 in.
        "skirt, SEVEN, 7",
        "skirt, FIVE_TO_SEVEN, 6",
        "skirt, ABDOMEN, 3.5",
        "skirt, OWN, 8",
        "trousers, SEVEN, 7",
        "trousers, OWN, 8",
        "gored, OWN, 8",
        "gored, ABDOMEN, 3.5"
    })
    void theHipIsMeasuredAndAlteredAtTheChosenHeight(Garment garment, HipLine line, double downIn) {
        Pattern drawn = draft(garment);
        Body body = body(Measure.WAIST_GIRTH, 28, Measure.HIP_GIRTH, 41, Measure.WAIST_TO_HIP, 8);
        Pattern pattern = line.on(drawn, body, SHOW).pattern();
        assertThat(FlatPattern.measure(pattern, Measure.WAIST_TO_HIP)
                        .orElseThrow()
                        .mm())
                .isCloseTo(downIn * IN, within(0.01));
        FitResult fit = Fitting.fit(pattern, body, Optional.empty(), USUAL.withMethod(Method.FLAT));
        assertThat(fit.report().holds()).isTrue();
        double wanted = 41 * IN
                + fit.choices()
                        .wearing()
                        .wearing(fit.kind(), Measure.HIP_GIRTH)
                        .orElseThrow()
                        .usualMm();
        assertThat(FlatPattern.measure(fit.worked().altered(), Measure.HIP_GIRTH)
                        .orElseThrow()
                        .mm())
                .isCloseTo(wanted, within(0.1));
    }

    @Test
    void ofADressTheHipLineIsMeasuredDownFromTheWaist() {
        Pattern dress = HipLine.SEVEN.on(draft(Garment.dress), body(), SHOW).pattern();
        dress.pieces().stream().filter(piece -> piece.kind().isDress()).forEach(piece -> assertThat(
                        piece.level(LevelName.WAIST).orElseThrow()
                                - piece.level(LevelName.HIP).orElseThrow())
                // The side slants: a little less straight down than along it.
                .isBetween(6.7 * IN, 7 * IN));
    }

    @Test
    void anOwnHipLineThatWasNotMeasuredStaysAndSaysSo() {
        Pattern skirt = draft(Garment.skirt);
        HipLine.Placed placed = HipLine.OWN.on(skirt, body(Measure.HIP_GIRTH, 40), SHOW);
        assertThat(placed.pattern()).isEqualTo(skirt);
        assertThat(placed.findings().get(0).sentence()).contains("measure it down the side");
    }

    @Test
    void aHipLineFarOffThePersonsOwnIsSaid() {
        HipLine.Placed placed = HipLine.AS_DRAWN.on(draft(Garment.skirt), body(Measure.WAIST_TO_HIP, 8), SHOW);
        assertThat(placed.findings()).hasSize(1);
        assertThat(placed.findings().get(0).sentence()).contains("8 in down", "own");
    }

    @ParameterizedTest
    @ValueSource(strings = {"shallow", "usual", "men", "safe"})
    void theHemOfTrousersIsAsDeepAsChosenAndNothingElseMoves(String word) {
        // ASG 5/8 to 1 1/4 in, men's 2 in; web:pantsbook 1 1/4 to 1 1/2 in, 2 1/2 in for safety.
        double[] range =
                switch (word) {
                    case "shallow" -> new double[] {0.625, 1.25};
                    case "usual" -> new double[] {1.25, 1.5};
                    case "men" -> new double[] {2, 2};
                    default -> new double[] {2.5, 2.5};
                };
        Pattern trousers = draft(Garment.trousers);
        Pattern hemmed = TrouserHem.of(word).on(trousers);
        hemmed.pieces().forEach(piece -> piece.edges().forEach(edge -> {
            assertThat(edge.path())
                    .isEqualTo(trousers.piece(piece.name()).edge(edge.name()).path());
            if (edge.role() == EdgeRole.HEM) {
                assertThat(edge.allowanceMm() / IN).isBetween(range[0] - 1e-9, range[1] + 1e-9);
            } else {
                assertThat(edge.allowanceMm())
                        .isEqualTo(
                                trousers.piece(piece.name()).edge(edge.name()).allowanceMm());
            }
        }));
        assertThat(TrouserHem.of(word).on(draft(Garment.skirt))).isEqualTo(draft(Garment.skirt));
    }

    @Test
    void everyItemOfTheListOfDisagreementsIsThere() {
        // Trade facts, section 11: eleven items; the second is told for waist and hip apart.
        List<Disagreement> all = Disagreement.all();
        assertThat(all).hasSize(12);
        assertThat(all).allSatisfy(one -> assertThat(one.answers().size()).isGreaterThan(1));
    }
}
