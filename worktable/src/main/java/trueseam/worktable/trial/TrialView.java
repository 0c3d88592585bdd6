package trueseam.worktable.trial;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.trial.AnswerException;
import trueseam.fitting.trial.GarmentPlace;
import trueseam.fitting.trial.GuidedReading;
import trueseam.fitting.trial.Question;
import trueseam.fitting.trial.RankedCause;
import trueseam.fitting.trial.Remedy;
import trueseam.fitting.trial.Symptom;
import trueseam.garment.length.LengthFormat;
import trueseam.output.chart.ChartLine;
import trueseam.output.chart.FittingChart;
import trueseam.output.words.MeasureWords;
import trueseam.output.words.ProofWords;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Problem;
import trueseam.worktable.work.Taken;
import trueseam.worktable.work.Workings;

/**
 * What the Trial screen shows.
 *
 * @param taken the pattern, or why there is none
 * @param reading the reading so far
 * @param next the next question worth asking
 * @param form where what was pinned is written down, if a change was chosen
 * @param sittings the sittings
 * @param fit the fit with all that was pinned
 * @param moved what the pins change, measure by measure
 * @param asked what the address says
 */
public record TrialView(
        Outcome<Taken> taken,
        GuidedReading reading,
        Optional<Question> next,
        Optional<PinForm> form,
        List<SittingRow> sittings,
        Outcome<FitResult> fit,
        List<Moved> moved,
        Map<String, String> asked) {

    /** So few things that may be seen have causes worth showing. */
    private static final int SHOWN = 4;

    /** A change of a measure that is shown: what shows as more than nothing in sixteenths. */
    private static final double MOVED_FROM_MM = 0.8;

    /** The question about the place, which may also be answered on the drawing. */
    private static final String PLACE = "place";

    /**
     * What the pins do to a measure of the pattern.
     *
     * @param label the measure
     * @param first in the fit that the first trial garment was cut from
     * @param now with what was pinned
     * @param by the difference
     */
    public record Moved(String label, String first, String now, String by) {}

    /**
     * An answer that was given.
     *
     * @param asks the question
     * @param words the answer
     * @param without the address without it
     */
    public record Given(String asks, String words, String without) {}

    static TrialView of(Workings workings, Map<String, String> asked, Optional<Problem> problem) {
        Outcome<Taken> taken = workings.taken();
        GuidedReading reading =
                taken.value().map(t -> GuidedReading.of(t.pattern())).orElseGet(GuidedReading::ofAnyGarment);
        Map<String, String> said = new LinkedHashMap<>();
        for (Map.Entry<String, String> one : asked.entrySet()) {
            Optional<GuidedReading> more = answered(reading, one.getKey(), one.getValue());
            if (more.isPresent()) {
                reading = more.get();
                said.put(one.getKey(), one.getValue());
            }
        }
        LengthFormat show = workings.project().person().format();
        List<RankedCause> causes = reading.symptoms().size() <= SHOWN ? reading.causes() : List.of();
        Optional<PinForm> form = taken.isThere()
                ? PinForm.of(asked, reading.symptoms(), causes, show.show(3.175), problem)
                : Optional.empty();
        return new TrialView(
                taken,
                reading,
                reading.next(),
                form,
                SittingRow.all(workings),
                workings.fit(),
                workings.project().trial().sittings().isEmpty() ? List.of() : moved(workings, show),
                said);
    }

    /** The address has more than answers: a chosen change, or a word from an old page. */
    private static Optional<GuidedReading> answered(GuidedReading reading, String question, String answer) {
        try {
            return Optional.of(reading.answered(question, answer));
        } catch (AnswerException e) {
            return Optional.empty();
        }
    }

    private static List<Moved> moved(Workings workings, LengthFormat show) {
        Map<String, Double> first = after(workings.firstFit());
        List<Moved> moved = new ArrayList<>();
        after(workings.fit()).forEach((label, now) -> {
            double was = first.getOrDefault(label, now);
            if (Math.abs(now - was) >= MOVED_FROM_MM) {
                moved.add(new Moved(label, show.show(was), show.show(now), show.showSigned(now - was)));
            }
        });
        return moved;
    }

    private static Map<String, Double> after(Outcome<FitResult> fit) {
        Map<String, Double> after = new LinkedHashMap<>();
        if (fit.isThere()) {
            for (ChartLine line :
                    FittingChart.of(fit.get(), Optional.empty(), List.of()).lines()) {
                OptionalDouble mm = line.afterMm();
                mm.ifPresent(value -> after.put(line.label(), value));
            }
        }
        return after;
    }

    /**
     * The causes, once few things may be seen.
     *
     * @return the likeliest first; empty while there is too much that may be seen
     */
    public List<RankedCause> causes() {
        return reading.symptoms().size() <= SHOWN ? reading.causes() : List.of();
    }

    /**
     * What is seen, if only one thing is left.
     *
     * @return the symptom
     */
    public Optional<Symptom> seen() {
        return reading.symptoms().size() == 1 ? Optional.of(reading.symptoms().get(0)) : Optional.empty();
    }

    /**
     * The answers so far, in words.
     *
     * @return in the order of answering
     */
    public List<Given> given() {
        List<Given> given = new ArrayList<>();
        for (Map.Entry<String, String> one : asked.entrySet()) {
            GuidedReading.Said said = GuidedReading.said(one.getKey(), one.getValue());
            Map<String, String> without = new LinkedHashMap<>(asked);
            without.remove(one.getKey());
            given.add(new Given(said.asks(), said.words(), address(without)));
        }
        return given;
    }

    /**
     * The address that answers a question.
     *
     * @param question the question's key
     * @param answer the answer's key
     * @return to be put behind the address of the screen
     */
    public String answering(String question, String answer) {
        Map<String, String> more = new LinkedHashMap<>(asked);
        more.put(question, answer);
        return address(more);
    }

    /**
     * The address that points at another place: what was answered about the folds there before does not count any more.
     *
     * @param place the place
     * @return to be put behind the address of the screen
     */
    public String pointing(GarmentPlace place) {
        return address(Map.of(PLACE, place.key()));
    }

    /**
     * The address that opens the form for a change.
     *
     * @param cause the cause
     * @param remedy the change
     * @return to be put behind the address of the screen
     */
    public String pinning(RankedCause cause, Remedy remedy) {
        Map<String, String> more = new LinkedHashMap<>(asked);
        more.put("cause", cause.cause().key());
        more.put("alteration", PinForm.alteration(remedy));
        return address(more).replace("#reading", "#pinned");
    }

    private static String address(Map<String, String> answers) {
        String query = answers.entrySet().stream()
                .map(one -> URLEncoder.encode(one.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return (query.isEmpty() ? "" : "?" + query) + "#reading";
    }

    /**
     * Whether a part of the garment is drawn.
     *
     * @param part the part
     * @return true if the garment has it, or if no garment was chosen yet
     */
    public boolean draws(Family part) {
        return GuidedReading.partsOf(taken.value().map(Taken::pattern)).contains(part);
    }

    /**
     * The places that are drawn.
     *
     * @return from the front and from behind, part by part
     */
    public List<GarmentPlace> places() {
        return List.of(GarmentPlace.values()).stream()
                .filter(place -> draws(place.family()))
                .toList();
    }

    /**
     * Whether a place is the one that was pointed at.
     *
     * @param place the place
     * @return true if it is
     */
    public boolean isAt(GarmentPlace place) {
        return place.key().equals(asked.get(PLACE));
    }

    /**
     * Which way the folds were said to lie, for the sign at the place.
     *
     * @return {@code across}, {@code up-and-down}, {@code slanting}, or empty
     */
    public String folds() {
        return asked.getOrDefault("folds", "");
    }

    /**
     * What the proofs say, in a sentence.
     *
     * @return the headline
     */
    public String headline() {
        return fit.value().map(f -> ProofWords.headline(f.report())).orElse("");
    }

    /**
     * Whether every proof holds.
     *
     * @return true if the altered pattern is proven
     */
    public boolean holds() {
        return fit.value().map(f -> f.report().holds()).orElse(false);
    }

    /**
     * The proofs that fail.
     *
     * @return a sentence each
     */
    public List<String> failures() {
        return fit.value().map(f -> ProofWords.failures(f.report())).orElse(List.of());
    }

    /**
     * Words that begin a sentence.
     *
     * @param words the words
     * @return with a capital
     */
    public static String capital(String words) {
        return MeasureWords.capital(words);
    }
}
