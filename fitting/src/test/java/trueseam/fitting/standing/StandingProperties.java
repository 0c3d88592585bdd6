package trueseam.fitting.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import trueseam.fitting.standing.Evidence.Counts;
import trueseam.garment.body.Side;
import trueseam.garment.earlier.EarlierFit;
import trueseam.garment.earlier.MeasureThen.Settled;
import trueseam.garment.measure.Measure;

/** Laws of weighing, over seeded evidence that agrees, contradicts, repeats and lies exactly at the error's edge on purpose. */
class StandingProperties {

    private static final List<Measure> MEASURES =
            List.of(Measure.BUST_GIRTH, Measure.WAIST_GIRTH, Measure.BACK_WAIST_LENGTH, Measure.UPPER_ARM_GIRTH);

    private static List<EarlierFit> evidence(Random random) {
        List<EarlierFit> fits = new ArrayList<>();
        int patterns = 1 + random.nextInt(6);
        for (int i = 0; i < patterns; i++) {
            // Few sizes and few dates, so that one pattern comes twice and on one day.
            Earlier fit = Earlier.bodice(String.valueOf(10 + 2 * random.nextInt(4)), random.nextInt(4));
            for (Measure measure : MEASURES) {
                Settled[] all = Settled.values();
                // Steps of half the error: many amounts lie just at its edge.
                double changed = measure.allowableErrorMm() / 2 * random.nextInt(7);
                fit = fit.with(measure, 500 + 4 * random.nextInt(5), 490, changed, all[random.nextInt(all.length)]);
            }
            fit = fit.named("sway-back", 2.5 * (1 + random.nextInt(5)), Side.BOTH);
            fits.add(random.nextInt(3) == 0 ? fit.andWorn().fit() : fit.fit());
        }
        return fits;
    }

    private static Standing weighed(List<EarlierFit> fits) {
        return Standing.of(fits, Optional.empty());
    }

    @RepeatedTest(300)
    void neitherTheOrderOfTheEvidenceNorItsRepetitionMatters(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        List<EarlierFit> fits = evidence(random);
        Standing standing = weighed(fits);
        List<EarlierFit> shuffled = new ArrayList<>(fits);
        shuffled.addAll(fits);
        Collections.shuffle(shuffled, random);
        assertThat(weighed(shuffled)).as("seed %d", seed.getCurrentRepetition()).isEqualTo(standing);
    }

    @RepeatedTest(300)
    void whatAgreesLiesWithinTheErrorOutnumbersTheRestAndHoldsTheProposal(RepetitionInfo seed) {
        for (Proposal proposal :
                weighed(evidence(new Random(seed.getCurrentRepetition()))).proposals()) {
            List<Evidence> agreeing = proposal.evidence(Counts.AGREES);
            assertThat(proposal.mm().isPresent()).isEqualTo(proposal.weight().isProposed());
            assertThat(agreeing.isEmpty()).isEqualTo(proposal.mm().isEmpty());
            if (proposal.mm().isPresent()) {
                double mm = proposal.mm().getAsDouble();
                assertThat(proposal.spreadMm())
                        .isLessThanOrEqualTo(proposal.subject().errorMm());
                assertThat(mm)
                        .isBetween(
                                agreeing.stream()
                                                .mapToDouble(Evidence::mm)
                                                .min()
                                                .orElseThrow()
                                        - 1e-9,
                                agreeing.stream()
                                                .mapToDouble(Evidence::mm)
                                                .max()
                                                .orElseThrow()
                                        + 1e-9);
                assertThat(agreeing.size())
                        .as("seed %d, %s", seed.getCurrentRepetition(), proposal)
                        .isGreaterThan(proposal.evidence(Counts.AGAINST).size());
            }
        }
    }

    @RepeatedTest(100)
    void evidenceThatAgreesWithAProposalNeverOverturnsIt(RepetitionInfo seed) {
        List<EarlierFit> fits = evidence(new Random(seed.getCurrentRepetition()));
        for (Measure measure : MEASURES) {
            Proposal before = weighed(fits).of(measure).orElseThrow();
            if (before.weight() == Weight.AGREED) {
                double now = LastOfEach.of(fits).stream()
                        .reduce((older, newer) -> newer)
                        .orElseThrow()
                        .measures()
                        .get(MEASURES.indexOf(measure))
                        .bodyMm();
                List<EarlierFit> more = new ArrayList<>(fits);
                more.add(Earlier.bodice("20", 4)
                        .with(measure, now, 490, before.mm().orElseThrow() - 490, Settled.DECIDED)
                        .fit());
                Proposal after = weighed(more).of(measure).orElseThrow();
                assertThat(after.weight())
                        .as("seed %d, %s", seed.getCurrentRepetition(), measure)
                        .isEqualTo(Weight.AGREED);
            }
        }
    }
}
