package trueseam.intake.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.garment.body.Body;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.SizeTable;
import trueseam.intake.survey.Survey;
import trueseam.intake.survey.SurveyRow;

/** The men's table was computed once, apart from this program; here it is computed again from the survey. */
class MenTableTest {
    private static final SizeTable TABLE = SizeTables.named("men");

    @Test
    void chestRunsFrom34To50InInStepsOfTwo() {
        assertThat(TABLE.rows())
                .extracting(row -> row.size())
                .containsExactly("34", "36", "38", "40", "42", "44", "46", "48", "50");
        TABLE.rows().forEach(row -> assertThat(row.mm().get(Measure.CHEST_GIRTH))
                .isCloseTo(Integer.parseInt(row.size()) * 25.4, within(1e-9)));
    }

    @Test
    void everyColumnIsTheLeastSquaresLineOnTheChest() {
        List<Body> men = Survey.read(Path.of("../data/bodies/ansur2-male.csv")).rows().stream()
                .map(SurveyRow::asBody)
                .toList();
        assertThat(men).hasSize(4082);
        double[] chest = column(men, Measure.CHEST_GIRTH);
        for (Measure measure : TABLE.columns()) {
            double[] line = leastSquares(chest, column(men, measure));
            TABLE.rows().forEach(row -> assertThat(row.mm().get(measure))
                    .as("%s of size %s", measure, row.size())
                    .isCloseTo(line[0] + line[1] * row.mm().get(Measure.CHEST_GIRTH), within(0.1)));
        }
        assertThat(Set.copyOf(TABLE.columns())).isEqualTo(men.get(0).measures());
    }

    @Test
    void standInsAreMarked() {
        Body body = TABLE.body("40");
        assertThat(body.value(Measure.WAIST_GIRTH).orElseThrow().note()).contains("navel");
        assertThat(body.value(Measure.HIP_GIRTH).orElseThrow().note()).isEmpty();
    }

    @Test
    void frontAndBackCrotchStillMakeTheTotal() {
        TABLE.rows().forEach(row -> assertThat(row.asBody().findings()).isEmpty());
    }

    private static double[] column(List<Body> bodies, Measure measure) {
        return bodies.stream().mapToDouble(body -> body.mm(measure)).toArray();
    }

    /** Intercept and slope by the normal equations about the means. */
    private static double[] leastSquares(double[] x, double[] y) {
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - meanX) * (y[i] - meanY);
            xx += (x[i] - meanX) * (x[i] - meanX);
        }
        return new double[] {meanY - xy / xx * meanX, xy / xx};
    }
}
