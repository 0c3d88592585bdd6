package trueseam.fitting.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.follow.Facings;
import trueseam.fitting.follow.Following;
import trueseam.fitting.follow.Meant;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.truing.LevelShift;
import trueseam.fitting.truing.Opening;
import trueseam.fitting.truing.Truing;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/**
 * A pattern with everything that was done to it.
 *
 * @param original the pattern before
 * @param altered the pattern now
 * @param pieces each piece with the origin of every part of its outline, in the order of the pattern
 * @param chapters what was done, in order
 * @param levels ends of seams that a pivot had moved apart, before they were trued
 * @param capEaseAsked whether a change of cap ease was asked for
 * @param bandEaseMm by how much a band was asked to be longer than what it is sewn to, by seam, mm; minus for shorter
 */
public record WorkedPattern(
        Pattern original,
        Pattern altered,
        List<AlteredPiece> pieces,
        List<Chapter> chapters,
        List<LevelShift> levels,
        boolean capEaseAsked,
        Map<String, Double> bandEaseMm) {

    // Immutable.
    public WorkedPattern {
        pieces = List.copyOf(pieces);
        chapters = List.copyOf(chapters);
        levels = List.copyOf(levels);
        bandEaseMm = Map.copyOf(bandEaseMm);
    }

    /**
     * Nothing done yet.
     *
     * @param pattern the pattern
     * @return the pattern, all kept
     */
    public static WorkedPattern of(Pattern pattern) {
        return new WorkedPattern(
                pattern,
                pattern,
                pattern.pieces().stream().map(AlteredPiece::of).toList(),
                List.of(),
                List.of(),
                false,
                Map.of());
    }

    /**
     * Alters and trues a pattern.
     *
     * @param pattern the pattern
     * @param alterations in the order of work
     * @return the altered and trued pattern
     */
    public static WorkedPattern altered(Pattern pattern, List<? extends Alteration> alterations) {
        return altered(pattern, alterations, new EarlierRounds());
    }

    /**
     * Alters and trues a pattern once more, with amounts that may differ.
     *
     * @param pattern the pattern
     * @param alterations in the order of work
     * @param rounds what was worked before on the same pattern; this round is added to it
     * @return the altered and trued pattern, the same as without the earlier rounds
     */
    public static WorkedPattern altered(Pattern pattern, List<? extends Alteration> alterations, EarlierRounds rounds) {
        WorkedPattern worked = rounds.begin(pattern);
        Meant meant = Meant.NOTHING;
        for (Alteration alteration : alterations) {
            Pattern before = worked.altered();
            worked = rounds.after(worked, alteration);
            meant = meant.plus(before, worked.altered(), alteration.lengthens());
        }
        return worked.then("The sleeve follows the armhole", Following.work(worked.altered(), meant), false, rounds)
                .trued(meant, rounds);
    }

    /**
     * Does one alteration more.
     *
     * @param title what is done
     * @param work the steps by piece
     * @param truing whether it is truing
     * @return the pattern after it
     */
    public WorkedPattern then(String title, List<PieceWork> work, boolean truing) {
        return then(title, work, truing, new EarlierRounds());
    }

    WorkedPattern then(String title, List<PieceWork> work, boolean truing, EarlierRounds rounds) {
        if (work.isEmpty()) {
            return this;
        }
        List<AlteredPiece> all = new ArrayList<>();
        List<Chapter> done = new ArrayList<>(chapters);
        List<Piece> changed = new ArrayList<>();
        for (AlteredPiece piece : pieces) {
            AlteredPiece next = piece;
            for (PieceWork one : work) {
                if (one.piece().equals(piece.now().name())) {
                    AlteredPiece after = rounds.after(next, one.steps());
                    done.add(new Chapter(title, next.now(), after.now(), one.steps(), truing));
                    next = after;
                }
            }
            changed.add(next.now());
            all.add(next);
        }
        return new WorkedPattern(original, altered.withPieces(changed), all, done, levels, capEaseAsked, bandEaseMm);
    }

    /**
     * How far the ends of side seams that meet were moved apart, as the pattern is now.
     *
     * @return every pair of ends
     */
    public List<LevelShift> apart() {
        List<Opening> openings = chapters.stream()
                .filter(Chapter::isOpening)
                .map(chapter -> new Opening(chapter.before(), chapter.after()))
                .toList();
        return Truing.levels(original, altered, openings);
    }

    WorkedPattern asking(boolean capEase) {
        return new WorkedPattern(original, altered, pieces, chapters, levels, capEaseAsked || capEase, bandEaseMm);
    }

    private WorkedPattern trued(Meant meant, EarlierRounds rounds) {
        List<LevelShift> apart = apart();
        WorkedPattern level =
                then("True the levels across the seams", Truing.levelWork(pieces, altered, apart), true, rounds);
        Map<String, Double> bandEase = Following.bandEase(original, meant);
        WorkedPattern worked =
                new WorkedPattern(original, level.altered, level.pieces, level.chapters, apart, capEaseAsked, bandEase);
        // Two rounds: a corner whose two edges both bend is drawn one edge after the other.
        for (int round = 0; round < 2; round++) {
            List<PieceWork> smoothing = new ArrayList<>();
            for (AlteredPiece piece : worked.pieces) {
                smoothing.addAll(rounds.smoothing(piece));
            }
            worked = worked.then("Smooth what the pivots bent", smoothing, true, rounds);
        }
        worked = worked.then(
                "Walk the seams", Truing.walkWork(original, worked.altered, capEaseAsked, meant::of), true, rounds);
        worked = worked.then(
                "The band follows its seam", Following.bands(original, worked.altered, bandEase), false, rounds);
        worked = worked.then(
                "Buttonholes, pockets and notches go with it",
                Following.marks(original, worked.altered),
                false,
                rounds);
        worked = worked.then("The facing is drawn anew", Facings.work(original, worked.altered), false, rounds);
        return worked.lined(rounds);
    }

    /** A lining takes every change that its own piece took, step by step. */
    private WorkedPattern lined(EarlierRounds rounds) {
        WorkedPattern worked = this;
        for (AlteredPiece lining : pieces) {
            Optional<Piece> lined = Facings.linedBy(original, lining.original());
            if (lined.isPresent()) {
                for (Chapter chapter : chapters) {
                    if (chapter.before().name().equals(lined.get().name())) {
                        PieceWork same = new PieceWork(lining.original().name(), chapter.steps());
                        worked = worked.then(chapter.title(), List.of(same), chapter.truing(), rounds);
                    }
                }
            }
        }
        return worked;
    }

    /**
     * The piece of a name with the origin of its outline.
     *
     * @param name its name
     * @return the piece, or nothing if there is none of that name
     */
    public Optional<AlteredPiece> piece(String name) {
        return pieces.stream().filter(p -> p.now().name().equals(name)).findFirst();
    }
}
