package trueseam.intake.namesfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;
import trueseam.intake.sheet.SheetException;

/** The names file, as a person writes it in an editor. */
class NamesFileTest {

    @Test
    void everyKindOfFactIsRead() {
        Corrections said = NamesFile.read("blouse.names.txt", """
                # my blouse
                piece 2: Bodice Front    # sure of it
                  place: 12.0 right -400.5 up, 300 wide 500.0 high
                  name: upper front
                  cut: 2
                  fold: none
                  line: cutting, 5/8 in allowance
                  edge: waist, 0 right 2.5 up to 230.0 right 0.0 up, 233.0 long
                  edge: opening (other), 0.0 right 2.5 up, to 0.0 right 90.0 up
                  no dart: 120 right 300.5 up
                  notch: 1.0 right, 2.0 up
                piece 3: left out

                seam: waist; upper front / waist; band / waist; -1/4 in ease
                no seam: upper front / side + upper front / hem; back / side
                """);
        PieceCorrection front = said.piece(2);
        assertThat(front.kind()).contains(PieceKind.BODICE_FRONT);
        assertThat(front.frame()).contains(new Frame(12, -400.5, 300, 500));
        assertThat(front.name()).contains("upper front");
        assertThat(front.cut()).hasValue(2);
        assertThat(front.fold()).isEqualTo(Optional.of(""));
        assertThat(front.line()).contains(LineTaken.CUTTING);
        assertThat(front.allowanceMm()).hasValue(15.875);
        assertThat(front.edges())
                .containsExactly(
                        new EdgeSaid(
                                "waist", EdgeRole.WAIST, new Point(0, 2.5), new Point(230, 0), OptionalDouble.of(233)),
                        new EdgeSaid(
                                "opening",
                                EdgeRole.OTHER,
                                new Point(0, 2.5),
                                new Point(0, 90),
                                OptionalDouble.empty()));
        assertThat(front.marks())
                .containsExactly(
                        new MarkSaid(MarkSaid.What.DART, new Point(120, 300.5), false),
                        new MarkSaid(MarkSaid.What.NOTCH, new Point(1, 2), true));
        assertThat(said.piece(3).leftOut()).isTrue();
        assertThat(said.seams().get(0).easeMm()).hasValue(-6.35);
        assertThat(said.seams().get(1))
                .isEqualTo(new SeamSaid(
                        "",
                        List.of(new EdgeRef("upper front", "side"), new EdgeRef("upper front", "hem")),
                        List.of(new EdgeRef("back", "side")),
                        OptionalDouble.empty(),
                        false));
        // Written and read again it says the same.
        assertThat(NamesFile.write(NamesFile.read("again", NamesFile.write(said))))
                .isEqualTo(NamesFile.write(said));
    }

    @Test
    void anEmptyFileAndAFileOfRemarksSayNothing() {
        assertThat(NamesFile.read("n", "").isEmpty()).isTrue();
        assertThat(NamesFile.read("n", "\uFEFF# nothing\r\n\r\n   # at all\r\n").isEmpty())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    cut: 2 | line 1: "it" cannot be read: it stands before the first piece
                    piece 1: bodize | line 1: "bodize" cannot be read: that is no kind of piece
                    piece 0: sleeve | line 1: "piece 0" cannot be read: pieces are counted from 1
                    piece 1: sleeve~piece 1: sleeve | line 2: "piece 1" cannot be read: it is told twice
                    piece 1: sleeve~~  cuts: 2 | line 3: "cuts:" cannot be read: a line begins with piece
                    piece 1: sleeve~  cut 2 | line 2: "cut 2" cannot be read: write a fact as a word, a colon
                    piece 1: sleeve~  cut: two | line 2: "two" cannot be read: a number from 1 to 99
                    piece 1: sleeve~  line: dotted | line 2: "dotted" cannot be read: a line is stitching, cutting or inner
                    piece 1: sleeve~  line: cutting, wide allowance | line 2: "wide" cannot be read: a length is expected
                    piece 1: sleeve~  line: cutting, 3000 in | line 2: "3000 in" cannot be read: a length from 0.1 to 200.0 mm
                    piece 1: sleeve~  edge: cap | line 2: "cap" cannot be read: it should read such as "waist, 0.0 right
                    piece 1: sleeve~  edge: cap (head), 0 right 0 up to 1 right 1 up | line 2: "head" cannot be read: in brackets stands
                    piece 1: sleeve~  dart: middle | line 2: "middle" cannot be read: it should read such as "120.0 right
                    piece 1: sleeve~  place: here | line 2: "here" cannot be read: it should read such as "12.0 right
                    piece 1: sleeve~  name: # nothing | line 2: "" cannot be read: a name is expected
                    seam: side; a / b | line 1: "side; a / b" cannot be read: a seam is
                    seam: side; a; c / d | line 1: "a" cannot be read: an edge of a seam is
                    no seam: a / b | line 1: "a / b" cannot be read: what is not sewn together is
                    """)
    void aLineThatCannotBeReadIsToldWithItsPlaceAndWhatIsExpected(String text, String told) {
        assertThatThrownBy(() -> NamesFile.read("blouse.names.txt", text.replace('~', '\n')))
                .isInstanceOf(SheetException.class)
                .hasMessageStartingWith("blouse.names.txt, " + told)
                .hasMessageEndingWith(".");
    }

    @Test
    void itLiesBesideItsDrawing() {
        assertThat(NamesFile.beside("my.blouse.svg")).isEqualTo("my.blouse.names.txt");
        assertThat(NamesFile.beside("plot")).isEqualTo("plot.names.txt");
    }
}
