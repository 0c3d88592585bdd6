package trueseam.garment.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.body.Body;
import trueseam.garment.body.BodyValue;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;

/**
 * At which height of the side seam the hip is measured and altered. The line is moved on the pieces before anything else is done; the
 * outline stays.
 */
public enum HipLine {
    /** As the pattern has it. */
    AS_DRAWN("as-drawn", "where the pattern has it", "its hip was drawn to be measured there", "common practice", 0),
    /** At the person's own fullest. */
    OWN(
            "own",
            "at the person's own fullest, by the waist to hip that was measured",
            "a low or a high hip is let out where the body is",
            "common practice",
            0),
    /** 7 in. */
    SEVEN(
            "seven",
            "7 in down the side",
            "the line that women's patterns are printed with, to compare patterns with each other",
            "ND1921",
            177.8),
    /** 6 in. */
    FIVE_TO_SEVEN(
            "five-to-seven",
            "6 in down the side (within 5 to 7)",
            "short figures, and older patterns",
            "WSC78, CHEST",
            152.4),
    /** 3 1/2 in. */
    ABDOMEN(
            "abdomen",
            "3 1/2 in down the side (within 3 to 4)",
            "where the abdomen is the fullest place and the hip below it is flat",
            "NM209",
            88.9);

    /** A line nearer to the waist, or to what lies below it, than this cannot be pivoted to, mm. */
    private static final double ROOM_MM = 20;

    /** A pattern's hip line farther off the person's own than this is worth a word: 1/2 in, the half-inch rule. */
    private static final double WORTH_SAYING_MM = 12.7;

    private final Answer answer;
    private final double mm;

    HipLine(String word, String label, String reason, String source, double mm) {
        this.answer = new Answer(word, label, reason, source);
        this.mm = mm;
    }

    private static final Question QUESTION = new Question(
            "hip line",
            "At which height is the hip measured and altered?",
            "The tape goes round the body there, the paper is read there, and the side seam is let out or taken in there.",
            Arrays.stream(values()).map(HipLine::answer).toList());

    /**
     * The question.
     *
     * @return with all answers
     */
    public static Question question() {
        return QUESTION;
    }

    /**
     * The way of a word.
     *
     * @param word as typed; empty for the usual
     * @return the way
     * @throws HandbookException if there is none of that word
     */
    public static HipLine of(String word) {
        return values()[QUESTION.answers().indexOf(QUESTION.answer(word))];
    }

    /**
     * The answer.
     *
     * @return with reason and source
     */
    public Answer answer() {
        return answer;
    }

    /**
     * A pattern as it is taken up.
     *
     * @param pattern the pattern, its hip line where it was chosen to be
     * @param findings what is to be said of it
     */
    public record Placed(Pattern pattern, List<Finding> findings) {

