package trueseam.intake.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.earlier.NamedThen;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;

/** Reads reports written by hand here, with invented figures; what {@code fit} writes is read in the checks. */
class FitReportFileTest {

    private static final String REPORT = """
            {"format": "trueseam fit report", "version": 1, "made": "2026-03-09", "worn": true,
             "pattern": {"name": "blouse", "size": "14", "sizeTable": "misses"},
             "garment": "bodice", "body": {"label": "Ann"},
             "choices": {"overrules": [
               {"measure": "bust girth", "decision": "amount", "mm": 30},
               {"measure": "waist girth", "decision": "standing", "mm": 12},
               {"measure": "upper arm girth", "decision": "standing", "mm": null}]},
             "alterations": [
               {"name": "sway-back", "way": "wedge", "mm": 9.5, "side": "both", "standing": true},
               {"name": "across back", "way": "", "mm": null, "side": "both", "standing": false}],
             "needs": [
               {"measure": "bust girth", "bodyMm": 940, "tableMm": 914, "flatMm": 990, "easeMm": 76, "method": "table",
                "decision": "alter", "overruled": true, "amountMm": 30, "leaveMm": 12.7, "afterMm": 1020.5},
               {"measure": "waist girth", "bodyMm": 730, "tableMm": null, "flatMm": 735, "easeMm": 25, "method": "flat",
                "decision": "alter", "overruled": true, "amountMm": 12, "leaveMm": 12.7, "afterMm": null},
               {"measure": "upper arm girth", "bodyMm": 300, "tableMm": null, "flatMm": 350, "easeMm": 50,
                "method": "flat", "decision": "leave", "overruled": false, "amountMm": 0, "leaveMm": 12.7, "afterMm": 351},
               {"measure": "back neck point to waist", "bodyMm": 400, "tableMm": 419, "flatMm": 425, "easeMm": 6,
                "method": "table", "decision": "try on", "overruled": false, "amountMm": 0, "afterMm": 425},
               {"measure": "inside leg length", "bodyMm": 700, "tableMm": 720, "flatMm": 720, "easeMm": 0,
                "method": "table", "decision": "leave", "overruled": true, "amountMm": 0, "afterMm": 720}]}
            """;

    private static MeasureThen measure(Measure measure) {
        return FitReportFile.read("r.json", REPORT).measures().stream()
                .filter(one -> one.measure() == measure)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void personPatternDayAndWhetherItWasWornAreRead() {
        EarlierFit fit = FitReportFile.read("r.json", REPORT);
        assertThat(fit.person()).isEqualTo("Ann");
        assertThat(fit.made()).contains(LocalDate.of(2026, 3, 9));
        assertThat(fit.worn()).isTrue();
        assertThat(fit.garment()).isEqualTo(GarmentKind.BODICE);
        assertThat(fit.sizeLabel()).isEqualTo("misses 14");
        assertThat(fit.named()).containsExactly(new NamedThen("sway-back", "wedge", 9.5, Side.BOTH, true));
    }

    @Test
    void theAmountIsWhatTheTapeReadsOnTheFinishedPatternAndThePlannedOneWhereNobodyMeasured() {
        assertThat(measure(Measure.BUST_GIRTH).changedMm()).isEqualTo(30.5);
        assertThat(measure(Measure.WAIST_GIRTH).changedMm()).isEqualTo(12);
    }

    @Test
    void aPatternIsDrawnForItsTableOrForItsFlatMeasureLessEase() {
        assertThat(measure(Measure.BUST_GIRTH).drawnForMm()).isEqualTo(914);
        assertThat(measure(Measure.WAIST_GIRTH).drawnForMm()).isEqualTo(710);
        assertThat(measure(Measure.BUST_GIRTH).madeForMm()).isEqualTo(944.5);
    }

    @Test
    void howEachAmountCameAboutIsTold() {
        assertThat(measure(Measure.BUST_GIRTH).settled()).isEqualTo(Settled.DECIDED);
        assertThat(measure(Measure.WAIST_GIRTH).settled()).isEqualTo(Settled.STANDING);
        // Earlier patterns only agreed with the rule there: it is the rule's.
        assertThat(measure(Measure.UPPER_ARM_GIRTH).settled()).isEqualTo(Settled.LEFT);
        assertThat(measure(Measure.BACK_WAIST_LENGTH).settled()).isEqualTo(Settled.OPEN);
        // Another measure decided for it.
        assertThat(measure(Measure.INSIDE_LEG_LENGTH).settled()).isEqualTo(Settled.OPEN);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "not JSON",
                "{}",
                "[]",
                "{\"format\": \"trueseam fit report\", \"version\": 2}",
                "{\"format\": \"trueseam fit report\", \"version\": 1}"
            })
    void whatIsNoReportIsRefusedInOneSentence(String text) {
        assertThatThrownBy(() -> FitReportFile.read("r.json", text))
                .isInstanceOf(SheetException.class)
                .hasMessageStartingWith("r.json")
                .hasMessageEndingWith(".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-03-09 | the ninth | date",
                "\"garment\": \"bodice\" | \"garment\": \"hat\" | garment",
                "bust girth | hat girth | hat girth",
                "\"mm\": 9.5, \"side\": \"both\" | \"mm\": 9.5, \"side\": \"front\" | side",
                "\"bodyMm\": 940 | \"bodyMm\": null | bodyMm"
            })
    void aFigureThatIsWrongOrMissingIsNamed(String figure, String wrong, String named) {
        assertThat(REPORT).contains(figure);
        assertThatThrownBy(() -> FitReportFile.read("r.json", REPORT.replace(figure, wrong)))
                .isInstanceOf(SheetException.class)
                .hasMessageContaining(named);
    }
}
