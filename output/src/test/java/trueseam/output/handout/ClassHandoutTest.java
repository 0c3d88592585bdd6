package trueseam.output.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.length.LengthFormat;
import trueseam.output.Fits;
import trueseam.output.PdfText;
import trueseam.output.chart.ChartSheet;
import trueseam.output.chart.FittingChart;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.steps.PracticeSheet;
import trueseam.output.steps.StepSheet;

/** The handout for a class in one file. */
class ClassHandoutTest {

    private static final FitResult FIT = Fits.fit(LengthFormat.inches(8));
    private static final FittingChart CHART = FittingChart.of(FIT, Optional.empty(), List.of());

    @Test
    void theTeachersExampleComesFirstAndThenASetForEveryStudent() {
        byte[] pdf = ClassHandout.pdf(CHART, SheetPaper.A4, 3);
        int practice = PdfText.pages(PracticeSheet.forTeacher(FIT, SheetPaper.A4));
        assertThat(PdfText.pages(pdf))
                .isEqualTo(PdfText.pages(ChartSheet.pdf(CHART, SheetPaper.A4))
                        + PdfText.pages(StepSheet.pdf(FIT, SheetPaper.A4))
                        + 4 * practice);
        assertThat(PdfText.of(pdf))
                .containsSubsequence(
                        "Fitting chart",
                        "Step sheet",
                        "the teacher's copy",
                        "student 1 of 3",
                        "student 2 of 3",
                        "student 3 of 3");
    }

    @Test
    void aClassOfNobodyOrOfHundredsIsRefused() {
        assertThatThrownBy(() -> ClassHandout.pdf(CHART, SheetPaper.A4, 0)).hasMessageContaining("1 to 60");
        assertThatThrownBy(() -> ClassHandout.pdf(CHART, SheetPaper.A4, 61)).hasMessageContaining("1 to 60");
    }
}
