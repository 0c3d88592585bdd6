package trueseam.fitting.trial;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.table.ResourceTable;

/**
 * How pins count for an alteration.
 *
 * @param counting how what is taken up becomes its amount
 * @param plus what is done with the cloth that gives it a plus
 * @param minus what is done with the cloth that gives it a minus; nothing where it takes none
 */
public record PinCounting(Counting counting, Handling plus, Optional<Handling> minus) {

    private static final Map<String, PinCounting> BY_NAME = read();

    /**
     * How pins count for an alteration.
     *
     * @param entry the alteration
     * @return its line of the table
     * @throws IllegalStateException if the table has no line for it; a test holds every alteration to having one
     */
    public static PinCounting of(Entry entry) {
        PinCounting own = BY_NAME.get(entry.name());
        if (own == null) {
            throw new IllegalStateException("counting.csv does not say how pins count for " + entry.name());
        }
        return own;
    }

    /**
     * What is done with the cloth for a change.
     *
     * @param remedy the change
     * @return taken in, let out, or moved
     */
    public static Handling handling(Remedy remedy) {
        PinCounting own = of(remedy.entry());
        return remedy.isPlus() ? own.plus : own.minus.orElseThrow();
    }

    private static Map<String, PinCounting> read() {
        Map<String, PinCounting> all = new HashMap<>();
        for (Map<String, String> row : ResourceTable.read(PinCounting.class, "counting.csv")) {
            String name = row.get("alteration");
            Entry entry = Repertoire.named(name)
                    .orElseThrow(() -> new IllegalStateException("counting.csv: there is no alteration " + name));
            Optional<Handling> minus =
                    row.get("minus").equals("-") ? Optional.empty() : Optional.of(Handling.valueOf(row.get("minus")));
            if (minus.isPresent() != entry.isBothWays()) {
                throw new IllegalStateException("counting.csv: the minus of " + name + " is not that of its entry");
            }
            PinCounting own =
                    new PinCounting(Counting.valueOf(row.get("counting")), Handling.valueOf(row.get("plus")), minus);
            if (all.put(name, own) != null) {
                throw new IllegalStateException("counting.csv: " + name + " stands twice");
            }
        }
        return Map.copyOf(all);
    }
}
