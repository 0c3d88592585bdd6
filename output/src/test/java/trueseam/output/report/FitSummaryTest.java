package trueseam.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.length.LengthFormat;
import trueseam.output.Fits;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;

class FitSummaryTest {

    @Test
    void columnsAreAlignedAndInTheUsersUnit() {
        FittingChart chart = Fits.chart(Fits.fit(LengthFormat.centimetres()));
        List<String> lines = FitSummary.text(chart).lines().toList();
        String head = lines.get(2);
        assertThat(head).startsWith("measure").endsWith("after");
        for (int i = 0; i < chart.lines().size(); i++) {
            String line = lines.get(3 + i);
            ChartLine of = chart.lines().get(i);
            assertThat(line).startsWith(of.label()).hasSameSizeAs(head);
            assertThat(line.substring(head.indexOf("decision"))).startsWith(of.verdict());
            assertThat(line).contains(" cm").doesNotContain(" in ");
        }
    }

    @Test
    void theProofLineStandsLastAndAFailureIsNamed() {
        FittingChart chart = Fits.chart(Fits.fit(LengthFormat.inches(8)));
        assertThat(FitSummary.text(chart).strip()).endsWith("proofs hold, measured on the finished outlines.");
        String failing = FitSummary.text(FittingChart.of(Fits.failing(chart.fit()), Optional.empty(), List.of()));
        assertThat(failing).contains("FAILED: 1 of ").contains("Side seam: seams still walk is off by 2.500 mm");
    }
}
