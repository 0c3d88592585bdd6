package trueseam.fitting.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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

    /** For one fit. */
    public EarlierRounds() {}

    /** What steps made of a piece. */
    private record Drawn(List<Step> steps, AlteredPiece after) {}

    WorkedPattern begin(Pattern pattern) {
        return begun.computeIfAbsent(pattern, WorkedPattern::of);
    }

    WorkedPattern after(WorkedPattern before, Alteration alteration) {
        Map<Alteration, WorkedPattern> from = altered.computeIfAbsent(before, b -> new HashMap<>());
        WorkedPattern after = from.get(alteration);
        if (after == null) {
            after = before.then(alteration.title(), alteration.work(before.altered()), false, this)
                    .asking(alteration.changesCapEase());
            from.put(alteration, after);
        }
        return after;
    }

    AlteredPiece after(AlteredPiece before, List<Step> steps) {
        List<Drawn> from = drawn.computeIfAbsent(before, b -> new ArrayList<>(2));
        for (Drawn one : from) {
            if (one.steps.equals(steps)) {
                return one.after;
            }
        }
        AlteredPiece after = before.then(steps);
        from.add(new Drawn(steps, after));
        return after;
    }

    List<PieceWork> smoothing(AlteredPiece piece) {
        return smoothing.computeIfAbsent(piece, p -> Truing.smoothingWork(List.of(p)));
    }
}
