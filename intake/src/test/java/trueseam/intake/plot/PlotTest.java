package trueseam.intake.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/** Plots written for the purpose; 40 units are 1 mm (HP-GL). */
class PlotTest {

    private static Drawing read(String plot) {
        return Plot.read("x.plt", plot.getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void fortyUnitsAreAMillimetre() {
        Drawing drawing = read("IN;SP1;PU400,800;PD4400,800,4400,4800;PD400,800;PU;SP0;");
        assertThat(drawing.strokes()).singleElement().satisfies(s -> {
            assertThat(s.path().start()).isEqualTo(new Point(10, 20));
            assertThat(s.path().isClosed()).isTrue();
            assertThat(s.path().bounds().width()).isEqualTo(100);
            assertThat(s.layer()).isEqualTo("pen 1");
        });
        assertThat(drawing.findings()).isEmpty();
    }

    @Test
    void relativeMovesAndLowerCaseAndMissingSemicolonsAreUnderstood() {
        Drawing drawing = read("in sp2 pa0 0pd pr4000,0 0,4000 pa0,0 pu");
        assertThat(drawing.strokes())
                .singleElement()
                .satisfies(s -> assertThat(s.path().length()).isCloseTo(200 + 100 * Math.sqrt(2), within(1e-9)));
    }

    @Test
    void arcsAndCirclesAreRoundAndNotChords() {
        Drawing drawing = read("IN;SP1;PA4000,0;PD;AA0,0,90,5;PU;PA0,0;CI2000,30;PU4000,0;PD;AR-4000,0,-180;PU");
        assertThat(drawing.strokes()).hasSize(3);
        assertThat(drawing.strokes().get(0).path().length()).isCloseTo(50 * Math.PI, within(1e-5));
        assertThat(drawing.strokes().get(0).path().end().y()).isCloseTo(100, within(1e-9));
        assertThat(drawing.strokes().get(1).path().length()).isCloseTo(100 * Math.PI, within(1e-5));
        assertThat(drawing.strokes().get(2).path().bounds().minY()).isCloseTo(-100, within(1e-6));
    }

    @Test
    void rectanglesAndCurves() {
        Drawing drawing = read("PA0,0;EA4000,2000;ER-400,400;PD;BZ0,1000,1000,2000,2000,2000;BR0,0,400,0,400,400;PU");
        assertThat(drawing.strokes().get(0).path().length()).isEqualTo(300);
        assertThat(drawing.strokes().get(1).path().length()).isEqualTo(40);
        assertThat(drawing.strokes().get(2).path().end()).isEqualTo(new Point(60, 60));
    }

    @Test
    void pensAndLineTypesTellLinesApart() {
        List<Stroke> strokes =
                read("SP1;PD400,0;SP2;PD800,0;LT2;PD1200,0;LT;PW0.5;PD1600,0").strokes();
        assertThat(strokes).extracting(s -> s.look()).doesNotHaveDuplicates().hasSize(4);
        assertThat(strokes.get(2).look().dashMm()).hasSize(2);
        assertThat(strokes.get(3).look().widthMm()).isEqualTo(0.5);
    }

    @Test
    void wordsStandWhereThePenIs() {
        Drawing drawing = read("SP1;SI0.2,0.4;PA400,400;LBFront; size 12\u0003;DT#;LBcut 2#PD0,0");
        assertThat(drawing.captions()).extracting(c -> c.text()).containsExactly("Front; size 12", "cut 2");
        assertThat(drawing.captions().get(0).heightMm()).isCloseTo(4, within(1e-9));
        assertThat(drawing.strokes()).hasSize(1);
    }

    @Test
    void commandsToTheDeviceArePassedOver() {
        assertThat(
                        read("\u001b%-12345X@PJL SET X=1\r\n@PJL ENTER LANGUAGE=HPGL2\r\n\u001b.(;\u001b.I81;;17:IN;CO \"made; here\";SP1;PD400,0;\u001bE")
                                .strokes())
                .hasSize(1);
    }

    @Test
    void aScaleIsTakenOnlyIfItIsOneAndItsSheetIsGiven() {
        // 0 to 100 over 4000 units: one unit is 1 mm.
        assertThat(read("IN;IP0,0,4000,4000;SC0,100,0,100;SP1;PD50,0;PU")
                        .strokes()
                        .get(0)
                        .path()
                        .length())
                .isCloseTo(50, within(1e-9));
        assertThatThrownBy(() -> read("IN;SC0,100,0,100;PD50,0")).hasMessageContaining("does not give (IP)");
        assertThatThrownBy(() -> read("IN;IP0,0,4000,8000;SC0,100,0,100;PD50,0"))
                .hasMessageContaining("stretched");
        assertThatThrownBy(() -> read("RO90;PD50,0")).hasMessageContaining("turned");
    }

    @Test
    void packedLinesAreRefusedInOneSentence() {
        assertThatThrownBy(() -> read("IN;SP1;PE<=AB;"))
                .isInstanceOf(DrawingException.class)
                .hasMessage(
                        "x.plt, instruction 3: lines are packed (PE); set the plot to plain HP-GL (PU, PD) and write it again.");
    }

    @Test
    void unknownInstructionsAndAnEmptyPlotAreTold() {
        assertThat(read("IN;ZZ1,2;ZZ;SP1;PD400,0").findings()).singleElement().satisfies(f -> assertThat(f.sentence())
                .contains("ZZ", "2 times"));
        assertThat(read("").findings()).singleElement().satisfies(f -> assertThat(f.sentence())
                .isEqualTo("the plot draws nothing."));
    }

    @Test
    void otherFilesAreRefused() {
        for (String other : List.of("%PDF-1.7", "0\nSECTION\n", "<svg/>", "\u001b*r1A", "PD1;", "PA1e5,1")) {
            assertThatThrownBy(() -> read(other))
                    .as(other)
                    .isInstanceOf(DrawingException.class)
                    .hasMessageStartingWith("x.plt")
                    .hasMessageEndingWith(".");
        }
    }
}
