package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The outlines that are likely one piece in several sizes.
 *
 * @param rings all, the smallest first
 * @param sizes each size's, the smallest size first: one line, or cutting and stitching line where every one has its partner
 */
record Kin(List<Ring> rings, List<List<Ring>> sizes) {

    /** The largest of a nest has more than the smallest by this at least; two tracings of one outline differ by less. */
    private static final double GROWS = 1.005;

    private static Kin of(List<Ring> rings) {
        return new Kin(
                rings,
                paired(rings).orElseGet(() -> rings.stream().map(List::of).toList()));
    }

    static List<Kin> among(List<Ring> rings) {
        int[] root = new int[rings.size()];
        for (int i = 0; i < root.length; i++) {
            root[i] = i;
        }
        for (int i = 0; i < root.length; i++) {
            for (int j = i + 1; j < root.length; j++) {
                if (root(root, i) != root(root, j) && rings.get(i).isKin(rings.get(j))) {
                    root[root(root, j)] = root(root, i);
                }
            }
        }
        Map<Integer, List<Ring>> together = new LinkedHashMap<>();
        for (int i = 0; i < root.length; i++) {
            together.computeIfAbsent(root(root, i), k -> new ArrayList<>()).add(rings.get(i));
        }
        return together.values().stream()
                .map(all -> of(all.stream()
                        .sorted(Comparator.comparingDouble(Ring::areaMm2))
                        .toList()))
                .toList();
    }

    private static int root(int[] root, int i) {
        int at = i;
        while (root[at] != at) {
            at = root[at];
        }
        return at;
    }

    /** Cutting and stitching lines two by two; nothing where any line is left without its partner. */
    private static java.util.Optional<List<List<Ring>>> paired(List<Ring> rings) {
        if (rings.size() % 2 != 0) {
            return java.util.Optional.empty();
        }
        List<Ring> left = new ArrayList<>(rings);
        List<List<Ring>> pairs = new ArrayList<>();
        while (!left.isEmpty()) {
            Ring inner = left.remove(0);
            var outer = left.stream().filter(inner::isAllowanceOf).findFirst();
            if (outer.isEmpty()) {
                return java.util.Optional.empty();
            }
            left.remove(outer.get());
            pairs.add(List.of(inner, outer.get()));
        }
        return java.util.Optional.of(pairs);
    }

    /** Whether each size has a style of its own, or two, that no other size has. */
    boolean isToldByStyle() {
        Set<String> seen = new TreeSet<>();
        for (List<Ring> size : sizes) {
            Set<String> styles = new TreeSet<>(size.stream().map(Ring::style).toList());
            if (styles.stream().anyMatch(seen::contains)) {
                return false;
            }
            seen.addAll(styles);
        }
        return true;
    }

    /** Those that differ: a piece that is the same in every size, or filled and drawn round, tells nothing. */
    static Collection<Kin> several(Collection<Kin> all) {
        return all.stream()
                .filter(k -> k.sizes.size() > 1
                        && k.rings.get(k.rings.size() - 1).areaMm2()
                                > GROWS * k.rings.get(0).areaMm2())
                .toList();
    }
}
