package trueseam.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.sizing.SizeChoice;
import trueseam.garment.body.Body;
import trueseam.garment.body.Origin;
import trueseam.garment.body.Reading;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeTable;
import trueseam.intake.size.SizeTables;
import trueseam.output.chart.FittingChart;

/** Whole fits for tests: an invented person, a drafted bodice of misses' size 14. */
public final class Fits {

    private static final double INCH = 25.4;

    private Fits() {}

    /** Larger in bust, waist and upper arm, longer in waist and arm; two measures not taped. */
    public static Body person() {
        return Body.named("Invented person")
                .with(Reading.taped(Measure.BUST_GIRTH, 38 * INCH))
                .with(Reading.taped(Measure.UPPER_CHEST_GIRTH, 35.5 * INCH))
                .with(Reading.taped(Measure.WAIST_GIRTH, 30.5 * INCH))
                .with(Reading.taped(Measure.BACK_WAIST_LENGTH, 17.25 * INCH))
                .with(Reading.taped(Measure.SHOULDER_LENGTH, 4.875 * INCH))
                .with(Reading.taped(Measure.UPPER_ARM_GIRTH, 12.625 * INCH))
                .with(Reading.taped(Measure.ARM_LENGTH, 23.5 * INCH))
                .with(Reading.of(Measure.ELBOW_GIRTH, 11.375 * INCH, Origin.ESTIMATED, "from the upper arm girth"))
                .with(Reading.of(Measure.WRIST_GIRTH, 6.5 * INCH, Origin.STAND_IN, "taken below the bone"));
    }

    public static Pattern pattern() {
        return Shells.bodice(DraftFigure.of(table(), "14"), DraftEase.fitted());
    }

    private static SizeTable table() {
        return SizeTables.named("misses");
    }

    public static FitResult fit(LengthFormat show) {
        return of(person(), show);
    }

    /** The same pattern for another body. */
    public static FitResult of(Body body, LengthFormat show) {
        return Fitting.fit(pattern(), body, Optional.of(table().row("14")), FitChoices.usual(show));
    }

    /** Trousers with a longer crotch, for one who is larger at waist and hip. */
    public static FitResult trousers(LengthFormat show) {
        Body body = person().with(Reading.taped(Measure.HIP_GIRTH, 39.75 * INCH))
                .with(Reading.taped(Measure.FRONT_CROTCH_LENGTH, 12 * INCH))
                .with(Reading.taped(Measure.BACK_CROTCH_LENGTH, 15.5 * INCH))
                .with(Reading.taped(Measure.INSIDE_LEG_LENGTH, 30.5 * INCH));
        Pattern trousers = Shells.trousers(DraftFigure.of(table(), "14"), DraftEase.fitted());
        return Fitting.fit(trousers, body, Optional.of(table().row("14")), FitChoices.usual(show));
    }

    /** The chart with the reason of the size and the other way of the sleeve. */
    public static FittingChart chart(FitResult fit) {
        FitResult other = Fitting.fit(
                fit.worked().original(),
                fit.body(),
                fit.size(),
                fit.choices()
                        .withSleeve(CapChoice.KEEP_CAP_HEIGHT, fit.choices().reach()));
        SizeChoice size =
                SizeChoice.of(table(), fit.body(), fit.kind(), fit.choices().show());
        return FittingChart.of(fit, Optional.of(size), List.of(other));
    }

    /** The same fit on drafted pieces that only show the steps. */
    public static FitResult onPaper(LengthFormat show) {
        return Fitting.onPaper(pattern(), person(), Optional.of(table().row("14")), Map.of(), FitChoices.usual(show));
    }

    /** The same fit with one proof that does not hold. */
    public static FitResult failing(FitResult fit) {
        List<Proof> proofs = new ArrayList<>(fit.report().proofs());
        proofs.add(new Proof(Proof.Kind.WALK, "side seam", 2.5, 0.1, "mm", "made to fail for a test"));
        return new FitResult(
                fit.body(),
                fit.kind(),
                fit.size(),
                fit.choices(),
                fit.needs(),
                fit.changes(),
                fit.amounts(),
                fit.worked(),
                new FitReport(proofs),
                fit.findings(),
                fit.schematic());
    }
}
