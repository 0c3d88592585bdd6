package trueseam.output.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import trueseam.garment.ease.EaseTable;
import trueseam.garment.length.LengthFormat;

class EaseWordsTest {

    private static final EaseWords INCHES = new EaseWords(LengthFormat.inches(8));

    @Test
    void aPublicationIsNamedByItsTitleAndItsFigureHasAUnit() {
        assertThat(INCHES.full("THR-SLV 2 at least"))
                .isEqualTo("Set-in Sleeve Solutions, in Threads magazine: 2 in at least");
        assertThat(EaseWords.brief("THR-SLV 2 at least")).isEqualTo("published");
    }

    @Test
    void figuresAreShownInTheUnitAskedFor() {
        assertThat(INCHES.full("CP 1/4 to 1/2")).isEqualTo("common practice 1/4 in to 1/2 in");
        // 1 in = 25.4 mm exactly (international yard agreement of 1959); shown to the millimetre.
        assertThat(new EaseWords(LengthFormat.millimetres()).full("CP 1 to 1 1/2, arm bent"))
                .isEqualTo("common practice 25 mm to 38 mm, arm bent");
        assertThat(EaseWords.brief("CP 1/4 to 1/2")).isEqualTo("common practice");
    }

    @Test
    void aSourceInWordsStaysAsItIs() {
        assertThat(INCHES.full("stated by the pattern")).isEqualTo("stated by the pattern");
        assertThat(EaseWords.brief("stated by the pattern")).isEqualTo("stated by the pattern");
    }

    @Test
    void noMarkOfTheStandardTableIsLeft() {
        assertThat(EaseTable.standard().entries()).hasSizeGreaterThan(20).allSatisfy(entry -> {
            String source = entry.row().source();
            assertThat(INCHES.full(source))
                    .as(source)
                    .doesNotContainPattern("[A-Z]{2,}")
                    .doesNotContain("::");
        });
    }
}
