package trueseam.intake.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Population;
import trueseam.garment.body.Reading;
import trueseam.garment.body.Side;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;

class BodyCsvTest {
    private static final EntryRules RULES = EntryRules.usual();

    @Test
    void readsWhatADressmakerTypes() {
        BodyFile file = BodyCsv.read("ann.csv", """
                # label: Ann
                measure,value,side,date
                bust girth,38 1/2 in
                Hip,104 cm
                waist,30
                shoulder length,5 in,left,2026-03-09
                shoulder length,"12,4 cm",Right,2026-03-09
                """, RULES);
        assertThat(file.findings()).isEmpty();
        assertThat(file.body().label()).isEqualTo("Ann");
        assertThat(file.body().readings())
                .containsExactly(
                        Reading.taped(Measure.BUST_GIRTH, 977.9),
                        Reading.taped(Measure.HIP_GIRTH, 1040),
                        Reading.taped(Measure.WAIST_GIRTH, 762),
                        Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 127).on(LocalDate.of(2026, 3, 9)),
                        Reading.taped(Measure.SHOULDER_LENGTH, Side.RIGHT, 124).on(LocalDate.of(2026, 3, 9)));
    }

    @Test
    void theShortestFileHasMeasureAndValue() {
        BodyFile file =
                BodyCsv.read("ann.csv", "measure,value\nbust girth,97\n", RULES.withBareUnit(LengthUnit.CENTIMETRE));
        assertThat(file.body()).isEqualTo(new Body("ann.csv", file.body().readings()));
        assertThat(file.body().mm(Measure.BUST_GIRTH)).isEqualTo(970);
        assertThat(file.hasFailures()).isFalse();
    }

    @Test
    void badLinesAreNamedAndTheRestIsKept() {
        BodyFile file = BodyCsv.read("ann.csv", """
                measure,value,side,date
                bust grith,38 in
                waist,thirty
                hip,40 in,left
                hip,40 in,middle
                wrist,6 in,,9 March
                bust girth,95,2 cm,,
                bust girth,95 cm
                """, RULES);
        assertThat(file.body().readings()).containsExactly(Reading.taped(Measure.BUST_GIRTH, 950));
        assertThat(file.hasFailures()).isTrue();
        assertThat(file.findings())
                .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.FAILURE))
                .extracting(Finding::place)
                .containsExactly(
                        "ann.csv, line 2",
                        "ann.csv, line 3",
                        "ann.csv, line 4",
                        "ann.csv, line 5",
                        "ann.csv, line 6",
                        "ann.csv, line 7");
        assertThat(file.findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "\"bust grith\" is not a measure this program knows; did you mean \"bust girth\"?",
                        "\"thirty\" is not a length: the number is missing. Write for example 37 1/2 in, 5/8\" or 95.2 cm.",
                        "hip girth cannot be 1016.0 mm: this measure has no left and right.",
                        "\"middle\" is not a side: one of both, left, right was expected.",
                        "\"9 March\" is not a date: a date such as 2026-03-09 was expected.",
                        "The line has 5 cells but the header 4; put a value with a decimal comma in quotes, as \"95,2 cm\".");
    }

    @Test
    void anImpossibleValueIsLeftOutAndARareOneKept() {
        BodyFile file = BodyCsv.read("ann.csv", "measure,value\nbust girth,5000 mm\nhip,1500 mm\n", RULES);
        assertThat(file.body().readings()).containsExactly(Reading.taped(Measure.HIP_GIRTH, 1500));
        assertThat(file.findings())
                .extracting(Finding::place, Finding::severity)
                .containsExactly(
                        tuple("ann.csv, line 2", Severity.FAILURE), tuple("ann.csv, line 3", Severity.WARNING));
        assertThat(file.findings().get(0).sentence()).startsWith("bust girth: 5000 mm");
    }

    @Test
    void whatIsRareDependsOnThePopulation() {
        // A hip of 1,300 mm: 99.9 % of the surveyed women reach to 1,306 mm, of the men to 1,293 mm.
        String text = "measure,value\nhip,1300 mm\n";
        BodyFile woman = BodyCsv.read("ann.csv", text, RULES.withPopulation(Population.WOMEN));
        assertThat(woman.findings()).isEmpty();
        BodyFile man = BodyCsv.read("ben.csv", text, RULES.withPopulation(Population.MEN));
        assertThat(man.findings()).extracting(Finding::severity).containsExactly(Severity.WARNING);
        assertThat(man.hasFailures()).isFalse();
    }

    @Test
    void aColumnThatIsNotReadIsANote() {
        BodyFile file = BodyCsv.read("ann.csv", "measure,value,colour\nbust girth,38,red\n", RULES);
        assertThat(file.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.sentence()).contains("\"colour\" is not read");
        });
    }

    @Test
    void aFileThatIsNoBodyIsRefused() {
        assertThatThrownBy(() -> BodyCsv.read("ann.csv", "name,age\nAnn,40\n", RULES))
                .isInstanceOf(SheetException.class)
                .hasMessage("ann.csv: The header has no column \"measure\"; it is: name, age.");
    }

    @Test
    void writesWhatADressmakerReads() {
        Body body = Body.named("Ann")
                .with(Reading.taped(Measure.BUST_GIRTH, 977.9))
                .with(Reading.taped(Measure.WAIST_GIRTH, 751))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, Side.LEFT, 127).on(LocalDate.of(2026, 3, 9)));
        assertThat(BodyCsv.write(body, LengthUnit.INCH)).isEqualTo("""
                        # label: Ann
                        measure,value,side,date
                        bust girth,38 1/2 in,,
                        waist girth,751 mm,,
                        shoulder length,5 in,left,2026-03-09
                        """);
    }

    @Test
    void standInsKeepTheirOriginAndNote() {
        Body body = Body.named("survey 10037")
                .with(new Reading(
                        Measure.WAIST_GIRTH,
                        Side.BOTH,
                        850,
                        Optional.empty(),
                        Origin.STAND_IN,
                        "survey takes the waist at the navel"));
        String text = BodyCsv.write(body, LengthUnit.MILLIMETRE);
        assertThat(text).contains("measure,value,origin,note").contains("stand-in");
        assertThat(BodyCsv.read("x", text, RULES).body()).isEqualTo(body);
    }
}
