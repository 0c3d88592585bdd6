package trueseam.intake.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Plausibility;
import trueseam.garment.body.Population;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.sheet.Resources;
import trueseam.intake.sheet.Sheet;
import trueseam.intake.sheet.SheetRow;
import trueseam.intake.size.SizeTables;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** The shipped limits against the survey itself: data/bodies. */
class SurveyLimitsTest {
    private static List<SurveyRow> people;

    @BeforeAll
    static void readOnce() {
        people = Stream.of("female", "male")
                .flatMap(sex -> Survey.read(Path.of("../data/bodies/ansur2-" + sex + ".csv")).rows().stream())
                .toList();
    }

    private static double percentile(List<Double> values, double share) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static List<SurveyRow> of(Population population) {
        return people.stream()
                .filter(row -> population == Population.ALL || row.sex() == population)
                .toList();
    }

    @Test
    void limitsOfSurveyedMeasuresAreTheSurveysThousandths() {
        Sheet sheet = Resources.sheet(SurveyLimits.class, "limits.csv");
        int checked = 0;
        for (SheetRow row : sheet.rows()) {
            Measure measure = Measure.named(row.cell(0));
            List<Double> values = new ArrayList<>();
            for (SurveyRow person : of(Population.valueOf(row.cell(1)))) {
                person.asBody().value(measure).ifPresent(value -> values.add(value.mm()));
            }
            if (values.isEmpty()) {
                assertThat(row.cell(6)).startsWith("not in the survey");
                continue;
            }
            checked++;
            double from = mm(row, 2);
            double to = mm(row, 3);
            assertThat(from).as("%s, 0.1 %%", row.cells()).isCloseTo(percentile(values, 0.001), within(0.051));
            assertThat(to).as("%s, 99.9 %%", row.cells()).isCloseTo(percentile(values, 0.999), within(0.051));
            if (!row.cell(6).contains("widened")) {
                assertThat(mm(row, 4)).isEqualTo(from);
                assertThat(mm(row, 5)).isEqualTo(to);
            } else {
                assertThat(mm(row, 4)).isLessThan(from);
                assertThat(mm(row, 5)).isGreaterThan(to);
            }
        }
        assertThat(checked).isGreaterThan(90);
    }

    private static double mm(SheetRow row, int column) {
        return Length.parse(row.cell(column), LengthUnit.MILLIMETRE).mm();
    }

    @Test
    void noSurveyedPersonIsImpossibleAndFewAreRare() {
        Plausibility limits = SurveyLimits.read();
        long questioned = 0;
        for (SurveyRow person : people) {
            var findings = limits.question(person.asBody(), person.sex());
            assertThat(findings).noneMatch(finding -> finding.severity() == Severity.FAILURE);
            questioned += findings.isEmpty() ? 0 : 1;
        }
        // Two thousandths of each of some thirty measures at most, were they all different people.
        assertThat(questioned).isBetween(1L, 6068L * 2 * 30 / 1000);
    }

    @Test
    void everySizeOfTheMissesAndPetiteTablesIsAUsualWoman() {
        Plausibility limits = SurveyLimits.read();
        for (String name : List.of("misses", "miss petite", "misses astm")) {
            SizeTable table = SizeTables.named(name);
            for (SizeRow row : table.rows()) {
                assertThat(limits.question(row.asBody(), Population.WOMEN))
                        .as("%s %s", name, row.size())
                        .isEmpty();
            }
        }
    }

    @Test
    void aTapedCrotchDepthIsUsualThoughTheSurveyTakesItFromTheNavel() {
        // Worked example: crotch depth 10 1/2 in of a body with hip 40 (common practice).
        assertThat(SurveyLimits.read().question(Measure.BODY_RISE, 10.5 * 25.4, Population.WOMEN))
                .isEmpty();
    }

    @Test
    void slipsOfUnitAreImpossible() {
        Plausibility limits = SurveyLimits.read();
        assertThat(limits.question(Measure.HIP_GIRTH, 104 * 25.4, Population.ALL)
                        .orElseThrow()
                        .severity())
                .isEqualTo(Severity.FAILURE);
        assertThat(limits.question(Measure.HIP_GIRTH, 41, Population.ALL)
                        .orElseThrow()
                        .severity())
                .isEqualTo(Severity.FAILURE);
    }
}
