package trueseam.checks.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Takes hostile files one after the other, as a program of its own with little memory: those made to do harm, those damaged by fixed seeds, and
 * then, until the time is up, those damaged by fresh seeds. Prints a line for each fault with what makes the file again, and keeps the file.
 * <pre>{@code
 *     java -Xmx512m -cp ... trueseam.checks.hostile.HostileRun FOLDER SECONDS FIRST_SEED [BOMB | FORMAT SEED]
 * }</pre>
 */
final class HostileRun {

    private static final int FIXED_SEEDS = 200;

    /** After so many faults the rest would not help. */
    private static final int MOST_FAULTS = 12;

    private final Path folder;
    private final Map<Format, byte[]> whole = new TreeMap<>();
    private int taken;
    private int faults;

    private HostileRun(Path folder) {
        this.folder = folder;
        for (Format format : Format.values()) {
            whole.put(format, format.whole());
        }
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        HostileRun run = new HostileRun(Files.createDirectories(Path.of(args[0])));
        if (args.length > 4) {
            Format format = Format.valueOf(args[3]);
            run.take(format, "seed " + args[4], Mutations.of(run.whole.get(format), Long.parseLong(args[4])));
        } else if (args.length > 3) {
            Bomb bomb = Bomb.valueOf(args[3]);
            run.take(bomb.format(), bomb.name(), bomb.content());
        } else {
            run.all(Long.parseLong(args[1]), Long.parseLong(args[2]));
        }
        System.out.println(run.taken + " files taken, " + run.faults + " faults.");
        System.exit(run.faults == 0 ? 0 : 1);
    }

    private void all(long seconds, long firstSeed) throws IOException, InterruptedException {
        for (Format format : Format.values()) {
            take(format, "whole", whole.get(format));
        }
        for (Bomb bomb : Bomb.values()) {
            take(bomb.format(), bomb.name(), bomb.content());
        }
        for (long seed = 0; seed < FIXED_SEEDS; seed++) {
            each(seed);
        }
        System.out.println(taken + " fixed files taken; fresh seeds from " + firstSeed);
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        for (long seed = firstSeed; System.nanoTime() < end; seed++) {
            each(seed);
        }
    }

    private void each(long seed) throws IOException, InterruptedException {
        for (Map.Entry<Format, byte[]> format : whole.entrySet()) {
            take(format.getKey(), "seed " + seed, Mutations.of(format.getValue(), seed));
        }
    }

    private void take(Format format, String made, byte[] content) throws IOException, InterruptedException {
        taken++;
        Optional<String> fault = Watch.fault(format, content);
        if (fault.isPresent()) {
            faults++;
            Path kept = folder.resolve(made.replace(' ', '-') + "-" + format.file());
            Files.write(kept, content);
            System.out.println(format + ", " + made + ": " + fault.get() + "\n  the file is kept as " + kept);
            if (faults >= MOST_FAULTS) {
                System.out.println("More than " + MOST_FAULTS + " faults; the rest was left.");
                System.exit(1);
            }
        }
    }
}
