package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.proof.Prover;
import trueseam.fitting.repertoire.Applied;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.pattern.Pattern;

/**
 * All pairs of alterations that one garment can take, larger and smaller, in the order of work (trade.md 4.4): changes combine, and
 * every proof of the design holds for both together.
 */
class RepertoirePairsTest {

    /** Half of a usual amount of each: what two handbooks would ask of one pattern together. */
    private static final double SHARE = 0.5;

    /** A piece may refuse a pair with a sentence, where one takes away what the other needs; rarely. */
    private static final double REFUSED_SHARE = 0.03;

    static Stream<Pattern> garments() {
        return Stream.concat(DraftedGarments.inSizes("14").stream(), DraftedGarments.inParts("14").stream());
    }

    @ParameterizedTest
    @MethodSource("garments")
    void everyPairHoldsEveryProof(Pattern pattern) {
        List<Applied> all = new ArrayList<>();
        for (Entry entry : Repertoire.of(pattern)) {
            all.add(of(entry, SHARE));
            if (entry.isBothWays()) {
                all.add(of(entry, -SHARE));
            }
        }
        List<String> failed = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        int pairs = 0;
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (!all.get(i).entry().equals(all.get(j).entry())) {
                    pairs++;
                    work(pattern, all.get(i), all.get(j), failed, refused);
                }
            }
        }
        assertThat(failed)
                .as(failed.size() + " of " + pairs + " pairs of " + pattern.name())
                .isEmpty();
        assertThat(refused).hasSizeLessThanOrEqualTo((int) (REFUSED_SHARE * pairs));
        assertThat(pairs).isPositive();
    }

    private static Applied of(Entry entry, double share) {
        return new Applied(entry, entry.variants().get(0), share * entry.usualMm(), Optional.empty());
    }

    private static void work(Pattern pattern, Applied one, Applied other, List<String> failed, List<String> refused) {
        String pair = one.title() + " " + one.mm() + " + " + other.title() + " " + other.mm();
        try {
            WorkedPattern worked = WorkedPattern.altered(pattern, List.of(one, other));
            List<Proof> failures =
                    Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures();
            if (!failures.isEmpty()) {
                failed.add(pair + ": " + failures.get(0).sentence());
            }
        } catch (AlterationException e) {
            refused.add(pair + ": " + e.getMessage());
        } catch (RuntimeException e) {
            failed.add(pair + ": " + e);
        }
    }
}
