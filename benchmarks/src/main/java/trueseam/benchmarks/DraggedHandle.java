package trueseam.benchmarks;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trueseam.fitting.handle.Drag;
import trueseam.fitting.handle.Dragged;
import trueseam.fitting.handle.Handles;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.HeldFit;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.size.SizeRow;
import trueseam.output.picture.PiecePicture;

/**
 * How long does one picture of a drag take: work the whole fit for one more amount, prove it, find the handles again and write the path
 * text of every piece? The design allows 4 ms on the server.
 *
 * <p>The body is the made-up Rosalind in misses' size 14, with all that her fit asks for. The hand goes to and fro by 50 mm, so that no
 * two pictures in a row are of one amount. Bodice, dress and skirt together are what the worktable shows of one person; read each as
 * milliseconds for a picture of that garment. The cutting line is not part of it: it is drawn when the handle is put down.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class DraggedHandle {

    /** How far to and fro, mm. */
    private static final double SWAY_MM = 50;

    private static final double PICTURES_TO_AND_FRO = 97;

    /** Garment and measure. */
    @Param({
        "BODICE BUST_GIRTH",
        "BODICE UPPER_ARM_GIRTH",
        "DRESS HIP_GIRTH",
        "SKIRT HIP_GIRTH",
        "TROUSERS HIP_GIRTH",
        "TROUSERS BACK_CROTCH_LENGTH"
    })
    private String dragged = "";

    private Drag drag;
    private int picture;

    /** For the benchmark's own runner. */
    public DraggedHandle() {}

    /** Takes hold, and makes sure that every proof of the fit holds. */
    @Setup
    public void takeHold() {
        String[] words = dragged.split(" ");
        Pattern pattern = Garments.misses(GarmentKind.valueOf(words[0]));
        Optional<SizeRow> size = Garments.missesRow();
        HeldFit held = HeldFit.of(pattern, Garments.rosalind(), size, Garments.CHOICES);
        FitResult fit = held.fit();
        if (!fit.report().holds()) {
            throw new IllegalStateException(
                    "The scene is no good, a proof fails: " + fit.report().failures());
        }
        drag = Drag.of(held, Measure.valueOf(words[1]));
    }

    /**
     * One picture.
     *
     * @return how long its text is
     */
    @Benchmark
    public int picture() {
        double mm = drag.startMm() + SWAY_MM * Math.sin(2 * Math.PI * picture++ / PICTURES_TO_AND_FRO);
        if (drag.to(mm) instanceof Dragged.Moved moved) {
            int signs = Handles.of(moved.fit()).size();
            for (Piece piece : moved.fit().worked().altered().pieces()) {
                PiecePicture one = PiecePicture.of(piece);
                signs += one.stitching().length()
                        + one.darts().length()
                        + one.notches().length();
            }
            return signs;
        }
        throw new IllegalStateException("The scene is no good: the pattern refuses " + mm + " mm.");
    }
}
