package trueseam.fitting.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import trueseam.garment.earlier.EarlierFit;

/** Of several fits of one pattern the one that was sewn: the worn one, else the latest. */
final class LastOfEach {

    /** Undated ones count as older than any date, as with readings of a body. The rest only makes the order the same every time. */
    static final Comparator<EarlierFit> OLDEST_FIRST = Comparator.comparing(
                    (EarlierFit fit) -> fit.made().orElse(LocalDate.MIN))
            .thenComparing(EarlierFit::worn)
            .thenComparing(EarlierFit::toString);

    private static final Comparator<EarlierFit> WORN_THEN_LATEST = Comparator.comparing(EarlierFit::worn)
            .thenComparing(fit -> fit.made().orElse(LocalDate.MIN));

    private LastOfEach() {}

    /**
     * Picks them.
     *
     * @return oldest first; more than one of a pattern only where nothing tells which was sewn
     */
    static List<EarlierFit> of(Collection<EarlierFit> fits) {
        List<EarlierFit> last = new ArrayList<>();
        for (EarlierFit fit : fits.stream().distinct().sorted(OLDEST_FIRST).toList()) {
            boolean superseded = fits.stream()
                    .anyMatch(other -> other.isOfSamePattern(fit) && WORN_THEN_LATEST.compare(other, fit) > 0);
            if (!superseded) {
                last.add(fit);
            }
        }
        return last;
    }
}
