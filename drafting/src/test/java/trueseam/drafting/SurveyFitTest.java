package trueseam.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.body.Population;
import trueseam.garment.measure.Measure;
import trueseam.intake.survey.SurveyRow;

/** The estimates that say they are lines through the surveyed people are: fitted again here with Hipparchus. */
class SurveyFitTest {

    private static final Map<Measure, String> COLUMNS = Map.of(
            Measure.BUST_GIRTH, "chestcircumference",
            Measure.HIP_GIRTH, "buttockcircumference",
            Measure.STATURE, "stature",
            Measure.BACK_WAIST_LENGTH, "waistbacklength");

    static Stream<Estimate> surveyed() {
        return Estimate.all().stream().filter(line -> !line.survey().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("surveyed")
    void isTheLeastSquaresLineOfAllPeopleOfItsSex(Estimate line) {
        List<SurveyRow> people =
                SurveyPeople.of(line.build().orElseThrow() == Build.MEN ? Population.MEN : Population.WOMEN);
        List<Measure> from = new ArrayList<>(line.factors().keySet());
        double[][] x = new double[people.size()][from.size() + 1];
        double[] y = new double[people.size()];
        for (int i = 0; i < x.length; i++) {
            x[i][0] = 1;
            for (int k = 0; k < from.size(); k++) {
                x[i][k + 1] = people.get(i).column(COLUMNS.get(from.get(k)));
            }
            y[i] = value(people.get(i), line.survey());
        }
        Array2DRowRealMatrix known = new Array2DRowRealMatrix(x, false);
        RealVector fit = new QRDecomposition(known).getSolver().solve(new ArrayRealVector(y));
        double sum = known.operate(fit).subtract(new ArrayRealVector(y)).getNorm();

        // The resource keeps six figures.
        assertThat(line.constantMm()).isCloseTo(fit.getEntry(0), within(1e-5 * Math.abs(fit.getEntry(0))));
        for (int k = 0; k < from.size(); k++) {
            double factor = fit.getEntry(k + 1);
            assertThat(line.factors().get(from.get(k))).isCloseTo(factor, within(1e-5 * Math.abs(factor)));
        }
        assertThat(line.people()).isEqualTo(people.size());
        assertThat(line.sdMm()).isCloseTo(sum / Math.sqrt(people.size() - from.size() - 1.0), within(0.06));
    }

    private static double value(SurveyRow person, String columns) {
        String[] names = columns.split("-");
        double mm = person.column(names[0]);
        for (int i = 1; i < names.length; i++) {
            mm -= person.column(names[i]);
        }
        return mm;
    }

    @Test
    void mostEstimatesComeFromTheSurvey() {
        assertThat(surveyed()).hasSizeGreaterThan(35);
        assertThat(Estimate.all()).filteredOn(line -> line.survey().isEmpty()).allMatch(line -> !line.note()
                .isEmpty());
    }
}
