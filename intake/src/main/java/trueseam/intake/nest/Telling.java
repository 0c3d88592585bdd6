package trueseam.intake.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import trueseam.garment.finding.Finding;
import trueseam.geometry.Path;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.Stroke;

/** Finds out what tells the sizes of one drawing apart. One drawing, one thread. */
final class Telling {

    /** Layers of these names hold nothing that is sewn. */
    private static final Pattern GUIDES = Pattern.compile(
            "(?i)(guides?|guide ?lines?|construction|frames?|borders?|grid|page frames?|tiles?|legend|watermark)");

    private static final double BY_LAYER_NAME = 0.98;
    private static final double NAMED = 0.95;
    private static final double NAMED_NEAR = 0.8;
    private static final double IN_ORDER = 0.6;

    private final Drawing drawing;
    private final Legend legend;
    private final List<Stroke> strokes;
    private final List<Finding> findings = new ArrayList<>();

    Telling(Drawing drawing) {
        this.drawing = drawing;
        this.legend = new Legend(drawing);
        this.strokes = drawing.strokes().stream().filter(s -> !isGuide(s)).toList();
    }

    private static boolean isGuide(Stroke stroke) {
        return Arrays.stream(stroke.layer().split("/"))
                .anyMatch(part -> GUIDES.matcher(part.strip()).matches());
    }

    Nest nest() {
        if (!drawing.apparel().pieces().isEmpty()) {
            return byBlocks();
        }
        Optional<Nest> byName = byLayerName();
        if (byName.isPresent()) {
            return byName.get();
        }
        Style best = null;
        Sorted sorted = null;
        long apart = 0;
        for (Style style : Style.values()) {
            Sorted candidate = Sorted.by(strokes, s -> "~" + style.of(s));
            long told = candidate.toldApart();
            boolean most =
                    2 * told >= candidate.several().size() && candidate.lines().size() > 1;
            if (most && told > apart) {
                apart = told;
                best = style;
                sorted = candidate;
            }
        }
        if (best != null) {
            Optional<Nest> byStyle = byStyle(best, sorted);
            if (byStyle.isPresent()) {
                return byStyle.get();
            }
        }
        return byNesting().orElseGet(this::oneSize);
    }

    private Nest oneSize() {
        return new Nest(drawing, ToldBy.NOTHING, List.of(), List.of(), List.of());
    }

    /** What the file says goes before what its lines look like: pieces of all sizes may well be drawn at one place. */
    private Nest byBlocks() {
        List<String> names = drawing.apparel().sizes().stream()
                .filter(s -> !s.isBlank())
                .sorted(Comparator.comparingDouble(
                        s -> SizeWord.of(s).map(SizeWord::rank).orElse(0.0)))
                .toList();
        if (names.size() < 2) {
            return oneSize();
        }
        List<SizeLines> sizes = names.stream()
                .map(name -> new SizeLines(
                        new NestSize(name, "pieces that the file calls size " + name, BY_LAYER_NAME),
                        List.of(),
                        List.of(),
                        Set.of()))
                .toList();
        return new Nest(drawing, ToldBy.BLOCKS, sizes, List.of(), List.of());
    }

    // --- layers that are called by their size

    private static Optional<SizeWord> sizeOf(Stroke stroke) {
        List<String> names = new ArrayList<>(Arrays.asList(stroke.layer().split("/")));
        names.add(stroke.label());
        return names.stream().flatMap(n -> SizeWord.of(n).stream()).findFirst();
    }

    private Optional<Nest> byLayerName() {
        Map<String, SizeWord> words = new LinkedHashMap<>();
        for (Stroke stroke : strokes) {
            sizeOf(stroke).ifPresent(w -> words.putIfAbsent(w.label(), w));
        }
        if (words.size() < 2) {
            return Optional.empty();
        }
        Sorted sorted = Sorted.by(strokes, s -> sizeOf(s).map(SizeWord::label).orElse(""));
        boolean over = sorted.several().stream()
                .anyMatch(k -> k.rings().stream().map(Ring::style).distinct().count() > 1);
        if (words.values().stream().anyMatch(SizeWord::bare) && !over) {
            return Optional.empty();
        }
        Map<String, Double> areas = meanAreas(sorted);
        boolean allOver = areas.keySet().containsAll(words.keySet());
        List<SizeWord> order = words.values().stream()
                .sorted(Comparator.comparingDouble(w -> allOver ? areas.get(w.label()) : w.rank()))
                .toList();
        List<SizeLines> sizes = new ArrayList<>();
        for (SizeWord word : order) {
            List<Stroke> own = sorted.lines().get(word.label());
            Set<String> layers = new HashSet<>();
            own.stream()
                    .map(Stroke::layer)
                    .filter(l -> Arrays.stream(l.split("/"))
                            .anyMatch(p -> SizeWord.of(p).isPresent()))
                    .forEach(layers::add);
            String evidence = layers.isEmpty()
                    ? "lines named by their size"
                    : "layer \"" + layers.stream().sorted().findFirst().orElseThrow() + "\"";
            sizes.add(new SizeLines(
                    new NestSize(word.label(), evidence, BY_LAYER_NAME),
                    own,
                    rings(sorted, Set.of(word.label())),
                    layers));
        }
        inOrder(order);
        return Optional.of(
                new Nest(drawing, ToldBy.LAYERS, sizes, sorted.lines().getOrDefault("", List.of()), findings));
    }

