package trueseam.checks.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.checks.cloth.LaySetting.Factor;
import trueseam.checks.cloth.PairsOfSettings.Pair;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.lay.LaidPiece;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.proof.LayProof;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.drafting.garment.SmallPieces;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.size.SizeTables;

/**
 * A dress with its sleeve, facings and lining, and trousers with a waistband and lining, in every size of the misses' table, under every setting
 * of the cloth: not under every combination, but in every size every two settings meet once. What is laid is proved twice, by the program's own
 * independent proof and by {@link LayRules}.
 */
class EverySizeLaidTest {

    /** Where chance begins. */
    private static final long SEED = 7;

    private static Pattern draft(Garment garment, String size) {
        Pattern shell = garment.draft(DraftFigure.of(SizeTables.named("misses"), size), Allowances.inches());
        Pattern banded =
                garment == Garment.dress ? SmallPieces.facings.addedTo(shell) : SmallPieces.waistband.addedTo(shell);
        return SmallPieces.lining.addedTo(banded);
    }

    private static Lay lay(Pattern pattern, LaySetting setting) {
        return Laying.of(pattern, setting.cloth(), setting.stuff(), setting.wishes())
                .search(SEED, Patience.rounds(1), found -> {});
    }

    @ParameterizedTest
    @EnumSource(names = {"dress", "trousers"})
    void everySizeIsLaidValidlyUnderEverySetting(Garment garment) {
        int headToTail = 0;
        int tilted = 0;
        for (var row : SizeTables.named("misses").rows()) {
            Pattern pattern = draft(garment, row.size());
            PairsOfSettings pairs = PairsOfSettings.of(s -> s.askable() && s.surelyFits(pattern), SEED);
            assertThat(pairs.apart())
                    .as("what cannot meet, size %s", row.size())
                    .allMatch(EverySizeLaidTest::explained);
            for (LaySetting setting : pairs.settings()) {
                Lay lay = lay(pattern, setting);
                String where = garment + " " + row.size() + " " + setting.cloth() + " " + setting.wishes();
                assertThat(LayProof.faults(lay)).as(where).isEmpty();
                assertThat(LayRules.broken(pattern, setting.pieces(pattern), lay))
                        .as(where)
                        .isEmpty();
                headToTail += count(lay, p -> p.grainTo().x() < p.grainFrom().x());
                tilted += count(lay, p -> p.grainTo().y() != p.grainFrom().y());
            }
            assertEverySettingMet(pairs.settings());
        }
        // What is allowed is used: rules that hold because nothing is ever turned would prove little.
        assertThat(headToTail).isGreaterThan(20);
        assertThat(tilted).isGreaterThan(20);
    }

    private static int count(Lay lay, Predicate<LaidPiece> which) {
        return (int) lay.pieces().stream().filter(which).count();
    }

    private static void assertEverySettingMet(List<LaySetting> settings) {
        for (Factor factor : Factor.values()) {
            Set<Integer> met = new HashSet<>();
            settings.forEach(s -> met.add(s.level(factor)));
            assertThat(met).as(factor.name()).hasSize(factor.levels);
        }
    }

    /** Crosswise folds have no nap, stripes and flaws; half of a narrow cloth is too narrow for some pieces. */
    private static boolean explained(Pair pair) {
        Set<Factor> not = Set.of(Factor.NAP, Factor.STRIPES, Factor.REMNANT);
        return pair.one() == Factor.LAYERS
                ? not.contains(pair.other())
                : pair.one() == Factor.WIDTH && pair.other() == Factor.LAYERS;
    }

    @Test
    void trousersTooWideForHalfOfNarrowClothAreRefused() {
        int refused = 0;
        for (var row : SizeTables.named("misses").rows()) {
            Pattern pattern = draft(Garment.trousers, row.size());
            LaySetting folded = LaySetting.plain(900, Layers.LENGTHWISE);
            if (folded.surelyTooNarrow(pattern)) {
                assertThatThrownBy(() -> lay(pattern, folded))
                        .isInstanceOf(LayException.class)
                        .hasMessageContaining("does not fit across the cloth");
                refused++;
            }
        }
        assertThat(refused).as("sizes on half of cloth 90 cm wide").isPositive();
    }
}
