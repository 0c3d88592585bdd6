package trueseam.intake.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;

/** The kind of a file, by its content or its name. */
class DrawingFilesTest {

    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"100mm\""
            + " viewBox=\"0 0 100 100\"><path d=\"M0 0H50V50Z\" stroke=\"black\" fill=\"none\"/></svg>";
    private static final String DXF =
            "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n1\n10\n0\n20\n0\n11\n50\n21\n0\n0\nENDSEC\n0\nEOF\n";
    private static final String PLOT = "IN;SP1;PU0,0;PD2000,0;PU;";

    private static Drawing read(String name, String text, ReadChoices choices) {
        return DrawingFiles.read(name, text.getBytes(StandardCharsets.UTF_8), choices);
    }

    @Test
    void everyKindIsKnownByItsName() {
        assertThat(read("a.svg", SVG, ReadChoices.NONE).strokes()).hasSize(1);
        assertThat(read("a.DXF", DXF, ReadChoices.NONE).strokes()).hasSize(1);
        assertThat(read("a.plt", PLOT, ReadChoices.NONE).strokes()).hasSize(1);
    }

    @Test
    void aFileWithoutAKnownNameIsKnownByItsContent() {
        assertThat(read("drawing", SVG, ReadChoices.NONE).strokes()).hasSize(1);
        assertThat(read("drawing.txt", DXF, ReadChoices.NONE).strokes()).hasSize(1);
        assertThat(read("drawing.tmp", PLOT, ReadChoices.NONE).strokes()).hasSize(1);
        assertThat(read("misnamed.pdf", SVG, ReadChoices.NONE).strokes()).hasSize(1);
    }

    @Test
    void aUnitIsTakenWhereTheKindLeavesItOpen() {
        assertThat(read("a.dxf", DXF, ReadChoices.NONE.withUnit(10))
                        .strokes()
                        .get(0)
                        .path()
                        .length())
                .isCloseTo(500, within(1e-9));
        assertThatThrownBy(() -> read("a.plt", PLOT, ReadChoices.NONE.withUnit(10)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("SVG and DXF");
        assertThatThrownBy(() -> read("a.dxf", DXF, ReadChoices.NONE.withUnit(7)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("1 mm, 1 cm or 1 in");
    }

    @Test
    void whatIsNoDrawingAtAllIsSaidInOneSentence() {
        byte[] noise = {(byte) 0xff, (byte) 0xfe, 0, 1, 2, (byte) 0x80};
        assertThatThrownBy(() -> DrawingFiles.read("noise.bin", noise, ReadChoices.NONE))
                .isInstanceOf(DrawingException.class)
                .hasMessageStartingWith("noise.bin: It is neither");
    }
}
