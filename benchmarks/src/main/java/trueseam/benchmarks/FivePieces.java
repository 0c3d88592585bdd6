package trueseam.benchmarks;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.SleeveGirth;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.proof.FitReport;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.size.SizeRow;

/**
 * How long does it take to alter, true, walk and prove a garment of five pieces, on one thread, once warm? The design allows 1 ms.
 *
 * <p>The five pieces are a fitted bodice (front, back, sleeve) and a straight skirt (front, back) in misses' size 14, two patterns of
 * the program. {@link #alteredAndProven} carries out given amounts once: bodice length, bust, waist, upper arm and sleeve length;
 * waist, hip and skirt length; then trues, walks and proves. {@link #fitted} is all of it for one body: chart, decisions, the same
 * work over again until every measure is at its target, proofs. Read the numbers as microseconds for all five pieces together.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class FivePieces {

    private static final Set<PieceKind> BODICE = Set.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK);
    private static final Set<PieceKind> SKIRT = Set.of(PieceKind.SKIRT_FRONT, PieceKind.SKIRT_BACK);
    private static final Set<PieceKind> SLEEVE = Set.of(PieceKind.SLEEVE);

    /** What is done to the bodice, mm. */
    private static final List<Alteration> BODICE_WORK = List.of(
            new LengthAtLine("Bodice length", LevelName.BODICE_LENGTH, BODICE, 16),
            new LengthAtLine("Sleeve length", LevelName.ABOVE_ELBOW, SLEEVE, 10),
            new LengthAtLine("Sleeve length", LevelName.BELOW_ELBOW, SLEEVE, 12),
            new SideGirth(20, 38, 0, HemChoice.CARRIED),
            new SleeveGirth(16, CapChoice.KEEP_CAP_SEAM, SleeveReach.UPPER_ARM));

    /** What is done to the skirt, mm. */
    private static final List<Alteration> SKIRT_WORK = List.of(
            new LengthAtLine("Length below the hip", LevelName.SKIRT_LENGTH, SKIRT, -20),
            new SideGirth(0, 38, 30, HemChoice.CARRIED));

    private Pattern bodice;
    private Pattern skirt;
    private Map<Measure, Double> bodiceTargets;
    private Map<Measure, Double> skirtTargets;
    private Body body;
    private Optional<SizeRow> size;

    /** For the benchmark's own runner. */
    public FivePieces() {}

    /** Drafts the five pieces and makes sure that what is timed is right: every proof holds. */
    @Setup
    public void draft() {
        bodice = Garments.misses(GarmentKind.BODICE);
        skirt = Garments.misses(GarmentKind.SKIRT);
        bodiceTargets = measured(
                bodice,
                BODICE_WORK,
                List.of(
                        Measure.BUST_GIRTH,
                        Measure.WAIST_GIRTH,
                        Measure.BACK_WAIST_LENGTH,
                        Measure.UPPER_ARM_GIRTH,
                        Measure.ARM_LENGTH));
        skirtTargets =
                measured(skirt, SKIRT_WORK, List.of(Measure.WAIST_GIRTH, Measure.HIP_GIRTH, Measure.SKIRT_LENGTH));
        body = Garments.rosalind();
        size = Garments.missesRow();
        for (FitReport report : alteredAndProven()) {
            checkHolds(report);
        }
        for (FitResult fit : fitted()) {
            checkHolds(fit.report());
        }
    }

    private static Map<Measure, Double> measured(Pattern pattern, List<Alteration> work, List<Measure> measures) {
        Pattern altered = WorkedPattern.altered(pattern, work).altered();
        Map<Measure, Double> mm = new EnumMap<>(Measure.class);
        for (Measure measure : measures) {
            mm.put(measure, FlatPattern.measure(altered, measure).orElseThrow().mm());
        }
        return mm;
    }

    private static void checkHolds(FitReport report) {
        if (!report.holds()) {
            throw new IllegalStateException("The scene is no good, a proof fails: " + report.failures());
        }
    }

    /**
     * Given amounts, once.
     *
     * @return the proofs of bodice and skirt
     */
    @Benchmark
    public List<FitReport> alteredAndProven() {
        return List.of(
                Prover.prove(WorkedPattern.altered(bodice, BODICE_WORK), bodiceTargets, false),
                Prover.prove(WorkedPattern.altered(skirt, SKIRT_WORK), skirtTargets, false));
    }

    /**
     * The whole fit of one body.
     *
     * @return both fits
     */
    @Benchmark
    public List<FitResult> fitted() {
        return List.of(
                Fitting.fit(bodice, body, size, Garments.CHOICES), Fitting.fit(skirt, body, size, Garments.CHOICES));
    }
}
