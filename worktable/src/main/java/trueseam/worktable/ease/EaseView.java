package trueseam.worktable.ease;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trueseam.fitting.compare.Decision;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.profile.EaseAt;
import trueseam.fitting.profile.EaseProfile;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.output.profile.ProfileDrawing;
import trueseam.output.profile.ProfileWords;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.page.QuestionRow;
import trueseam.worktable.work.Outcome;
import trueseam.worktable.work.Workings;

/**
 * What the Ease screen shows.
 *
 * @param fit the fit, or why there is none
 * @param parts the parts of the body that can be shown
 * @param shown the one that is shown, if any
 * @param questions whose least ease counts
 */
public record EaseView(Outcome<FitResult> fit, List<Part> parts, Optional<Shown> shown, List<QuestionRow> questions) {

    /** How far apart the heights are that can be read out: 1/4 in. */
    private static final double READING_MM = 6.35;

    /**
     * A part of the body to choose.
     *
     * @param word its word in the address
     * @param label what it is called
     * @param chosen whether it is shown
     * @param tight at how many heights it is tight
     */
    public record Part(String word, String label, boolean chosen, int tight) {}

    /**
     * A place that is tight.
     *
     * @param sentence where and how much
     * @param reason what the chart says of that measure; empty where it has none
     * @param term the measure's term, to find it on the chart
     */
    public record Tight(String sentence, String reason, String term) {}

    /**
     * A height that can be read out.
     *
     * @param down how far down the picture's view box
     * @param says what is known there
     */
    public record Reading(double down, String says) {}

    /**
     * One part of the body.
     *
     * @param svg the picture
     * @param tight where it is tight
     * @param perhaps where it may be, between measured heights
     * @param before where it was tight before
     * @param notes how to read it
     * @param rows the measured heights
     * @param readings all heights, from the lowest to the highest
     * @param start which reading is read out first
     * @param trunk whether it is bust, waist and hip that are shown
     */
    public record Shown(
            String svg,
            List<Tight> tight,
            List<String> perhaps,
            List<String> before,
            List<String> notes,
            List<EaseRow> rows,
            List<Reading> readings,
            int start,
            boolean trunk) {

        /**
         * Whether nothing is tight.
         *
         * @return true where nothing is, not even perhaps
         */
        public boolean good() {
            return tight.isEmpty() && perhaps.isEmpty();
        }
    }

    static EaseView of(Workings workings, String word) {
        List<EaseProfile> profiles = workings.fit().value().map(EaseProfile::of).orElse(List.of());
        Optional<EaseProfile> chosen = profiles.stream()
                .filter(profile -> profile.part().word().equals(word))
                .findFirst()
                .or(() -> profiles.stream().findFirst());
        List<Part> parts = profiles.stream()
                .map(profile -> new Part(
                        profile.part().word(),
                        MeasureWords.capital(profile.part().word()),
                        chosen.equals(Optional.of(profile)),
                        (int) profile.levels().stream()
                                .filter(level -> level.shortAfterMm().isPresent())
                                .count()))
                .toList();
        return new EaseView(
                workings.fit(),
                parts,
                chosen.map(profile -> shown(profile, workings.fit().get())),
                QuestionRow.leastEase(workings.project(), workings.fit().value().map(FitResult::kind)));
    }

    private static Shown shown(EaseProfile profile, FitResult fit) {
        LengthFormat show = fit.choices().show();
        ProfileWords words = new ProfileWords(show);
        List<Reading> readings = profile.readings(READING_MM).stream()
                .filter(reading -> ProfileDrawing.isOnFragment(profile, reading.heightMm()))
                .map(reading -> new Reading(
                        ProfileDrawing.heightOnFragment(profile, reading.heightMm()),
                        MeasureWords.capital(words.reading(profile.part(), reading))))
                .sorted((a, b) -> Double.compare(b.down(), a.down()))
                .toList();
        return new Shown(
                ProfileDrawing.fragment(profile, show),
                profile.levels().stream()
                        .flatMap(level -> tight(level, profile, words, fit))
                        .toList(),
                words.between(profile),
                words.before(profile),
                words.notes(profile),
                profile.levels().stream()
                        .map(level -> EaseRow.of(level, profile.part(), show))
                        .toList(),
                readings,
                start(profile, readings),
                profile.part() == BodyPart.TRUNK);
    }

    /** Where it is tightest against the least ease. */
    private static int start(EaseProfile profile, List<Reading> readings) {
        double down = profile.levels().stream()
                .min((a, b) -> Double.compare(room(a), room(b)))
                .map(level ->
                        ProfileDrawing.heightOnFragment(profile, level.body().heightMm()))
                .orElse(0.0);
        int start = 0;
        for (int i = 0; i < readings.size(); i++) {
            if (Math.abs(readings.get(i).down() - down)
                    < Math.abs(readings.get(start).down() - down)) {
                start = i;
            }
        }
        return start;
    }

    private static double room(EaseAt level) {
        return level.easeAfterMm().orElse(Double.POSITIVE_INFINITY)
                - level.body().leastEaseMm().orElse(0);
    }

    private static Stream<Tight> tight(EaseAt level, EaseProfile profile, ProfileWords words, FitResult fit) {
        Measure measure = level.body().measure();
        String reason = fit.needs().stream()
                .filter(need -> need.measure() == measure)
                .findFirst()
                .map(Need::decision)
                .map(Decision::reason)
                .orElse("");
        return words.tight(profile.part(), level).map(sentence -> new Tight(sentence, reason, measure.term()));
    }
}
