package trueseam.output.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trueseam.fitting.profile.BodyGirth;
import trueseam.fitting.profile.EaseAt;
import trueseam.fitting.profile.EaseProfile;
import trueseam.fitting.profile.EaseReading;
import trueseam.fitting.profile.HeightFrom;
import trueseam.fitting.profile.TightBetween;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.MeasureWords;

/**
 * What the picture shows, in sentences.
 *
 * @param show the user's unit
 */
public record ProfileWords(LengthFormat show) {

    /** Levels of body and pattern nearer to each other than this are one: 1/4 in, common practice. */
    private static final double ONE_LEVEL_MM = 6.35;

    /**
     * Where the altered garment is tighter than it may be; where it is not, that.
     *
     * @param profile the profile
     * @return at least one sentence
     */
    public List<String> after(EaseProfile profile) {
        List<String> said = new ArrayList<>(tight(profile));
        said.addAll(between(profile));
        if (said.isEmpty()) {
            said.add("After the alterations nothing is tighter than the least ease at the "
                    + (profile.levels().size() == 1
                            ? "one height"
                            : profile.levels().size() + " heights")
                    + " that were measured.");
        }
        return List.copyOf(said);
    }

    /**
     * Where the altered garment is tighter than the least ease at a measured height.
     *
     * @param profile the profile
     * @return a sentence for each; none where it is not
     */
    public List<String> tight(EaseProfile profile) {
        return profile.levels().stream()
                .flatMap(level -> tight(profile.part(), level))
                .toList();
    }

    /**
     * Whether the altered garment is tighter than the least ease at one height.
     *
     * @param part the part of the body
     * @param level the height
     * @return a sentence; none where it is not
     */
    public Stream<String> tight(BodyPart part, EaseAt level) {
        return tight(
                level,
                "Tight at the ",
                height(part, level.body().heightMm()),
                level.easeAfterMm(),
                level.shortAfterMm());
    }

    /**
     * Where the altered garment may be tight between measured heights.
     *
     * @param profile the profile
     * @return a sentence for each stretch; none where it is not
     */
    public List<String> between(EaseProfile profile) {
        return profile.tightBetween().stream()
                .map(place -> between(place, profile.part()))
                .toList();
    }

    /**
     * Where the garment was tighter than the least ease before the alterations.
     *
     * @param profile the profile
     * @return a sentence for each; none where it was not
     */
    public List<String> before(EaseProfile profile) {
        return profile.levels().stream()
                .flatMap(level -> tight(
                        level,
                        "Before the alterations, tight at the ",
                        height(profile.part(), level.heightBeforeMm()),
                        level.easeBeforeMm(),
                        level.shortBeforeMm()))
                .toList();
    }

    /**
     * How garment and body were brought together, and what is not known.
     *
     * @param profile the profile
     * @return a sentence for each
     */
    public List<String> notes(EaseProfile profile) {
        List<String> said = new ArrayList<>();
        said.add("Garment and body are laid together at " + profile.part().zero() + "; "
                + switch (profile.part()) {
                    case TRUNK ->
                        profile.after().topMm() > 0
                                ? "above the underarm nothing goes round the body, so the picture stops there."
                                : "it shows the garment from there down.";
                    case LEG -> "it shows one leg.";
                    case ARM -> "it shows one arm, from the underarm down.";
                });
        if (profile.levels().size() > 1) {
            said.add(
                    "Dots are girths that were measured; between them the body is drawn in with dashes, and is not known there.");
        }
        for (EaseAt level : profile.levels()) {
            height(level).ifPresent(said::add);
        }
        return List.copyOf(said);
    }

    /**
     * A height in words.
     *
     * @param part the part of the body
     * @param heightMm mm above its zero
     * @return for example {@code 8 1/2 in below the waist}, {@code at the waist}
     */
    public String height(BodyPart part, double heightMm) {
        if (Math.abs(heightMm) < show.stepMm() / 2) {
            return "at " + part.zero();
        }
        return show.show(Math.abs(heightMm)) + (heightMm > 0 ? " above " : " below ") + part.zero();
    }