    /** How large the outlines of a style are beside those of the same pieces in other styles. */
    private static Map<String, Double> meanAreas(Sorted sorted) {
        Map<String, List<Double>> all = new HashMap<>();
        for (Kin kin : sorted.several()) {
            double mean = kin.rings().stream()
                    .mapToDouble(r -> Math.log(r.areaMm2()))
                    .average()
                    .orElse(0);
            kin.rings().forEach(r -> all.computeIfAbsent(r.style(), k -> new ArrayList<>())
                    .add(Math.log(r.areaMm2()) - mean));
        }
        Map<String, Double> means = new HashMap<>();
        all.forEach((style, areas) ->
                means.put(style, areas.stream().mapToDouble(v -> v).average().orElse(0)));
        return means;
    }

    private static List<Ring> rings(Sorted sorted, Set<String> styles) {
        return sorted.kin().stream()
                .flatMap(k -> k.rings().stream())
                .filter(r -> styles.contains(r.style()))
                .toList();
    }

    private void inOrder(List<SizeWord> smallestFirst) {
        for (int i = 1; i < smallestFirst.size(); i++) {
            SizeWord less = smallestFirst.get(i - 1);
            SizeWord more = smallestFirst.get(i);
            if (less.rank() > more.rank()) {
                findings.add(Finding.warning(
                        "sizes",
                        "Size " + less.label() + " is drawn smaller than size " + more.label()
                                + "; see whether the names are the right way round."));
            }
        }
    }

    // --- colours, dashes, widths, layers of other names

    private Optional<Nest> byStyle(Style style, Sorted sorted) {
        List<Set<String>> groups = groups(sorted.sizes());
        if (groups.size() < 2) {
            return Optional.empty();
        }
        List<List<Stroke>> lines = new ArrayList<>();
        for (Set<String> group : groups) {
            lines.add(strokes(group, style));
        }
        Optional<List<Legend.Named>> names = legend.names(lines);
        if (names.isEmpty() && groups.size() == 2 && sorted.several().stream().allMatch(Telling::isApart)) {
            return Optional.empty(); // two lines that nowhere meet and no word of sizes: cutting and stitching line
        }
        List<SizeLines> sizes = new ArrayList<>();
        Set<Stroke> used = new HashSet<>(legend.samples());
        Set<Stroke> common = new HashSet<>(sorted.shared());
        common.addAll(drawnInOneOnly(sorted, groups, lines));
        for (int i = 0; i < groups.size(); i++) {
            List<Stroke> own = lines.get(i).stream()
                    .filter(s -> !legend.samples().contains(s) && !isGuide(s) && !common.contains(s))
                    .toList();
            used.addAll(own);
            String evidence = String.join(
                    " and ",
                    own.stream().map(style::inWords).distinct().sorted().toList());
            Set<String> layers = style == Style.LAYER ? Set.of(own.get(0).layer()) : Set.of();
            sizes.add(
                    new SizeLines(size(names, i, groups.size(), evidence), own, rings(sorted, groups.get(i)), layers));
        }
        names.ifPresent(all -> inOrder(all.stream().map(Legend.Named::word).toList()));
        List<Stroke> shared = strokes.stream().filter(s -> !used.contains(s)).toList();
        return Optional.of(new Nest(drawing, style.told(), sizes, shared, findings));
    }

