package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Flaw;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Shrinkage;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;
import trueseam.output.words.RulerLength;
import trueseam.worktable.project.ClothPart.OneCloth;
import trueseam.worktable.project.ClothPart.TypedFlaw;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Outcome;

/** What was chosen about one cloth, readable or not. */
final class ClothChoices {

    static final String WIDTH = "width";
    static final String LAYERS = "layers";
    static final String NAP = "nap";
    static final String SHRINK = "shrink";
    static final String SHRINK_ACROSS = "shrink-across";
    static final String SELVAGE = "selvage";
    static final String REPEAT_ALONG = "repeat-along";
    static final String REPEAT_ACROSS = "repeat-across";
    static final String HAVE = "have";
    static final String GAP = "gap";
    static final String TILT = "tilt";
    static final String PATIENCE = "patience";
    static final String SEED = "seed";
    static final String SEAMS = "seams";

    /** What is typed, in the order of the screen. */
    static final List<String> TYPED = List.of(
            WIDTH, SHRINK, SHRINK_ACROSS, SELVAGE, REPEAT_ALONG, REPEAT_ACROSS, HAVE, GAP, TILT, PATIENCE, SEED);

    private final Stuff stuff;
    private final OneCloth one;
    private final LengthUnit bare;
    private final Map<String, String> usual;
    private final Map<String, String> problems = new TreeMap<>();
    private final Optional<Cloth> cloth;
    private final Optional<LayWishes> wishes;
    private final int rounds;
    private final long seed;

    private ClothChoices(Stuff stuff, OneCloth one, LengthFormat show, LengthUnit bare) {
        this.stuff = stuff;
        this.one = one;
        this.bare = bare;
        usual = usual(show);
        cloth = readCloth();
        wishes = readWishes();
        rounds = SearchPatience.ofWord(text(PATIENCE)).rounds();
        seed = readSeed();
    }

    /** Those of the cloth that is looked at. */
    static ClothChoices of(Project project) {
        Stuff stuff = Stuff.ofWord(project.cloth().shown()).orElse(Stuff.FASHION);
        return new ClothChoices(
                stuff,
                project.cloth().of(stuff.word()),
                project.person().format(),
                project.person().bareUnit());
    }

    /** A width that every shop has, no shrinkage, and what the engine takes for usual, in the user's own unit. */
    private static Map<String, String> usual(LengthFormat show) {
        boolean inches = show.unit() == LengthUnit.INCH;
        RulerLength ruler = new RulerLength(show);
        return Map.of(
                WIDTH,
                inches ? "60 in" : "150 cm",
                SHRINK,
                "0",
                SHRINK_ACROSS,
                "0",
                SELVAGE,
                ruler.show(Cloth.USUAL_SELVAGE_MM),
                GAP,
                ruler.show(LayWishes.USUAL_GAP_MM),
                TILT,
                "0",
                PATIENCE,
                SearchPatience.USUAL.word(),
                SEED,
                "1");
    }

    Stuff stuff() {
        return stuff;
    }

    OneCloth one() {
        return one;
    }

    /** What stands in a field. */
    String text(String name) {
        return one.choices().getOrDefault(name, usual.getOrDefault(name, ""));
    }

    /** Whether the field has what it has before anything is typed: then nothing of it is kept. */
    boolean isUsual(String name, String text) {
        return text.equals(usual.getOrDefault(name, ""));
    }

    /** What is wrong, by field. */
    Map<String, String> problems() {
        return problems;
    }

    int rounds() {
        return rounds;
    }

    long seed() {
        return seed;
    }

    /** How the cloth lies, as chosen; empty: as it fits. */
    String layers() {
        return one.choices().getOrDefault(LAYERS, "");
    }

    boolean seamsChosen() {
        return one.choices().containsKey(SEAMS);
    }

