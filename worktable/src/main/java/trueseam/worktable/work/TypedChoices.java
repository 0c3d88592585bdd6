package trueseam.worktable.work;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.PanelChoice;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.alteration.SleeveSeams;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Method;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.compare.Rule;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.repertoire.RequestException;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.body.Side;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.handbook.Handbooks;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.handbook.LeastEase;
import trueseam.garment.handbook.Question;
import trueseam.garment.handbook.TrouserHem;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.worktable.project.ChartPart;
import trueseam.worktable.project.PersonPart;

/**
 * The choices of a fit from what was typed.
 *
 * @param choices what could be read
 * @param problems what could not, by field name ({@code decision/term}, {@code ease/term}, {@code asked/0})
 */
public record TypedChoices(FitChoices choices, List<Problem> problems) {

    /** Does not change. */
    public TypedChoices {
        problems = List.copyOf(problems);
    }

    /**
     * Reads the decisions.
     *
     * @param person whose units count
     * @param chart the decisions
     * @return the choices
     */
    public static TypedChoices of(PersonPart person, ChartPart chart) {
        List<Problem> problems = new ArrayList<>();
        LengthUnit unit = person.bareUnit();
        Map<Measure, Overrule> overrules = new EnumMap<>(Measure.class);
        chart.decisions().forEach((term, word) -> read("decision/" + term, problems, () -> overrule(word, unit))
                .ifPresent(overrule -> put(overrules, term, overrule)));
        Map<Measure, Double> ease = new EnumMap<>(Measure.class);
        chart.ease().forEach((term, word) -> read(
                        "ease/" + term, problems, () -> Length.parse(word, unit).mm())
                .ifPresent(mm -> put(ease, term, mm)));
        List<Request> requests = new ArrayList<>();
        for (int i = 0; i < chart.asked().size(); i++) {
            ChartPart.Asked asked = chart.asked().get(i);
            read("asked/" + i, problems, () -> request(asked, unit)).ifPresent(requests::add);
        }
        FitChoices usual = general(FitChoices.usual(person.format()), chart.choices())
                .withWearing(handbooks(chart).least().table());
        return new TypedChoices(usual.withOverrules(overrules).withEase(ease).withRequests(requests), problems);
    }

    /**
     * What was answered where handbooks disagree. A word that is no answer any more counts as the usual one.
     *
     * @param chart the decisions
     * @return the answers
     */
    public static Handbooks handbooks(ChartPart chart) {
        LeastEase least = LeastEase.USUAL;
        for (LeastEase.Place place : LeastEase.Place.values()) {
            least = least.with(place, word(chart, LeastEase.question(place)));
        }
        return new Handbooks(
                least,
                BetweenSizes.of(word(chart, BetweenSizes.question())),
                HipLine.of(word(chart, HipLine.question())),
                TrouserHem.of(word(chart, TrouserHem.question())));
    }

    private static String word(ChartPart chart, Question question) {
        String word = chart.choices().getOrDefault(question.name(), "");
        return question.answers().stream().anyMatch(answer -> answer.word().equals(word)) ? word : "";
    }

    private static <V> void put(Map<Measure, V> map, String term, V value) {
        try {
            map.put(Measure.named(term), value);
        } catch (UnknownMeasureException e) {
            throw new IllegalArgumentException("a field named " + term, e);
        }
    }

    private static <V> Optional<V> read(String field, List<Problem> problems, java.util.function.Supplier<V> reading) {
        try {
            return Optional.of(reading.get());
        } catch (LengthTextException | RequestException e) {
            problems.add(new Problem(field, e.getMessage()));
            return Optional.empty();
        }
    }

    private static Overrule overrule(String word, LengthUnit unit) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "leave" -> new Overrule.Leave();
            case "alter" -> new Overrule.Alter();
            default -> new Overrule.Amount(Length.parse(word, unit).mm());
        };
    }

    private static Request request(ChartPart.Asked asked, LengthUnit unit) {
        Entry entry = Repertoire.named(asked.entry())
                .orElseThrow(() -> new RequestException(
                        "There is no alteration \"" + asked.entry() + "\" any more; take it off the list."));
        Variant variant = entry.variant(asked.way())
                .orElseThrow(() -> new RequestException(
                        "\"" + entry.name() + "\" is not done \"" + asked.way() + "\"; choose another way."));
        OptionalDouble mm = asked.amount().isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Length.parse(asked.amount(), unit).mm());
        Optional<Side> side = asked.side().isEmpty()
                ? Optional.empty()
                : Optional.of(Side.valueOf(asked.side().toUpperCase(Locale.ROOT)));
        return new Request(entry, variant, mm, side);
    }

    private static FitChoices general(FitChoices usual, Map<String, String> words) {
        double looseness =
                switch (words.getOrDefault("style", "")) {
                    case "semi_fitted" -> 1.5;
                    case "loose" -> 2;
                    default -> 1;
                };
        FitChoices chosen = usual.withRule(is(words, "rule", "fine") ? Rule.FINE : Rule.HALF_INCH, looseness)
                .withHem(is(words, "hem", "let_back") ? HemChoice.LET_BACK : HemChoice.CARRIED)
                .withSleeve(
                        is(words, "cap", "keep_height") ? CapChoice.KEEP_CAP_HEIGHT : CapChoice.KEEP_CAP_SEAM,
                        is(words, "sleeve", "whole") ? SleeveReach.WHOLE : SleeveReach.UPPER_ARM)
                .withSeams(
                        is(words, "seams", "side_panels")
                                ? PanelChoice.SIDE_PANELS
                                : is(words, "seams", "side") ? PanelChoice.SIDE_SEAMS : PanelChoice.ALL_SEAMS,
                        is(words, "sleeve_seams", "back") ? SleeveSeams.BACK : SleeveSeams.BOTH);
        return is(words, "by", "table")
                ? chosen.withMethod(Method.TABLE)
                : is(words, "by", "flat") ? chosen.withMethod(Method.FLAT) : chosen;
    }

    private static boolean is(Map<String, String> words, String choice, String word) {
        return word.equals(words.get(choice));
    }
}
