package trueseam.checks.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import trueseam.checks.cloth.LaySetting.Factor;

/**
 * Few settings in which every two levels of two factors meet at least once: a fault that shows when two things are set together is found by
 * one of them, without all combinations (pairwise testing, general knowledge).
 *
 * @param settings the settings
 * @param apart pairs that no possible setting has together
 */
record PairsOfSettings(List<LaySetting> settings, Set<Pair> apart) {

    /** Tries at a setting with a wanted pair. */
    private static final int TRIES = 400;

    /** Two levels. */
    record Pair(Factor one, int levelOfOne, Factor other, int levelOfOther) {}

    static PairsOfSettings of(Predicate<LaySetting> possible, long seed) {
        Random random = new Random(seed);
        Set<Pair> open = all();
        Set<Pair> apart = new LinkedHashSet<>();
        List<LaySetting> settings = new ArrayList<>();
        while (!open.isEmpty()) {
            Pair wanted = open.iterator().next();
            Optional<LaySetting> best = best(wanted, open, possible, random);
            if (best.isPresent()) {
                settings.add(best.get());
                open.removeAll(pairs(best.get()));
            } else {
                open.remove(wanted);
                apart.add(wanted);
            }
        }
        return new PairsOfSettings(List.copyOf(settings), Set.copyOf(apart));
    }

    private static Optional<LaySetting> best(
            Pair wanted, Set<Pair> open, Predicate<LaySetting> possible, Random random) {
        Optional<LaySetting> best = Optional.empty();
        long most = 0;
        for (int i = 0; i < TRIES; i++) {
            Map<Factor, Integer> levels = new EnumMap<>(Factor.class);
            for (Factor factor : Factor.values()) {
                levels.put(factor, random.nextInt(factor.levels));
            }
            levels.put(wanted.one, wanted.levelOfOne);
            levels.put(wanted.other, wanted.levelOfOther);
            LaySetting setting = new LaySetting(Map.copyOf(levels));
            if (possible.test(setting)) {
                long met = pairs(setting).stream().filter(open::contains).count();
                if (met > most) {
                    most = met;
                    best = Optional.of(setting);
                }
            }
        }
        return best;
    }

    static List<Pair> pairs(LaySetting setting) {
        List<Pair> pairs = new ArrayList<>();
        for (Factor one : Factor.values()) {
            for (Factor other : Factor.values()) {
                if (one.compareTo(other) < 0) {
                    pairs.add(new Pair(one, setting.level(one), other, setting.level(other)));
                }
            }
        }
        return pairs;
    }

    private static Set<Pair> all() {
        Set<Pair> all = new LinkedHashSet<>();
        for (Factor one : Factor.values()) {
            for (Factor other : Factor.values()) {
                for (int a = 0; one.compareTo(other) < 0 && a < one.levels; a++) {
                    for (int b = 0; b < other.levels; b++) {
                        all.add(new Pair(one, a, other, b));
                    }
                }
            }
        }
        return all;
    }
}
