package trueseam.output.handout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import trueseam.fitting.plan.FitResult;
import trueseam.output.chart.ChartSheet;
import trueseam.output.chart.FittingChart;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.steps.PracticeSheet;
import trueseam.output.steps.StepSheet;

/** The handout for a class as one PDF. */
public final class ClassHandout {

    /** A class larger than this is several classes. */
    public static final int MOST_STUDENTS = 60;

    private ClassHandout() {}

    /**
     * Puts a handout together: the teacher's fitting chart, step sheet and worked practice sheets, then the practice sheets of each
     * student.
     *
     * @param chart the worked example
     * @param paper what it is printed on
     * @param students how many, 1 to {@link #MOST_STUDENTS}
     * @return a PDF
     * @throws trueseam.output.steps.PracticeTooWideException if a piece does not fit onto the paper in quarter scale
     */
    public static byte[] pdf(FittingChart chart, SheetPaper paper, int students) {
        if (!(1 <= students && students <= MOST_STUDENTS)) {
            throw new IllegalArgumentException("students " + students + ", and not 1 to " + MOST_STUDENTS);
        }
        FitResult fit = chart.fit();
        PDFMergerUtility together = new PDFMergerUtility();
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
        together.setDestinationStream(out);
        add(together, ChartSheet.pdf(chart, paper));
        add(together, StepSheet.pdf(fit, paper));
        add(together, PracticeSheet.forTeacher(fit, paper));
        for (int student = 1; student <= students; student++) {
            add(together, PracticeSheet.forStudent(fit, paper, student, students));
        }
        try {
            together.mergeDocuments(IOUtils.createMemoryOnlyStreamCache());
        } catch (IOException e) {
            throw new UncheckedIOException("The handout cannot be put together.", e);
        }
        return out.toByteArray();
    }

    private static void add(PDFMergerUtility together, byte[] pdf) {
        together.addSource(new RandomAccessReadBuffer(pdf));
    }
}
