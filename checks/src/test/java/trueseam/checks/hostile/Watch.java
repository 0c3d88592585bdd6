package trueseam.checks.hostile;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Lets a file be taken in a thread of its own and looks that it comes to an end. What counts is the processor's time of that thread, so that a
 * loaded machine does not count against it; it is a guard against work without end, and no measure of speed.
 */
final class Watch {

    /** The bound that the project promises for a hostile file, s. */
    private static final long MOST_SECONDS = 5;

    private static final long LOOK_MS = 20;

    /** Sentences are short. */
    private static final int LONGEST = 700;

    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

    private Watch() {}

    /** What is wrong with how a file was taken; nothing if it was read or refused in one sentence, in time. */
    static Optional<String> fault(Format format, byte[] content) throws InterruptedException {
        Throwable[] thrown = new Throwable[1];
        Thread thread = new Thread(() -> format.take(content), "take");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((t, e) -> thrown[0] = e);
        thread.start();
        thread.join(LOOK_MS);
        while (thread.isAlive()) {
            long nanos = CPU.getThreadCpuTime(thread.getId());
            if (nanos > TimeUnit.SECONDS.toNanos(MOST_SECONDS)) {
                return Optional.of("it took more than " + MOST_SECONDS + " s of the processor; it was at\n"
                        + trace(thread.getStackTrace()));
            }
            thread.join(LOOK_MS);
        }
        return Optional.ofNullable(thrown[0]).flatMap(Watch::fault);
    }

    private static Optional<String> fault(Throwable thrown) {
        String message = String.valueOf(thrown.getMessage());
        boolean ours = thrown.getClass().getName().startsWith("trueseam.intake.");
        boolean sentence = message.endsWith(".")
                && !message.contains("\n")
                && message.length() <= LONGEST
                && message.contains("x.");
        return ours && sentence
                ? Optional.empty()
                : Optional.of("it ended in " + thrown.getClass().getName() + ": "
                        + message.substring(0, Math.min(message.length(), LONGEST)) + "\n"
                        + trace(thrown.getStackTrace()));
    }

    private static String trace(StackTraceElement[] stack) {
        return Arrays.stream(stack).limit(25).map(e -> "    at " + e).collect(Collectors.joining("\n"));
    }
}
