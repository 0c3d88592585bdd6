package trueseam.benchmarks;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a program with all that it started cost of the processors while Java was warm; a busy machine changes that less than times by the
 * clock.
 */
final class CpuTime {

    private final ProcessHandle program;
    private final CompletableFuture<Map<Long, Duration>> before;

    private CpuTime(ProcessHandle program, Pace pace) {
        this.program = program;
        this.before = CompletableFuture.supplyAsync(
                this::now,
                CompletableFuture.delayedExecutor(
                        Math.max(0, pace.warmNs() - System.nanoTime()), TimeUnit.NANOSECONDS, Runnable::run));
    }

    /** Of a process, from the warm seconds on. */
    static CpuTime of(long process, Pace pace) {
        return new CpuTime(ProcessHandle.of(process).orElseThrow(), pace);
    }

    private Map<Long, Duration> now() {
        List<ProcessHandle> all =
                Stream.concat(Stream.of(program), program.descendants()).toList();
        return all.stream()
                .collect(Collectors.toMap(
                        ProcessHandle::pid, one -> one.info().totalCpuDuration().orElse(Duration.ZERO)));
    }

    /** What each of so many saves cost until now, in words. */
    String each(String what, int saves) {
        Map<Long, Duration> begun = before.join();
        double ms = now().entrySet().stream()
                .mapToDouble(entry -> entry.getValue()
                                .minus(begun.getOrDefault(entry.getKey(), Duration.ZERO))
                                .toNanos()
                        / 1e6)
                .sum();
        return String.format(Locale.ROOT, "%s %.1f ms", what, ms / Math.max(1, saves));
    }
}