        // Immutable.
        public Placed {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Lays the hip line.
     *
     * @param pattern the pattern
     * @param body the person
     * @param show how lengths are written
     * @return the pattern with its hip line there; as it was, with a finding, where that cannot be done
     */
    public Placed on(Pattern pattern, Body body, LengthFormat show) {
        Optional<Piece> front = withHip(pattern, true);
        if (front.isEmpty()) {
            return new Placed(pattern, List.of());
        }
        double drawn = depthMm(front.get());
        OptionalDouble own = body.value(Measure.WAIST_TO_HIP)
                .map(BodyValue::mm)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        if (this == AS_DRAWN) {
            return new Placed(pattern, said(drawn, own, show));
        }
        if (this == OWN && own.isEmpty()) {
            return new Placed(
                    pattern,
                    List.of(Finding.warning(
                            "hip line",
                            "It was to lie at the person's own fullest hip, but the waist to hip was not measured: measure it down"
                                    + " the side. It stays where the pattern has it, " + show.show(drawn)
                                    + " down.")));
        }
        return laid(pattern, this == OWN ? own.getAsDouble() : mm, drawn, show);
    }

    private static List<Finding> said(double drawn, OptionalDouble own, LengthFormat show) {
        if (own.isEmpty() || Math.abs(own.getAsDouble() - drawn) <= WORTH_SAYING_MM) {
            return List.of();
        }
        return List.of(Finding.note(
                "hip line",
                "The pattern has it " + show.show(drawn) + " down the side, the person's fullest hip is "
                        + show.show(own.getAsDouble())
                        + " down: choose the hip line \"own\" to measure and alter there."));
    }

    private Placed laid(Pattern pattern, double depthMm, double drawn, LengthFormat show) {
        List<Piece> changed = new ArrayList<>();
        for (boolean isFront : List.of(true, false)) {
            Optional<Piece> sided = withHip(pattern, isFront);
            OptionalDouble y = sided.map(piece -> heightAt(piece, depthMm)).orElse(OptionalDouble.empty());
            if (sided.isPresent() && (y.isEmpty() || !isRoom(sided.get(), y.getAsDouble()))) {
                return new Placed(
                        pattern,
                        List.of(Finding.warning(
                                "hip line",
                                "It cannot lie " + show.show(depthMm) + " down the side of \""
                                        + sided.get().name()
                                        + "\", for there is no room on the piece; it stays where the pattern has it, "
                                        + show.show(drawn) + " down.")));
            }
            if (y.isPresent()) {
                double down = y.getAsDouble() - sided.get().level(LevelName.HIP).orElseThrow();
                pattern.pieces().stream()
                        .filter(piece -> isOf(piece, isFront))
                        .forEach(piece -> changed.add(moved(piece, down)));
            }
        }
        return new Placed(
                pattern.withPieces(changed),
                List.of(Finding.note(
                        "hip line",
                        "It lies " + show.show(depthMm) + " down the side (the pattern has it " + show.show(drawn)
                                + " down): " + answer.reason() + " [" + answer.source()
                                + "]. Measure the person's hip at the same height."
                                + (isTrousers(pattern)
                                        ? " Where the crotch is made deeper or shallower, the line goes down or up with it."
                                        : ""))));
    }

    private static boolean isTrousers(Pattern pattern) {
        return pattern.pieces().stream().anyMatch(piece -> piece.kind().isTrouser());
    }

    /** The piece whose side seam is measured down. */
    private static Optional<Piece> withHip(Pattern pattern, boolean isFront) {
        return pattern.pieces().stream()
                .filter(piece ->
                        isOf(piece, isFront) && piece.firstOf(EdgeRole.SIDE).isPresent())
                .findFirst();
    }

    private static boolean isOf(Piece piece, boolean isFront) {
        return (isFront ? piece.kind().isFront() : piece.kind().isBack())
                && piece.level(LevelName.HIP).isPresent();
    }

    private static double depthMm(Piece piece) {
        Path down = downwards(piece);
        double hip = down.atLevel(piece.level(LevelName.HIP).orElseThrow())
                .map(PathPlace::alongMm)
                .orElse(down.length());
        return hip - waistAlong(piece, down);
    }

    private static OptionalDouble heightAt(Piece piece, double depthMm) {
        Path down = downwards(piece);
        double along = waistAlong(piece, down) + depthMm;
        return along < down.length() ? OptionalDouble.of(down.pointAt(along).y()) : OptionalDouble.empty();
    }

    private static Path downwards(Piece piece) {
        Edge side = piece.firstOf(EdgeRole.SIDE).orElseThrow();
        Path path = side.path();
        return path.start().y() > path.end().y() ? path : path.reversed();
    }

    /** Of a dress the waist is a level; of skirts and trousers the upper end of the side. */
    private static double waistAlong(Piece piece, Path down) {
        OptionalDouble waist = piece.kind().isDress() ? piece.level(LevelName.WAIST) : OptionalDouble.empty();
        return waist.isEmpty()
                ? 0
                : down.atLevel(waist.getAsDouble()).map(PathPlace::alongMm).orElse(0.0);
    }

    private static boolean isRoom(Piece piece, double y) {
        double top = piece.kind().isDress()
                ? piece.level(LevelName.WAIST).orElse(downwards(piece).start().y())
                : downwards(piece).start().y();
        double bottom =
                piece.level(LevelName.CROTCH).orElse(downwards(piece).end().y());
        return bottom + ROOM_MM < y && y < top - ROOM_MM;
    }

    private static Piece moved(Piece piece, double byMm) {
        return piece.toBuilder()
                .levels(piece.levels().stream()
                        .map(level ->
                                level.name() == LevelName.HIP ? new Level(LevelName.HIP, level.y() + byMm) : level)
                        .toList())
                .build();
    }
}
