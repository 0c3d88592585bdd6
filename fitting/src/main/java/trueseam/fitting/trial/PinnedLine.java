package trueseam.fitting.trial;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;

/**
 * A finding as it is written on a line of a file or in the fields of a screen.
 *
 * @param seen the number of a symptom, or some of its words; may be empty
 * @param cause the key or the words of a cause; may be empty where the alteration is given
 * @param alteration an alteration, after / the way of doing it, with + or - after it where that is not clear; may be empty where the
 *     cause is given: then the first change of the cause that the pattern takes
 * @param pinned the amount, such as {@code 1/4 in}
 * @param as what it measures; empty: in all, as wide or as far as it was taken up, opened or moved
 * @param side both, left, right or centre; empty for both
 * @param note her own words; may be empty
 */
public record PinnedLine(
        String seen, String cause, String alteration, String pinned, String as, String side, String note) {

    /** A length that reads back nearer than this was written exactly. */
    private static final double EXACT_MM = 1e-6;

    // Blanks around words say nothing.
    public PinnedLine {
        seen = seen.strip();
        cause = cause.strip();
        alteration = alteration.strip();
        pinned = pinned.strip();
        as = as.strip();
        side = side.strip();
        note = note.strip();
    }

    /**
     * Writes a finding down; reading it gives an equal finding back.
     *
     * @param finding the finding
     * @param wished how lengths are written; one that this cannot show exactly is written in millimetres
     * @return the line
     */
    public static PinnedLine of(Pinned finding, LengthFormat wished) {
        Remedy remedy = finding.remedy();
        Entry entry = remedy.entry();
        String way = remedy.variant().equals(entry.variants().get(0))
                ? ""
                : "/" + remedy.variant().name();
        String sign = entry.isBothWays() ? (remedy.isPlus() ? " +" : " -") : "";
        return new PinnedLine(
                finding.seen()
                        .map(symptom -> Integer.toString(symptom.number()))
                        .orElse(""),
                finding.cause().map(Cause::key).orElse(""),
                entry.name() + way + sign,
                written(finding.readMm(), wished),
                finding.as().word(),
                finding.at().word(),
                finding.note());
    }

    private static String written(double mm, LengthFormat wished) {
        String shown = wished.show(mm);
        return Math.abs(Length.parse(shown, wished.unit()).mm() - mm) < EXACT_MM
                ? shown
                : String.format(Locale.ROOT, "%s mm", Double.toString(mm));
    }

    /**
     * Reads it.
     *
     * @param pattern what the trial garment was cut from
     * @param bareUnit the unit of a number without one
     * @return the finding
     * @throws PinnedException with the field that has to be mended
     */
    public Pinned read(Pattern pattern, LengthUnit bareUnit) {
        Optional<Symptom> symptom = symptom();
        Optional<Cause> because = cause(symptom);
        Optional<PinnedAs> measured = measuredAs();
        Remedy remedy = alteration.isEmpty() ? remedyOf(because, pattern) : named(because, measured);
        if (!Possible.in(pattern).takes(remedy)) {
            throw new PinnedException(
                    PinnedException.Field.ALTERATION,
                    "This pattern has no piece that takes \"" + remedy.words()
                            + "\"; where the piece is in parts, tape them together, alter them as one and cut them apart again.");
        }
        PinnedAt at = PinnedAt.ofWord(side)
                .orElseThrow(() -> new PinnedException(
                        PinnedException.Field.SIDE,
                        "The side \"" + side + "\" is not known; write both, left, right or centre."));
        return new Pinned(
                symptom,
                because,
                remedy,
                amount(bareUnit),
                measured.orElse(inAll(PinCounting.handling(remedy))),
                at,
                note);
    }

    private double amount(LengthUnit bareUnit) {
        if (pinned.isEmpty()) {
            throw new PinnedException(
                    PinnedException.Field.PINNED, "Give what was pinned or let out, such as 1/4 in or 6 mm.");
        }
        try {
            return Length.parse(pinned, bareUnit).mm();
        } catch (LengthTextException e) {
            throw new PinnedException(PinnedException.Field.PINNED, e.getMessage());
        }
    }

    private Optional<PinnedAs> measuredAs() {
        if (as.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(PinnedAs.ofWord(as)
                .orElseThrow(() -> new PinnedException(
                        PinnedException.Field.AS,
                        "\"" + as + "\" is no way to measure what was pinned; write "
                                + List.of(PinnedAs.values()).stream()
                                        .map(PinnedAs::word)
                                        .collect(Collectors.joining(", "))
                                + ".")));
    }

    private static PinnedAs inAll(Handling handling) {
        return switch (handling) {
            case TAKE -> PinnedAs.TAKEN_UP;
            case GIVE -> PinnedAs.OPENED;
            case MOVE -> PinnedAs.MOVED;
        };
    }

    private Optional<Symptom> symptom() {
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        String wanted = seen.toLowerCase(Locale.ROOT);
        List<Symptom> found = TrialFolds.symptoms().stream()
                .filter(one -> Integer.toString(one.number()).equals(wanted)
                        || one.seen().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        Optional<Symptom> byNumber = found.stream()
                .filter(one -> Integer.toString(one.number()).equals(wanted))
                .findFirst();
        if (byNumber.isEmpty() && found.size() != 1) {
            throw new PinnedException(
                    PinnedException.Field.SEEN,
                    found.isEmpty()
                            ? "Nothing that is seen is numbered or called \"" + seen
                                    + "\"; trueseam trial --list shows all of it with its numbers."
                            : "\"" + seen + "\" may be "
                                    + found.stream()
                                            .map(one -> one.number() + " (" + one.seen() + ")")
                                            .collect(Collectors.joining(" or "))
                                    + "; write the number.");
        }
        return byNumber.or(() -> Optional.of(found.get(0)));
    }

    private Optional<Cause> cause(Optional<Symptom> symptom) {
        if (cause.isEmpty()) {
            return Optional.empty();
        }
        String wanted = cause.toLowerCase(Locale.ROOT);
        Cause found = TrialFolds.causes().stream()
                .filter(one -> one.key().equals(wanted)
                        || one.words().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new PinnedException(
                        PinnedException.Field.CAUSE, "There is no cause \"" + cause + "\"" + known(symptom) + "."));
        if (symptom.isPresent() && !symptom.get().causes().contains(found)) {
            throw new PinnedException(
                    PinnedException.Field.CAUSE,
                    "\"" + symptom.get().seen() + "\" does not come from \"" + found.key() + "\"" + known(symptom)
                            + ".");
        }
        return Optional.of(found);
    }

    private static String known(Optional<Symptom> symptom) {
        return symptom.map(one -> "; its causes are "
                        + one.causes().stream().map(Cause::key).collect(Collectors.joining(", ")))
                .orElse("; trueseam trial --list shows them");
    }

    private static Remedy remedyOf(Optional<Cause> because, Pattern pattern) {
        Cause cause = because.orElseThrow(() ->
                new PinnedException(PinnedException.Field.CAUSE, "Name the cause, or the alteration that was pinned."));
        if (cause.remedies().isEmpty()) {
            throw new PinnedException(PinnedException.Field.CAUSE, cause.note());
        }
        Possible possible = Possible.in(pattern);
        return cause.remedies().stream()
                .filter(possible::takes)
                .findFirst()
                .orElse(cause.remedies().get(0));
    }

    private Remedy named(Optional<Cause> because, Optional<PinnedAs> measured) {
        char last = alteration.charAt(alteration.length() - 1);
        boolean signed = (last == '+' || last == '-')
                && alteration.length() > 1
                && Character.isWhitespace(alteration.charAt(alteration.length() - 2));
        String name = signed ? alteration.substring(0, alteration.length() - 1).strip() : alteration;
        int way = name.indexOf('/');
        Entry entry = Repertoire.named(way < 0 ? name : name.substring(0, way))
                .orElseThrow(() -> new PinnedException(
                        PinnedException.Field.ALTERATION,
                        "There is no alteration \"" + name + "\"; trueseam alterations lists their names."));
        Variant variant = entry.variant(
                        way < 0 ? "" : name.substring(way + 1).strip().toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new PinnedException(
                        PinnedException.Field.ALTERATION,
                        "\"" + entry.name() + "\" is not done \"" + name.substring(way + 1) + "\"; its ways are "
                                + entry.variants().stream().map(Variant::name).collect(Collectors.joining(", "))
                                + "."));
        boolean isPlus = signed ? last == '+' : direction(entry, because, measured);
        if (!isPlus && !entry.isBothWays()) {
            throw new PinnedException(
                    PinnedException.Field.ALTERATION,
                    "\"" + entry.name() + "\" takes no minus; it " + entry.plus() + ".");
        }
        return new Remedy(entry, variant, isPlus);
    }

    /** Which way an alteration goes that was named without a sign: as its cause wants it, else as the cloth was handled. */
    private static boolean direction(Entry entry, Optional<Cause> because, Optional<PinnedAs> measured) {
        Optional<Remedy> ofCause = because.flatMap(cause -> cause.remedies().stream()
                .filter(remedy -> remedy.entry().equals(entry))
                .findFirst());
        if (ofCause.isPresent()) {
            return ofCause.get().isPlus();
        }
        if (!entry.isBothWays()) {
            return true;
        }
        PinCounting counting = PinCounting.of(entry);
        boolean plus = measured.map(one -> one.measures(counting.plus(), counting.counting()))
                .orElse(true);
        boolean minus = measured.map(one -> one.measures(counting.minus().orElseThrow(), counting.counting()))
                .orElse(true);
        if (plus == minus) {
            throw new PinnedException(
                    PinnedException.Field.ALTERATION,
                    "Which way? Write \"" + entry.name() + " +\" (it " + entry.plus() + ") or \"" + entry.name()
                            + " -\" (it " + entry.minus() + ").");
        }
        return plus;
    }
}