    /** The task of laying these pieces, or why there is none. */
    Outcome<Laying> laying(Pattern pattern) {
        if (cloth.isEmpty() || wishes.isEmpty()) {
            return Outcome.refused(problems.values().iterator().next());
        }
        Set<String> names = new HashSet<>();
        pattern.pieces().forEach(p -> names.add(p.name()));
        Set<String> seams = new HashSet<>();
        pattern.seams().forEach(s -> seams.add(s.name()));
        // What another pattern of the project had by that name is let go.
        Set<String> only = new HashSet<>(wishes.get().only());
        only.retainAll(names);
        Optional<Set<String>> matched = wishes.get().matched().map(chosen -> {
            Set<String> there = new HashSet<>(chosen);
            there.retainAll(seams);
            return there;
        });
        LayWishes here = new LayWishes(wishes.get().gapMm(), wishes.get().tiltDegrees(), only, matched, List.of());
        try {
            return Outcome.of(
                    layers().isEmpty()
                            ? Laying.asItFits(pattern, cloth.get(), stuff, here)
                            : Laying.of(pattern, cloth.get(), stuff, here));
        } catch (LayException e) {
            return Outcome.refused(e.place() + ": " + e.getMessage());
        }
    }

    private Optional<Cloth> readCloth() {
        double width = length(WIDTH);
        double shrink = read(SHRINK, () -> Shrinkage.part(text(SHRINK)));
        double across = read(SHRINK_ACROSS, () -> Shrinkage.part(text(SHRINK_ACROSS)));
        double selvage = one.choices().containsKey(SELVAGE) ? length(SELVAGE) : Cloth.USUAL_SELVAGE_MM;
        double repeatAlong = text(REPEAT_ALONG).isEmpty() ? 0 : length(REPEAT_ALONG);
        double repeatAcross = text(REPEAT_ACROSS).isEmpty() ? 0 : length(REPEAT_ACROSS);
        OptionalDouble have = text(HAVE).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(length(HAVE));
        List<Flaw> flaws = new ArrayList<>();
        for (int i = 0; i < one.flaws().size(); i++) {
            flaw(one.flaws().get(i), i).ifPresent(flaws::add);
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Cloth(
                    width,
                    lies(),
                    one.choices().containsKey(NAP),
                    shrink,
                    across,
                    selvage,
                    repeatAlong,
                    repeatAcross,
                    have,
                    flaws));
        } catch (IllegalArgumentException e) {
            problems.put("cloth", e.getMessage());
            return Optional.empty();
        }
    }

    private Layers lies() {
        return switch (layers()) {
            case "single" -> Layers.SINGLE;
            case "crosswise" -> Layers.CROSSWISE;
            default -> Layers.LENGTHWISE;
        };
    }

    private Optional<Flaw> flaw(TypedFlaw typed, int at) {
        String field = "flaw-" + at;
        try {
            return Optional.of(new Flaw(mm(typed.from()), mm(typed.to()), mm(typed.low()), mm(typed.high())));
        } catch (LengthTextException | IllegalArgumentException e) {
            problems.put(field, "Flaw " + (at + 1) + ": " + e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<LayWishes> readWishes() {
        double gap = one.choices().containsKey(GAP) ? length(GAP) : LayWishes.USUAL_GAP_MM;
        double tilt = read(TILT, () -> Double.parseDouble(text(TILT).replace(',', '.')));
        if (problems.containsKey(GAP) || problems.containsKey(TILT)) {
            return Optional.empty();
        }
        try {
            Optional<Set<String>> matched = seamsChosen() ? Optional.of(Set.copyOf(one.seams())) : Optional.empty();
            return Optional.of(new LayWishes(gap, tilt, Set.copyOf(one.pieces()), matched, List.of()));
        } catch (IllegalArgumentException e) {
            problems.put("wishes", e.getMessage());
            return Optional.empty();
        }
    }

    private long readSeed() {
        try {
            return Long.parseLong(text(SEED).strip());
        } catch (NumberFormatException e) {
            problems.put(SEED, "The seed is a whole number such as 1, and not \"" + text(SEED) + "\".");
            return 1;
        }
    }

    private double length(String name) {
        return read(name, () -> mm(text(name)));
    }

    private double mm(String text) {
        return Length.parse(text.strip(), bare).mm();
    }

    private double read(String name, Supplier<Double> reading) {
        try {
            return reading.get();
        } catch (NumberFormatException e) {
            problems.put(name, "A number of degrees is needed, such as 0 or 2, and not \"" + text(name) + "\".");
        } catch (LengthTextException | IllegalArgumentException e) {
            problems.put(name, e.getMessage());
        }
        return 0;
    }
}
