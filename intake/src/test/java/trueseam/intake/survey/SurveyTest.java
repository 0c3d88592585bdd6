package trueseam.intake.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Population;
import trueseam.garment.finding.Severity;
import trueseam.garment.measure.Measure;
import trueseam.intake.sheet.SheetException;

/** Against the survey's own figures: data/bodies/README.md and the summary file computed apart from this program. */
class SurveyTest {
    private static Survey women;
    private static Survey men;

    @BeforeAll
    static void readOnce() {
        women = Survey.read(Path.of("../data/bodies/ansur2-female.csv"));
        men = Survey.read(Path.of("../data/bodies/ansur2-male.csv"));
    }

    @Test
    void everySurveyedPersonBecomesABody() {
        // NATICK/TR-15/007: the public files hold 1,986 women and 4,082 men.
        assertThat(women.rows()).hasSize(1986);
        assertThat(men.rows()).hasSize(4082);
        Set<String> labels = new HashSet<>();
        Stream.concat(women.rows().stream(), men.rows().stream()).forEach(row -> {
            Body body = row.asBody();
            labels.add(body.label());
            assertThat(body.measures()).as(body.label()).hasSizeGreaterThanOrEqualTo(29);
            assertThat(body.readings()).allSatisfy(reading -> {
                assertThat(reading.mm()).isPositive();
                assertThat(reading.origin()).isIn(Origin.TAPED, Origin.STAND_IN);
                assertThat(reading.origin() == Origin.STAND_IN && reading.note().isEmpty())
                        .isFalse();
            });
        });
        assertThat(labels).hasSize(6068);
    }

    @ParameterizedTest
    @CsvSource({
        // data/bodies/README.md, stand-ins that can be computed: mean of the women, mean of the men.
        "SHOULDER_SLOPE, 60.6, 76.6",
        "FRONT_CROTCH_LENGTH, 279.0, 266.4",
        "BODY_RISE, 197.8, 210.6",
        "WAIST_TO_HIP, 146.4, 168.6"
    })
    void standInsHaveTheMeansOfTheReadme(Measure measure, double womenMm, double menMm) {
        assertThat(mean(women, measure)).isCloseTo(womenMm, within(0.05));
        assertThat(mean(men, measure)).isCloseTo(menMm, within(0.05));
    }

    @Test
    void publishedMeansOfTheWomenComeOut() {
        // Figures quoted for NATICK/TR-15/007: stature 1628, chest 947, waist 861.
        assertThat(mean(women, Measure.STATURE)).isCloseTo(1628, within(0.6));
        assertThat(mean(women, Measure.BUST_GIRTH)).isCloseTo(947, within(0.6));
        assertThat(mean(women, Measure.WAIST_GIRTH)).isCloseTo(861, within(0.6));
    }

    @Test
    void oneWomanReadByHand() {
        // The first line of ansur2-female.csv.
        Body body = women.row("10037").asBody();
        assertThat(body.label()).isEqualTo("survey 10037");
        assertThat(body.mm(Measure.BUST_GIRTH)).isEqualTo(922);
        assertThat(body.mm(Measure.HIP_GIRTH)).isEqualTo(1011);
        assertThat(body.mm(Measure.SHOULDER_SLOPE)).isEqualTo(1336 - 1282);
        assertThat(body.mm(Measure.BODY_RISE)).isEqualTo(942 - 759);
        assertThat(body.mm(Measure.FRONT_CROTCH_LENGTH)).isEqualTo(557 - 310);
        assertThat(body.value(Measure.CHEST_GIRTH)).isEmpty();
        assertThat(body.value(Measure.WAIST_GIRTH)).hasValueSatisfying(value -> {
            assertThat(value.origin()).isEqualTo(Origin.STAND_IN);
            assertThat(value.note()).contains("navel");
        });
        assertThat(women.row("10037").sex()).isEqualTo(Population.WOMEN);
        assertThat(women.row("10037").age()).isEqualTo(26);
    }

    @Test
    void aMansChestStandsInForTheBust() {
        Body body = men.row("10027").asBody();
        assertThat(body.mm(Measure.CHEST_GIRTH)).isEqualTo(1074);
        assertThat(body.value(Measure.BUST_GIRTH)).hasValueSatisfying(value -> {
            assertThat(value.mm()).isEqualTo(1074);
            assertThat(value.origin()).isEqualTo(Origin.STAND_IN);
        });
    }

    @Test
    void mappedBodiesContradictThemselvesNowhere() {
        Stream.concat(women.rows().stream(), men.rows().stream())
                .forEach(row -> assertThat(row.asBody().findings())
                        .filteredOn(finding -> finding.severity() != Severity.NOTE)
                        .isEmpty());
    }

    @Test
    void columnsAreFoundByNameInAnyOrder() {
        String header = "Age,Gender,SubjectId,waistheightomphalion,crotchheight";
        assertThatThrownBy(() -> Survey.read("mine.csv", header + "\n26,Female,1,942,759\n"))
                .isInstanceOf(SheetException.class)
                .hasMessageContaining("mine.csv")
                .hasMessageContaining("no column \"stature\"");
    }

    @Test
    void aCellThatIsNoNumberNamesItsLineAndColumn() {
        List<String> columns = MappingLine.all().stream()
                .flatMap(line -> Stream.concat(Stream.of(line.column()), line.less().stream()))
                .distinct()
                .toList();
        String header = "SubjectId,Gender,Age," + String.join(",", columns);
        String numbers = "100,".repeat(columns.size() - 1);
        String good = "1,Female,30," + numbers + "100";
        String bad = "2,Female,30," + numbers + "tall";
        assertThatThrownBy(() -> Survey.read("mine.csv", header + "\n" + good + "\n" + bad + "\n"))
                .isInstanceOfSatisfying(SheetException.class, e -> {
                    assertThat(e.file()).isEqualTo("mine.csv");
                    assertThat(e.line()).isEqualTo(3);
                    assertThat(e.what())
                            .isEqualTo(
                                    "The " + columns.get(columns.size() - 1) + " is \"tall\"; a number was expected.");
                });
    }

    @Test
    void anUnknownPersonIsNamed() {
        assertThatThrownBy(() -> women.row("1"))
                .isInstanceOf(SheetException.class)
                .hasMessageContaining("There is no person 1; the first is 10037.");
    }

    private static double mean(Survey survey, Measure measure) {
        return survey.rows().stream()
                .mapToDouble(row -> row.asBody().mm(measure))
                .average()
                .orElseThrow();
    }
}
