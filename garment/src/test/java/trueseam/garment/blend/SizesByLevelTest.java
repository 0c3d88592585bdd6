package trueseam.garment.blend;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What somebody writes to have a pattern drawn across the nest. */
class SizesByLevelTest {

    private static SizesByLevel read(String text) {
        return SizesByLevel.parse(text).orElseThrow();
    }

    @Test
    void levelsAndSizesAreReadAsPeopleWriteThem() {
        SizesByLevel wanted = read("bust 14, waist: 16,hip=EU 44");
        assertThat(wanted.sizes()).containsExactly("14", "16", "EU 44");
        assertThat(wanted.inWords()).isEqualTo("bust 14, waist 16, hip EU 44");
        assertThat(read("upper arm XL, Shoulder M").inWords()).isEqualTo("frame M, bicep XL");
    }

    @Test
    void aSizeAloneNamesNoLevel() {
        assertThat(SizesByLevel.parse("14")).isEmpty();
        assertThat(SizesByLevel.parse("size 14")).isEmpty();
        assertThat(SizesByLevel.parse("")).isEmpty();
        assertThat(SizesByLevel.parse("bust 14, bust 16")).isEmpty();
    }

    @Test
    void aboveTheFirstLevelAndBelowTheLastTheirSizesHold() {
        SizesByLevel wanted = read("bust 14, hip 18");
        assertThat(wanted.at(BlendLevel.FRAME)).isEqualTo("14");
        assertThat(wanted.at(BlendLevel.WAIST)).isEqualTo("14");
        assertThat(wanted.at(BlendLevel.HEM)).isEqualTo("18");
        assertThat(wanted.at(BlendLevel.BICEP)).isEqualTo("14");
    }

    @Test
    void aSleeveGoesByTheFrameUnlessItIsNamed() {
        SizesByLevel wanted = read("bust 14, bicep 16");
        assertThat(wanted.at(BlendLevel.HIP)).isEqualTo("14");
        assertThat(wanted.at(BlendLevel.WRIST)).isEqualTo("16");
        assertThat(read("bicep 16").at(BlendLevel.FRAME)).isEqualTo("16");
    }
}
