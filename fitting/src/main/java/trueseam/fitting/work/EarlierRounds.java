package trueseam.fitting.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.truing.Truing;
import trueseam.garment.pattern.Pattern;

/**
 * What was worked in earlier rounds of the same fit. A fit works the same pattern several times over with amounts that differ a
 * little; a piece that lies as it lay before and gets the very same steps comes out the same, and is not drawn again.
 *
 * <p>It changes no result, only how soon it is there. Used by one thread, for one fit; a new one is empty.
 */
public final class EarlierRounds {

    private final IdentityHashMap<Pattern, WorkedPattern> begun = new IdentityHashMap<>();
    private final IdentityHashMap<WorkedPattern, Map<Alteration, WorkedPattern>> altered = new IdentityHashMap<>();
    private final IdentityHashMap<AlteredPiece, List<Drawn>> drawn = new IdentityHashMap<>();
    private final IdentityHashMap<AlteredPiece, List<PieceWork>> smoothing = new IdentityHashMap<>();

    private final Optional<EarlierRounds> before;

    /** For one fit. */
    public EarlierRounds() {
        this.before = Optional.empty();
    }

    /**
     * For one fit after another of the same pattern: what was worked there is found here too. Nothing is added to the earlier one, so that
     * several threads may go on from it.
     *
     * @param before the rounds of the fit before, which are finished
     */
    public EarlierRounds(EarlierRounds before) {
        this.before = Optional.of(before);
    }

    /** What steps made of a piece. */
    private record Drawn(List<Step> steps, AlteredPiece after) {}

    WorkedPattern begin(Pattern pattern) {
        return found(rounds -> rounds.begun.get(pattern))
                .orElseGet(() -> begun.computeIfAbsent(pattern, WorkedPattern::of));
    }

    /** Here, or in the rounds of the fit before. */
    private <T> Optional<T> found(Function<EarlierRounds, T> in) {
        T here = in.apply(this);
        return here != null ? Optional.of(here) : before.flatMap(rounds -> rounds.found(in));
    }

    WorkedPattern after(WorkedPattern pattern, Alteration alteration) {
        return found(rounds -> rounds.altered.getOrDefault(pattern, Map.of()).get(alteration))
                .orElseGet(() -> {
                    WorkedPattern after = pattern.then(
                                    alteration.title(), alteration.work(pattern.altered()), false, this)
                            .asking(alteration.changesCapEase());
                    altered.computeIfAbsent(pattern, p -> new HashMap<>()).put(alteration, after);
                    return after;
                });
    }

    AlteredPiece after(AlteredPiece piece, List<Step> steps) {
        return found(rounds -> rounds.drawn(piece, steps)).orElseGet(() -> {
            AlteredPiece after = piece.then(steps);
            drawn.computeIfAbsent(piece, p -> new ArrayList<>(2)).add(new Drawn(steps, after));
            return after;
        });
    }

    private AlteredPiece drawn(AlteredPiece piece, List<Step> steps) {
        for (Drawn one : drawn.getOrDefault(piece, List.of())) {
            if (one.steps.equals(steps)) {
                return one.after;
            }
        }
        return null;
    }

    List<PieceWork> smoothing(AlteredPiece piece) {
        return found(rounds -> rounds.smoothing.get(piece))
                .orElseGet(() -> smoothing.computeIfAbsent(piece, p -> Truing.smoothingWork(List.of(p))));
    }
}