    /**
     * What is known at one height, for reading the picture out.
     *
     * @param part the part of the body
     * @param reading the reading
     * @return for example {@code 4 in below the waist: garment 40 1/8 in, before 38 in; body 37 in, drawn in; ease 3 1/8 in, least 1 in}
     */
    public String reading(BodyPart part, EaseReading reading) {
        String body = reading.bodyMm().isEmpty()
                ? "; the body is not known here"
                : "; body " + show.show(reading.bodyMm().getAsDouble())
                        + reading.measured()
                                .map(level -> " (" + name(level.body()) + ")")
                                .orElse(", drawn in");
        return height(part, reading.heightMm()) + ": garment " + shown(reading.afterMm()) + ", before "
                + shown(reading.beforeMm()) + body + ease(reading);
    }

    private String ease(EaseReading reading) {
        if (reading.easeAfterMm().isEmpty()) {
            return "";
        }
        return "; ease " + show.show(reading.easeAfterMm().getAsDouble())
                + (reading.leastEaseMm().isPresent()
                        ? ", least " + show.show(reading.leastEaseMm().getAsDouble())
                        : "");
    }

    private String shown(OptionalDouble mm) {
        return mm.isPresent() ? show.show(mm.getAsDouble()) : "not there";
    }

    private Stream<String> tight(
            EaseAt level, String head, String height, OptionalDouble ease, OptionalDouble lacking) {
        if (lacking.isEmpty() || ease.isEmpty()) {
            return Stream.empty();
        }
        BodyGirth body = level.body();
        String where = head + name(body) + (body.heightMm() == 0 ? ": " : " (" + height + "): ");
        String least = show.show(body.leastEaseMm().orElse(0));
        double garment = ease.getAsDouble();
        if (garment < 0) {
            return Stream.of(
                    where + "the garment is " + show.show(-garment) + " smaller than the body; with the least ease of "
                            + least + " it lacks " + show.show(lacking.getAsDouble()) + ".");
        }
        return Stream.of(where + amount(lacking.getAsDouble()) + " less than the least ease of " + least + ".");
    }

    /** What is too little for the fraction shown is still too little. */
    private String amount(double mm) {
        return mm < show.stepMm() / 2 ? "less than " + show.show(show.stepMm()) : show.show(mm);
    }

    private String between(TightBetween place, BodyPart part) {
        return "Perhaps tight between " + MeasureWords.label(place.above()).toLowerCase(Locale.ROOT) + " and "
                + MeasureWords.label(place.below()).toLowerCase(Locale.ROOT) + ", about "
                + height(part, place.heightMm()) + ": up to " + show.show(place.shortMm())
                + " less than the least ease, if the body is as it is drawn there. Measure it there, or look there on the trial"
                + " garment.";
    }

    private Optional<String> height(EaseAt level) {
        BodyGirth body = level.body();
        String name = MeasureWords.label(body.measure());
        if (body.from() == HeightFrom.PATTERN) {
            return Optional.of(name + ": " + unknownHeight(body));
        }
        if (body.from() == HeightFrom.PATTERN_FOR_TOO_HIGH) {
            return Optional.of(name
                    + ": by the lengths taken it would lie above the underarm; check them. It is taken where the altered pattern"
                    + " marks it.");
        }
        if (level.levelAfterMm().isEmpty()) {
            return Optional.empty();
        }
        double apart = level.levelAfterMm().getAsDouble() - body.heightMm();
        return Math.abs(apart) <= ONE_LEVEL_MM
                ? Optional.empty()
                : Optional.of(name + ": the altered pattern marks it " + show.show(Math.abs(apart))
                        + (apart > 0 ? " above" : " below") + " where it lies on the body.");
    }

    private static String unknownHeight(BodyGirth body) {
        if (body.heightLengths().isEmpty()) {
            return "no length tells how high it lies; it is taken where the altered pattern marks it.";
        }
        return "how high it lies was not measured; it is taken where the altered pattern marks it. Measure "
                + body.heightLengths().stream()
                        .map(length -> length.workroomLabel())
                        .collect(Collectors.joining(" and "))
                + " to see it at its own height.";
    }

    private static String name(BodyGirth body) {
        return MeasureWords.label(body.measure()).toLowerCase(Locale.ROOT);
    }
}
