package trueseam.fitting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.fitting.Drafted;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.Pattern;

class PinnedLineTest {

    private static final Pattern SKIRT = Drafted.shell(GarmentKind.SKIRT, "14");

    private static PinnedLine line(
            String seen, String cause, String alteration, String pinned, String as, String side) {
        return new PinnedLine(seen, cause, alteration, pinned, as, side, "");
    }

    @Test
    void aCauseAloneGivesTheFirstChangeThatThePatternTakes() {
        PinnedLine line = line("11", "sway-back", "", "1/4", "", "");
        assertThat(line.read(SKIRT, LengthUnit.INCH).remedy().words()).isEqualTo("sway-back of a skirt");
        assertThat(line.read(Drafted.shell(GarmentKind.BODICE, "14"), LengthUnit.INCH)
                        .remedy()
                        .words())
                .isEqualTo("sway-back");
        assertThat(line.read(Drafted.shell(GarmentKind.DRESS, "14"), LengthUnit.INCH)
                        .remedy()
                        .words())
                .isEqualTo("sway-back without a waist seam");
    }

    @Test
    void wordsOfASymptomDoAsWellAsItsNumber() {
        Pinned read = line("swings to one side", "one hip is higher", "", "10 mm", "moved", "left")
                .read(SKIRT, LengthUnit.INCH);
        assertThat(read.seen().orElseThrow().number()).isEqualTo(33);
        assertThat(read.amountMm()).isCloseTo(10, within(1e-9));
    }

    @Test
    void howTheClothWasHandledSaysWhichWayAnAlterationGoes() {
        assertThat(line("", "", "skirt hip", "1/4", "fold depth", "both")
                        .read(SKIRT, LengthUnit.INCH)
                        .amountMm())
                .isCloseTo(-25.4, within(1e-9));
        assertThat(line("", "", "skirt hip", "1/4", "opened", "both")
                        .read(SKIRT, LengthUnit.INCH)
                        .amountMm())
                .isCloseTo(12.7, within(1e-9));
        assertThat(line("", "", "skirt waist/darts -", "1 cm", "", "")
                        .read(SKIRT, LengthUnit.INCH)
                        .remedy()
                        .words())
                .isEqualTo("skirt waist (darts)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "the moon | | | 1/4 | | | SEEN | trial --list",
                "folds | sway-back | | 1/4 | | | SEEN | write the number",
                "11 | full-bust | | 1/4 | | | CAUSE | its causes are sway-back",
                "11 | | | 1/4 | | | CAUSE | Name the cause",
                "43 | collar-edge-short | | 1/4 | | | ALTERATION | no piece that takes",
                " | | hat brim | 1/4 | | | ALTERATION | no alteration",
                " | | skirt hip/magic | 1/4 | | | ALTERATION | its ways are",
                " | | skirt hip | 1/4 | | | ALTERATION | Which way?",
                " | | prominent hips - | 1/4 | | | ALTERATION | takes no minus",
                " | | cap height + | 1/4 | | | ALTERATION | no piece that takes",
                " | | skirt hip + | | | | PINNED | such as 1/4 in",
                " | | skirt hip + | wide | | | PINNED | wide",
                " | | skirt hip + | 0 | | | PINNED | above zero",
                " | | skirt hip + | 1/4 | guessed | | AS | fold depth, taken up",
                " | | skirt hip + | 1/4 | fold depth | | AS | let out",
                " | | skirt hip + | 1/4 | | behind | SIDE | both, left, right or centre",
                " | | one hip higher + | 1/4 | | | SIDE | which side",
            })
    void whatCannotBeReadSaysWhichFieldAndWhatToWrite(
            String seen,
            String cause,
            String alteration,
            String pinned,
            String as,
            String side,
            PinnedException.Field field,
            String said) {
        PinnedLine line = line(word(seen), word(cause), word(alteration), word(pinned), word(as), word(side));

        assertThatThrownBy(() -> line.read(SKIRT, LengthUnit.INCH))
                .isInstanceOfSatisfying(
                        PinnedException.class, e -> assertThat(e.field()).isEqualTo(field))
                .hasMessageContaining(said);
    }

    private static String word(String cell) {
        return cell == null ? "" : cell;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "13 | tight-seat | large seat + | 3/8 in | opened | both",
                "33 | one-hip-high | one hip higher + | 1/3 in | opened | right",
                " | | skirt waist/darts - | 7 mm | fold depth | centre",
            })
    void whatIsWrittenDownReadsBackTheSame(
            String seen, String cause, String alteration, String pinned, String as, String side) {
        Pinned once = new PinnedLine(word(seen), word(cause), alteration, pinned, as, side, "her words, with a comma")
                .read(SKIRT, LengthUnit.INCH);
        for (LengthFormat show : new LengthFormat[] {LengthFormat.inches(8), LengthFormat.centimetres()}) {
            Pinned again = PinnedLine.of(once, show).read(SKIRT, show.unit());
            assertThat(again.readMm()).isCloseTo(once.readMm(), within(1e-6));
            assertThat(again.remedy()).isEqualTo(once.remedy());
            assertThat(PinnedLine.of(again, show)).isEqualTo(PinnedLine.of(once, show));
            assertThat(again.note()).isEqualTo("her words, with a comma");
        }
    }
}
