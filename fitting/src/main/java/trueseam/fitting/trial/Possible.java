package trueseam.fitting.trial;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** Which changes a pattern can take: by name, or, where a piece is in parts, by the measure that the plan shares over them. */
final class Possible {

    private final List<Entry> byName;
    private final GarmentKind kind;
    private final Set<PieceKind> inParts;

    private Possible(List<Entry> byName, GarmentKind kind, Set<PieceKind> inParts) {
        this.byName = byName;
        this.kind = kind;
        this.inParts = inParts;
    }

    static Possible in(Pattern pattern) {
        return new Possible(Repertoire.of(pattern), Fitting.kindOf(pattern), Repertoire.inParts(pattern));
    }

    boolean takes(Remedy remedy) {
        return byName(remedy.entry()) || byMeasure(remedy).isPresent();
    }

    boolean byName(Entry entry) {
        return byName.contains(entry);
    }

    /** The measure that the plan alters as this change would. */
    Optional<Measure> byMeasure(Remedy remedy) {
        Entry entry = remedy.entry();
        if (!entry.solved() || !remedy.variant().equals(entry.variants().get(0))) {
            return Optional.empty();
        }
        Measure measure = entry.measures().get(0);
        boolean same = Repertoire.solving(kind, measure).equals(Optional.of(entry));
        return same && Coverage.isAltered(kind, inParts, measure) ? Optional.of(measure) : Optional.empty();
    }
}
