package trueseam.worktable.cloth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import trueseam.cloth.goods.Stuff;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;
import trueseam.worktable.page.Download;
import trueseam.worktable.page.Visit;
import trueseam.worktable.project.ClothPart.TypedFlaw;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Workings;

/**
 * What the Cloth screen shows.
 *
 * @param stuffs fashion cloth, lining, interfacing
 * @param layers how the cloth may lie
 * @param patience how long may be searched
 * @param texts what stands in the fields, by name
 * @param problems what is wrong with them, by name
 * @param nap whether it has one way up
 * @param pieces the pieces of the pattern
 * @param usualPieces the names of those that are usually cut from this cloth, one a line
 * @param seams its seams
 * @param flaws the flaws, and an empty row for one more
 * @param laid the pieces on the cloth, or why there are none
 * @param progress how far the search is
 * @param cautions what speaks against cutting
 * @param files what can be taken away
 * @param inches whether lengths are in inches
 */
public record ClothView(
        List<Choice> stuffs,
        List<Choice> layers,
        List<Choice> patience,
        Map<String, String> texts,
        Map<String, String> problems,
        boolean nap,
        List<Choice> pieces,
        String usualPieces,
        List<Choice> seams,
        List<TypedFlaw> flaws,
        Outcome<LaidView> laid,
        ProgressView progress,
        List<String> cautions,
        List<File> files,
        boolean inches) {

    static final String UNPROVED =
            "This layout cannot be cut as it lies; mend what is said above the cloth, or let the pieces go and search, then take it away.";

    /**
     * Something to choose.
     *
     * @param word its word in the form
     * @param label what it is called
     * @param about more of it
     * @param chosen whether it is chosen
     */
    public record Choice(String word, String label, String about, boolean chosen) {}

    /**
     * A file to take away.
     *
     * @param word its word in the address
     * @param name what the file is called
     * @param label what it is
     * @param about more of it
     */
    public record File(String word, String name, String label, String about) {}

    static ClothView of(Visit visit, Outcome<Plan> plan, Optional<Search> search) {
        ClothChoices choices = ClothChoices.of(visit.project());
        LengthFormat show = visit.project().person().format();
        ProgressView progress = ProgressView.of(visit, search);
        Outcome<Plan> shown = plan;
        if (plan.isThere() && progress.on() > 0) {
            String task = plan.get().laying().mark();
            shown = search.filter(s -> s.order().task().equals(task))
                    .flatMap(s -> s.layout(progress.on()))
                    .map(lay -> Outcome.of(plan.get().on(lay)))
                    .orElse(plan);
        }
        Optional<Pattern> pattern = pattern(visit.workings());
        return new ClothView(
                stuffs(choices),
                layers(choices),
                patience(choices),
                texts(choices),
                choices.problems(),
                choices.one().choices().containsKey(ClothChoices.NAP),
                pattern.map(p -> pieces(p, choices)).orElse(List.of()),
                pattern.map(p -> usual(p, choices.stuff())).orElse(""),
                pattern.map(p -> seams(p, choices)).orElse(List.of()),
                flaws(choices),
                shown.isThere() ? Outcome.of(LaidView.of(shown.get(), show)) : shown.reason(),
                progress,
                cautions(visit.workings()),
                shown.value().map(p -> files(visit, p)).orElse(List.of()),
                show.unit() == LengthUnit.INCH);
    }

    private static Optional<Pattern> pattern(Workings workings) {
        return workings.fit().value().map(f -> f.worked().altered()).or(() -> workings.taken()
                .value()
                .map(t -> t.pattern()));
    }

    private static List<Choice> stuffs(ClothChoices choices) {
        return Arrays.stream(Stuff.values())
                .map(s -> new Choice(
                        s.word(),
                        switch (s) {
                            case FASHION -> "Fashion cloth";
                            case LINING -> "Lining";
                            case INTERFACING -> "Interfacing";
                        },
                        "",
                        s == choices.stuff()))
                .toList();
    }

    private static List<Choice> layers(ClothChoices choices) {
        List<Choice> all = new ArrayList<>();
        all.add(layer("", "as it fits", "folded lengthwise, or open where a piece is too wide for that", choices));
        all.add(layer("lengthwise", "folded lengthwise", "selvage on selvage", choices));
        all.add(layer("crosswise", "folded crosswise", "end on end", choices));
        all.add(layer("single", "a single layer", "open", choices));
        return all;
    }

    private static Choice layer(String word, String label, String about, ClothChoices choices) {
        return new Choice(word, label, about, word.equals(choices.layers()));
    }

    private static List<Choice> patience(ClothChoices choices) {
        return Arrays.stream(SearchPatience.values())
                .map(p -> new Choice(p.word(), p.label(), "", p.word().equals(choices.text(ClothChoices.PATIENCE))))
                .toList();
    }

    private static Map<String, String> texts(ClothChoices choices) {
        Map<String, String> texts = new TreeMap<>();
        ClothChoices.TYPED.forEach(name -> texts.put(name, choices.text(name)));
        return texts;
    }

    private static List<Choice> pieces(Pattern pattern, ClothChoices choices) {
        List<String> chosen = choices.one().pieces();
        return pattern.pieces().stream()
                .map(p -> new Choice(
                        p.name(),
                        p.name(),
                        p.cutCount() == 1 ? "cut 1" : "cut " + p.cutCount(),
                        chosen.isEmpty() ? choices.stuff().takes(p) : chosen.contains(p.name())))
                .toList();
    }

    private static String usual(Pattern pattern, Stuff stuff) {
        return pattern.pieces().stream()
                .filter(stuff::takes)
                .map(p -> p.name() + "\n")
                .collect(Collectors.joining());
    }

    private static List<Choice> seams(Pattern pattern, ClothChoices choices) {
        return pattern.seams().stream()
                .map(s -> new Choice(
                        s.name(),
                        s.name(),
                        "",
                        !choices.seamsChosen() || choices.one().seams().contains(s.name())))
                .toList();
    }

    private static List<TypedFlaw> flaws(ClothChoices choices) {
        List<TypedFlaw> all = new ArrayList<>(choices.one().flaws());
        all.add(new TypedFlaw("", "", "", ""));
        return all;
    }

    private static List<String> cautions(Workings workings) {
        List<String> all = new ArrayList<>();
        workings.fit().value().ifPresent(fit -> {
            if (fit.schematic()) {
                all.add(
                        "You have a paper pattern: the pieces here only stand for it, so the length is an estimate. Lay your own"
                                + " altered tissue before you buy.");
            }
            if (!fit.report().holds()) {
                all.add("Not every proof of the fit holds. Do not cut yet; see the Chart.");
            }
        });
        if (workings.taken().isThere()
                && !workings.fit().isThere()
                && workings.fit().missing()) {
            all.add("These are the pieces as they were taken up: they have not been fitted to anybody yet.");
        }
        return all;
    }

    private static List<File> files(Visit visit, Plan plan) {
        return Arrays.stream(ClothFile.values())
                .map(f -> new File(f.word(), fileName(visit, plan, f), f.label(), f.about()))
                .toList();
    }

    /** The lining's layout is not taken for the fashion cloth's. */
    static String fileName(Visit visit, Plan plan, ClothFile file) {
        Stuff stuff = plan.choices().stuff();
        return Download.named(visit.project().name(), (stuff == Stuff.FASHION ? "" : stuff.word() + "-") + file.word());
    }
}