    /**
     * Lines inside the pieces, such as grainlines, that one size has and no other: they are drawn once for all, in a style that one of the
     * sizes happens to have too.
     */
    private List<Stroke> drawnInOneOnly(Sorted sorted, List<Set<String>> groups, List<List<Stroke>> lines) {
        List<List<Stroke>> free = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            List<Ring> rings = rings(sorted, groups.get(i));
            free.add(lines.get(i).stream()
                    .filter(s -> !s.path().isClosed() && !legend.samples().contains(s))
                    .filter(s -> SizeLines.isFree(s.path(), rings))
                    .toList());
        }
        List<List<Stroke>> some = free.stream().filter(f -> !f.isEmpty()).toList();
        return some.size() == 1 ? some.get(0) : List.of();
    }

    private List<Stroke> strokes(Set<String> group, Style style) {
        return drawing.strokes().stream()
                .filter(s -> group.contains("~" + style.of(s)))
                .toList();
    }

    private static boolean isApart(Kin kin) {
        List<List<Ring>> sizes = kin.sizes();
        return sizes.size() == 2
                && Apart.from(
                                sizes.get(0).get(0).path(),
                                List.of(sizes.get(1).get(0).path()))
                        .isClear();
    }

    /** Styles that are one size's in one piece are so in every piece. */
    private static List<Set<String>> groups(List<List<String>> sizes) {
        List<Set<String>> groups = new ArrayList<>();
        for (List<String> styles : sizes) {
            Set<String> group = new LinkedHashSet<>(styles);
            groups.stream()
                    .filter(g -> g.stream().anyMatch(group::contains))
                    .findFirst()
                    .ifPresentOrElse(g -> g.addAll(group), () -> groups.add(group));
        }
        return groups;
    }

    private static NestSize size(Optional<List<Legend.Named>> names, int i, int count, String evidence) {
        if (names.isPresent()) {
            Legend.Named named = names.get().get(i);
            return new NestSize(
                    named.word().label(), evidence + "; " + named.how(), named.outright() ? NAMED : NAMED_NEAR);
        }
        String place = String.format(Locale.ROOT, "%d of %d", i + 1, count);
        String end = i == 0 ? ", the smallest" : i == count - 1 ? ", the largest" : "";
        return new NestSize(place, evidence + end + "; nothing written names it", IN_ORDER);
    }

    // --- nothing but nested outlines

    private Optional<Nest> byNesting() {
        Sorted sorted = Sorted.by(strokes, s -> "");
        if (sorted.several().isEmpty()) {
            return Optional.empty();
        }
        int count = sorted.counts().entrySet().stream()
                .max(Comparator.comparingInt((Map.Entry<Integer, Integer> e) -> e.getValue())
                        .thenComparingInt(Map.Entry::getKey))
                .orElseThrow()
                .getKey();
        List<List<Ring>> rings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rings.add(new ArrayList<>());
        }
        for (Kin kin : sorted.several()) {
            List<List<Ring>> sizes = kin.sizes();
            if (sizes.size() != count) {
                findings.add(Finding.warning(
                        "sizes",
                        String.format(
                                Locale.ROOT,
                                "An outline near (%.0f, %.0f) is drawn in %d sizes and others in %d; which of its lines is"
                                        + " which size was guessed from their order.",
                                kin.rings().get(0).bounds().centre().x(),
                                kin.rings().get(0).bounds().centre().y(),
                                sizes.size(),
                                count)));
            }
            for (int i = 0; i < count; i++) {
                rings.get(i).addAll(sizes.get(i * sizes.size() / count));
            }
        }
        List<List<Stroke>> lines = rings.stream()
                .map(all -> all.stream().map(Ring::stroke).toList())
                .toList();
        Optional<List<Legend.Named>> names = legend.names(lines);
        if (names.isEmpty() && count == 2 && sorted.several().stream().allMatch(Telling::isApart)) {
            return Optional.empty();
        }
        List<SizeLines> sizes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String evidence = "outline " + (i + 1) + " of " + count + " from the inmost";
            sizes.add(new SizeLines(size(names, i, count, evidence), lines.get(i), rings.get(i), Set.of()));
        }
        names.ifPresent(all -> inOrder(all.stream().map(Legend.Named::word).toList()));
        List<Ring> all = rings.stream().flatMap(List::stream).toList();
        List<Path> paths = all.stream().map(Ring::path).toList();
        List<Stroke> shared = strokes.stream()
                .filter(s -> !Apart.from(s.path(), paths).isOn())
                .toList();
        return Optional.of(new Nest(drawing, ToldBy.NESTING, sizes, shared, findings));
    }
}
