package trueseam.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
 * Every row of the skirt and trouser tables of the trade facts (4.3) is an alteration that can be asked for by name, in the direction
 * that the row means, by the way that it names, on the garment that it is about. Sources of the rows: HERR32, MT265, ND1921, DM1911,
 * HERTZ, CWU17, NM209 and common practice, as marked there.
 */
class LowerHalfRowsTest {

    /** Half of a usual amount: as much as no piece may refuse. */
    private static final double SHARE = 0.5;

    @ParameterizedTest(name = "{0}: {1} {2} {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Waist                                  | skirt waist              | side seams    | both | skirt",
                "Waist                                  | skirt waist              | darts         | both | skirt",
                "Hip                                    | skirt hip                |               | both | skirt",
                "Hip, below it back to the old hem      | skirt hip                | old hem       | both | skirt",
                "Waist and hip together                 | skirt waist and hip      |               | both | skirt",
                "Hip curve high or low                  | hip curve                |               | both | skirt",
                "One hip larger                         | one hip larger           |               | both | skirt",
                "One hip higher                         | one hip higher           |               | both | skirt",
                "Full abdomen                           | full abdomen             |               | plus | skirt",
                "Flat abdomen                           | full abdomen             |               | minus| skirt",
                "same, gored                            | plait for the abdomen    |               | plus | gored skirt",
                "same, gored, centre front raised       | full abdomen             |               | both | gored skirt",
                "Prominent hips                         | prominent hips           |               | plus | skirt",
                "Large seat                             | large seat               |               | plus | skirt",
                "Flat seat                              | large seat               |               | minus| skirt",
                "Sway-back skirt                        | sway-back of a skirt     |               | both | skirt",
                "Too straight at the bottom             | hem sweep                | side seams    | both | skirt",
                "Too straight, split to the hem         | hem sweep                | from the dart | plus | skirt",
                "Length, straight                       | skirt length             | hem           | both | skirt",
                "Length, gored                          | skirt length             | line          | both | gored skirt",
                "Length, circular                       | skirt length             | hem           | both | gored skirt",
                "Length of 4 or 5 in                    | skirt length             | half and half | both | gored skirt",
                "Yoke, waist size: darts or seams       | skirt waist              | darts         | both | gored skirt",
                "Waist                                  | trouser waist            | side seams    | both | trousers",
                "Waist                                  | trouser waist            | darts         | both | trousers",
                "Waist                                  | trouser waist            | centre back   | both | trousers",
                "Hip                                    | trouser hip              |               | both | trousers",
                "Crotch depth                           | crotch depth             |               | both | trousers",
                "Crotch length, front                   | front crotch length      | waist         | both | trousers",
                "Crotch length, front                   | front crotch length      | crotch point  | both | trousers",
                "Crotch length, back                    | back crotch length       | waist         | both | trousers",
                "Crotch length, back                    | back crotch length       | wedge         | both | trousers",
                "Crotch length, back                    | back crotch length       | crotch point  | both | trousers",
                "Full abdomen                           | trouser abdomen          |               | plus | trousers",
                "Flat abdomen                           | trouser abdomen          |               | minus| trousers",
                "Prominent seat                         | trouser seat             |               | plus | trousers",
                "Flat seat                              | trouser seat             |               | minus| trousers",
                "Sway-back with hip bone and abdomen    | sway-back with hip bone and abdomen |    | plus | trousers",
                "Hip curve                              | trouser hip curve        |               | both | trousers",
                "Full thigh, outer                      | outer thigh              |               | plus | trousers",
                "Full thigh, inner                      | inner thigh              |               | plus | trousers",
                "Thin thigh                             | outer thigh              |               | minus| trousers",
                "Thin thigh                             | inner thigh              |               | minus| trousers",
                "Thigh all round                        | thigh                    |               | both | trousers",
                "Knee width                             | knee                     |               | both | trousers",
                "Calf width                             | calf                     |               | both | trousers",
                "Hem width                              | trouser hem width        |               | both | trousers",
                "Knock knee                             | knock knee               |               | plus | trousers",
                "Bow leg                                | bow leg                  |               | plus | trousers",
                "Length above knee                      | leg length above the knee|               | both | trousers",
                "Length below knee                      | leg length below the knee|               | both | trousers",
                "Leg length as a whole                  | leg length               |               | both | trousers",
                "One leg long                           | one leg long             |               | both | trousers",
                "Instep                                 | instep                   | from the knee | plus | trousers",
                "Instep                                 | instep                   | from the calf | plus | trousers",
            })
    void everyRowOfTheSkirtAndTrouserTablesCanBeDoneOnBothSidesAndOnOne(
            String row, String name, String way, String direction, String garment) {
        Pattern pattern = garment(garment);
        Entry entry = Repertoire.named(name).orElseThrow(() -> new AssertionError("nothing does: " + row));
        assertThat(Repertoire.of(pattern)).as(row).contains(entry);
        Variant variant = entry.variant(way == null ? "" : way).orElseThrow();
        if (!direction.equals("plus")) {
            assertThat(entry.isBothWays()).as(row).isTrue();
        }
        for (int sign : direction.equals("both") ? new int[] {1, -1} : new int[] {direction.equals("plus") ? 1 : -1}) {
            double mm = sign * SHARE * entry.usualMm();
            holds(pattern, new Applied(entry, variant, mm, Optional.empty()));
            holds(Sides.split(pattern), new Applied(entry, variant, mm, Optional.of(Side.LEFT)));
        }
    }

    private static void holds(Pattern pattern, Applied applied) {
        WorkedPattern worked = WorkedPattern.altered(pattern, List.of(applied));
        assertThat(worked.chapters()).isNotEmpty();
        assertThat(Prover.prove(worked, Map.of(), false).failures()).isEmpty();
    }

    private static Pattern garment(String word) {
        return Stream.concat(DraftedGarments.inSizes("14").stream(), DraftedGarments.inParts("14").stream())
                .filter(pattern -> pattern.name().startsWith(word + " for"))
                .findFirst()
                .orElseThrow();
    }
}
