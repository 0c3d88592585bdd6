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
import trueseam.fitting.repertoire.Variant;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.body.Side;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Sides;

/**
 * All pairs of alterations that one garment can take, in every way of doing each, larger and smaller, in the order of work (trade.md
 * 4.4): changes combine, and every proof of the design holds for both together. Every pair of ways and directions is met in one of
 * three sizes, dealt out so that the pairs of two entries fall in all of them; and every pair of ways with one of the two on the left
 * side only. (The full product, every pair in every size, was run by hand; it takes six times as long.)
 */
class RepertoirePairsTest {

    private static final String[] SIZES = {"8", "14", "20"};

    /** Half of a usual amount of each: what two handbooks would ask of one pattern together. */
    private static final double SHARE = 0.5;

    /** A piece may refuse a pair with a sentence, where one takes away what the other needs; rarely. */
    private static final double REFUSED_SHARE = 0.03;

    /** One garment in the three sizes. */
    private record Garment(List<Pattern> sizes) {
        @Override
        public String toString() {
            return sizes.get(0).name().replaceAll(" for .*", "");
        }
    }

    /** A way of doing an alteration, larger or smaller. */
    private record Choice(Entry entry, Variant variant, int sign) {
        Applied on(Optional<Side> side) {
            return new Applied(entry, variant, sign * SHARE * entry.usualMm(), side);
        }
    }

    /** What one pair came to; nothing if every proof held. */
    private record Outcome(Optional<String> failed, Optional<String> refused) {}

    private record Pair(Pattern pattern, Applied one, Applied other) {}

    static Stream<Garment> garments() {
        List<Garment> garments = new ArrayList<>();
        int kinds = DraftedGarments.inSizes(SIZES[0]).size();
        List<Pattern> whole = DraftedGarments.inSizes(SIZES);
        for (int i = 0; i < kinds; i++) {
            garments.add(new Garment(every(whole, kinds, i)));
        }
        List<Pattern> parts = DraftedGarments.inParts(SIZES);
        int partKinds = DraftedGarments.inParts(SIZES[0]).size();
        for (int i = 0; i < partKinds; i++) {
            garments.add(new Garment(every(parts, partKinds, i)));
        }
        return garments.stream();
    }

    private static List<Pattern> every(List<Pattern> all, int step, int first) {
        List<Pattern> some = new ArrayList<>();
        for (int i = first; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }

    @ParameterizedTest
    @MethodSource("garments")
    void everyPairOfWaysHoldsEveryProofInOneOfThreeSizes(Garment garment) {
        List<Choice> all = choices(garment.sizes().get(0), 1, -1);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (!all.get(i).entry().equals(all.get(j).entry())) {
                    Pattern size = garment.sizes().get((i + j) % SIZES.length);
                    pairs.add(new Pair(
                            size, all.get(i).on(Optional.empty()), all.get(j).on(Optional.empty())));
                }
            }
        }
        holds(pairs, garment);
    }

    @ParameterizedTest
    @MethodSource("garments")
    void everyPairOfWaysHoldsEveryProofWhereOneIsOnTheLeftAlone(Garment garment) {
        List<Pattern> sizes = garment.sizes().stream().map(Sides::split).toList();
        List<Choice> all = choices(garment.sizes().get(0), 1);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (!all.get(i).entry().equals(all.get(j).entry())) {
                    boolean firstIsLeft = (i + j) % 2 == 0;
                    pairs.add(new Pair(
                            sizes.get((i + j) % SIZES.length),
                            all.get(i).on(firstIsLeft ? Optional.of(Side.LEFT) : Optional.empty()),
                            turned(all.get(j), j).on(firstIsLeft ? Optional.empty() : Optional.of(Side.LEFT))));
                }
            }
        }
        holds(pairs, garment);
    }

    /** Every other second one smaller, where it can be. */
    private static Choice turned(Choice choice, int index) {
        return choice.entry().isBothWays() && index / 2 % 2 == 0
                ? new Choice(choice.entry(), choice.variant(), -1)
                : choice;
    }

    private static List<Choice> choices(Pattern pattern, int... signs) {
        List<Choice> all = new ArrayList<>();
        for (Entry entry : Repertoire.of(pattern)) {
            for (Variant variant : entry.variants()) {
                for (int sign : signs) {
                    if (sign > 0 || entry.isBothWays()) {
                        all.add(new Choice(entry, variant, sign));
                    }
                }
            }
        }
        return all;
    }

    private static void holds(List<Pair> pairs, Garment garment) {
        List<Outcome> outcomes =
                pairs.parallelStream().map(RepertoirePairsTest::outcome).toList();
        List<String> failed =
                outcomes.stream().flatMap(o -> o.failed().stream()).toList();
        List<String> refused =
                outcomes.stream().flatMap(o -> o.refused().stream()).toList();
        assertThat(failed)
                .as(failed.size() + " of " + pairs.size() + " pairs of " + garment)
                .isEmpty();
        assertThat(refused).hasSizeLessThanOrEqualTo((int) (REFUSED_SHARE * pairs.size()));
        assertThat(pairs).isNotEmpty();
    }

    private static Outcome outcome(Pair pair) {
        String words = pair.pattern().size() + ": " + pair.one().title() + " "
                + pair.one().mm() + " + " + pair.other().title() + " "
                + pair.other().mm();
        try {
            WorkedPattern worked = WorkedPattern.altered(pair.pattern(), List.of(pair.one(), pair.other()));
            List<Proof> failures =
                    Prover.prove(worked, Map.of(), worked.capEaseAsked()).failures();
            return new Outcome(
                    failures.stream().findFirst().map(failure -> words + ": " + failure.sentence()), Optional.empty());
        } catch (AlterationException e) {
            return new Outcome(Optional.empty(), Optional.of(words + ": " + e.getMessage()));
        } catch (RuntimeException e) {
            return new Outcome(Optional.of(words + ": " + e), Optional.empty());
        }
    }
}
