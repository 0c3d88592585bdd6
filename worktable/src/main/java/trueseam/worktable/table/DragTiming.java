package trueseam.worktable.table;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;

/**
 * What one picture of a drag took, for the head {@code Server-Timing} of its answer: the fit with its proofs, the text, both, and the time
 * of the processor alone, whatever else the machine does. Used by one thread, for one picture.
 */
final class DragTiming {

    private static final double NANOS = 1e6;

    private final ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    private final long start = System.nanoTime();
    private final long cpu = thread.getCurrentThreadCpuTime();
    private long fitted = start;

    private DragTiming() {}

    static DragTiming begun() {
        return new DragTiming();
    }

    void fitted() {
        fitted = System.nanoTime();
    }

    String written() {
        long now = System.nanoTime();
        return String.format(
                Locale.ROOT,
                "fit;dur=%.3f, text;dur=%.3f, total;dur=%.3f, cpu;dur=%.3f",
                (fitted - start) / NANOS,
                (now - fitted) / NANOS,
                (now - start) / NANOS,
                (thread.getCurrentThreadCpuTime() - cpu) / NANOS);
    }
}
