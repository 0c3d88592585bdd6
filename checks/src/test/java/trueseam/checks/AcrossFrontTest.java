package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.intake.size.SizeTables;

/** The front alone narrower or broader between the armholes (trade facts, section 7, symptom 20: the armhole cuts because the chest is wide). */
class AcrossFrontTest {

    private static Pattern draft(Garment garment, String size) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), size), Allowances.inches());
    }

    private static double across(Pattern pattern, Measure measure) {
        return FlatPattern.measure(pattern, measure).orElseThrow().mm();
    }

    @ParameterizedTest
    @CsvSource({"bodice, 14, -12.7", "bodice, 8, 12.7", "dress, 20, -12.7", "dress, 14, 6.35"})
    void onlyTheFrontChangesAndByTheWholeAmount(Garment garment, String size, double mm) {
        Pattern before = draft(garment, size);
        Entry entry = Repertoire.named("across front").orElseThrow();
        WorkedPattern worked = WorkedPattern.altered(
                before, List.of(new Applied(entry, entry.variants().get(0), mm, Optional.empty())));
        assertThat(Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures())
                .isEmpty();
        Pattern after = worked.altered();
        // N/2 on each half front (trade facts 4.1: a width on a half piece is N/2).
        assertThat(across(after, Measure.ACROSS_FRONT_WIDTH) - across(before, Measure.ACROSS_FRONT_WIDTH))
                .isCloseTo(mm, within(0.3));
        for (Piece piece : before.pieces()) {
            if (piece.kind().isBack()) {
                assertThat(after.piece(piece.name())).isEqualTo(piece);
            }
        }
        for (Measure other : List.of(Measure.BUST_GIRTH, Measure.SHOULDER_LENGTH, Measure.NECK_BASE_GIRTH)) {
            assertThat(across(after, other)).as(other.term()).isCloseTo(across(before, other), within(0.1));
        }
    }

    @ParameterizedTest
    @CsvSource({"12.25", "14.5"})
    void aFitBringsTheFrontToTheBodysWidthAndItsEase(double bodyIn) {
        // Need = body + ease - pattern; ease of the width across the front 1/4 in (common practice 0 to 1/4).
        Pattern before = draft(Garment.bodice, "14");
        Body body = Body.named("Rosalind").with(Reading.taped(Measure.ACROSS_FRONT_WIDTH, bodyIn * 25.4));
        FitResult fit = Fitting.fit(
                before,
                body,
                Optional.empty(),
                FitChoices.usual(LengthFormat.inches(8))
                        .withMethod(Method.FLAT)
                        .withOverrules(Map.of(Measure.ACROSS_FRONT_WIDTH, new Overrule.Alter())));
        assertThat(fit.report().failures()).isEmpty();
        assertThat(across(fit.worked().altered(), Measure.ACROSS_FRONT_WIDTH))
                .isCloseTo((bodyIn + 0.25) * 25.4, within(0.1));
    }
}
