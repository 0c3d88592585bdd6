package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.naming.Proposal.NamedEdge;
import trueseam.intake.naming.SaidStretch;
import trueseam.intake.said.EdgeSaid;

/**
 * The edges of a piece, and those among them that somebody named.
 *
 * @param edges the edges in order, closed
 * @param said the names of those that were said
 */
record NamedChain(List<NamedEdge> edges, Set<String> said) {

    private static final double SAME_MM = 0.5;

    private record Label(String name, EdgeRole role, double confidence, boolean said) {}

    /**
     * Names stretches of a chain as was said: corners inside such a stretch go, its ends become corners, and what is left of a neighbour
     * keeps its name.
     *
     * @param edges the chain as proposed
     * @param said what was said, its points where the chain lies
     * @param withinMm how near its ends must be to the chain
     * @param misfit hears of what does not fit
     */
    static NamedChain of(List<NamedEdge> edges, List<EdgeSaid> said, double withinMm, Consumer<EdgeSaid> misfit) {
        if (said.isEmpty()) {
            return new NamedChain(edges, Set.of());
        }
        List<Segment> all = new ArrayList<>();
        TreeMap<Double, Label> labels = new TreeMap<>();
        double along = 0;
        for (NamedEdge edge : edges) {
            labels.put(along, new Label(edge.name(), edge.role(), edge.confidence(), false));
            along += edge.path().length();
            all.addAll(edge.path().segments());
        }
        Path line = Path.of(all);
        for (EdgeSaid one : said) {
            Optional<SaidStretch> stretch = SaidStretch.between(
                    one.name(),
                    one.role(),
                    line,
                    List.copyOf(labels.keySet()),
                    one.from(),
                    one.to(),
                    one.longMm(),
                    withinMm);
            if (stretch.isEmpty()) {
                misfit.accept(one);
            } else {
                label(labels, stretch.get(), line.length());
            }
        }
        return labels.size() < 2 ? new NamedChain(edges, Set.of()) : cut(line, labels);
    }

    /** The same said of a piece that lies elsewhere. */
    static List<EdgeSaid> moved(List<EdgeSaid> said, UnaryOperator<Point> how) {
        return said.stream()
                .map(e -> new EdgeSaid(e.name(), e.role(), how.apply(e.from()), how.apply(e.to()), e.longMm()))
                .toList();
    }

    private static void label(TreeMap<Double, Label> labels, SaidStretch stretch, double around) {
        double to = corner(labels, stretch.toMm(), around);
        double from = corner(labels, stretch.fromMm(), around);
        double length = ahead(from, to, around);
        labels.keySet().removeIf(k -> {
            double into = ahead(from, k, around);
            return 0 < into && into < length;
        });
        labels.put(from, new Label(stretch.name(), stretch.role(), 1, true));
    }

    /** The corner at a place; made there, with the name that the place has, if there is none. */
    private static double corner(TreeMap<Double, Label> labels, double at, double around) {
        for (double known : labels.keySet()) {
            double apart = ahead(known, at, around);
            if (Math.min(apart, around - apart) < SAME_MM) {
                return known;
            }
        }
        Map.Entry<Double, Label> before =
                Optional.ofNullable(labels.floorEntry(at)).orElseGet(labels::lastEntry);
        labels.put(at, before.getValue());
        return at;
    }

    private static double ahead(double from, double to, double around) {
        return ((to - from) % around + around) % around;
    }

    private static NamedChain cut(Path line, TreeMap<Double, Label> labels) {
        List<Double> at = List.copyOf(labels.keySet());
        Set<String> taken = new HashSet<>();
        Map<Double, String> names = new TreeMap<>();
        for (boolean said : new boolean[] {true, false}) {
            for (double from : at) {
                if (labels.get(from).said() == said) {
                    names.put(from, free(labels.get(from).name(), taken));
                }
            }
        }
        List<NamedEdge> edges = new ArrayList<>();
        Set<String> said = new HashSet<>();
        for (int i = 0; i < at.size(); i++) {
            double from = at.get(i);
            Label label = labels.get(from);
            edges.add(new NamedEdge(
                    names.get(from), label.role(), part(line, from, at.get((i + 1) % at.size())), label.confidence()));
            if (label.said()) {
                said.add(names.get(from));
            }
        }
        return new NamedChain(edges, said);
    }

    private static Path part(Path line, double from, double to) {
        if (from < to) {
            return line.part(from, to);
        }
        Path rest = line.part(from, line.length());
        return to <= 1e-9 ? rest : rest.then(line.part(0, to));
    }

    private static String free(String name, Set<String> taken) {
        String one = name;
        for (int i = 2; !taken.add(one); i++) {
            one = name + " " + i;
        }
        return one;
    }
}
