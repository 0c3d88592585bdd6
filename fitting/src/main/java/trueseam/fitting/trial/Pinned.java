package trueseam.fitting.trial;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.repertoire.Request;
import trueseam.garment.length.LengthFormat;

/**
 * One finding of a sitting: what was seen, what it comes from, and what was pinned or let out.
 *
 * @param seen what was seen; nothing where only the change was written down
 * @param cause the cause that was chosen; nothing where only the change was written down
 * @param remedy the change
 * @param readMm the amount as it was written down, mm, above zero
 * @param as what it measures
 * @param at where the pins are
 * @param note her own words; may be empty
 */
public record Pinned(
        Optional<Symptom> seen,
        Optional<Cause> cause,
        Remedy remedy,
        double readMm,
        PinnedAs as,
        PinnedAt at,
        String note) {

    // An amount that cannot be counted is refused here, where its field is known.
    public Pinned {
        if (!(readMm > 0) || Double.isInfinite(readMm)) {
            throw new PinnedException(
                    PinnedException.Field.PINNED,
                    "Give what was pinned or let out as a length above zero, such as 1/4 in; the change says which way it goes.");
        }
        Handling handling = PinCounting.handling(remedy);
        Counting counting = PinCounting.of(remedy.entry()).counting();
        if (!as.measures(handling, counting)) {
            throw new PinnedException(
                    PinnedException.Field.AS,
                    "\"" + remedy.entry().name() + "\" " + remedy.does() + ": there the cloth is " + handling.words()
                            + ", and \"" + as.word() + "\" does not measure that; write " + fitting(handling, counting)
                            + ".");
        }
        counting.amountMm(as.takenMm(readMm), at);
    }

    private static String fitting(Handling handling, Counting counting) {
        StringBuilder words = new StringBuilder();
        for (PinnedAs one : PinnedAs.values()) {
            if (one.measures(handling, counting)) {
                words.append(words.isEmpty() ? "\"" : " or \"")
                        .append(one.word())
                        .append('"');
            }
        }
        return words.toString();
    }

    /**
     * The amount of the alteration, with its sign.
     *
     * @return as its entry counts it, mm
     */
    public double amountMm() {
        return remedy.signed(PinCounting.of(remedy.entry()).counting().amountMm(as.takenMm(readMm), at));
    }

    /**
     * The alteration that is asked for.
     *
     * @return with its amount and side
     */
    public Request request() {
        return new Request(remedy.entry(), remedy.variant(), OptionalDouble.of(amountMm()), at.side());
    }

    /**
     * How the amount was reckoned.
     *
     * @param show how lengths are written
     * @return one sentence, for example {@code A fold 1/4 in deep takes up 1/2 in; ...: skirt hip -1 in, which makes the hip smaller.}
     */
    public String reckoning(LengthFormat show) {
        String read = show.show(readMm);
        String taken = show.show(as.takenMm(readMm));
        String first =
                switch (as) {
                    case FOLD_DEPTH -> "A fold " + read + " deep takes up " + taken;
                    case TAKEN_UP -> "The pins take up " + taken;
                    case OPENED -> "It opened by " + taken;
                    case EACH_EDGE -> "Each edge of the seam by " + read + " is " + taken + " at the seam";
                    case MOVED -> "The mark was moved by " + read;
                };
        return first + " " + where() + "; "
                + PinCounting.of(remedy.entry()).counting().words() + ": " + remedy.words() + " "
                + show.showSigned(amountMm()) + ", which " + remedy.does() + ".";
    }

    private String where() {
        return switch (at) {
            case BOTH -> "on each side";
            case LEFT, RIGHT -> "on the " + at.name().toLowerCase(Locale.ROOT) + " only";
            case CENTRE -> "across the centre";
        };
    }
}
