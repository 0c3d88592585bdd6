package trueseam.intake.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.length.LengthUnit;
import trueseam.geometry.Cubic;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.dxf.DrawingUnit.Basis;

/** What a reader of DXF learns first; measured against formulas of plane geometry. */
class DxfTest {

    private static Written drawing() {
        return new Written().section("ENTITIES");
    }

    @Test
    void aBulgeOfOneIsHalfACircle() {
        // Tangent of a quarter of the turn: tan(180 / 4) = 1. Half the circumference of a circle 100 mm wide.
        Stroke half = drawing()
                .group(0, "LWPOLYLINE")
                .group(8, "a")
                .group(90, 2)
                .group(10, 0)
                .group(20, 0)
                .group(42, 1)
                .group(10, 100)
                .group(20, 0)
                .end()
                .read()
                .drawing()
                .strokes()
                .get(0);
        assertThat(half.path().length()).isCloseTo(50 * Math.PI, within(1e-5));
        assertThat(half.path().bounds().minY()).as("anticlockwise: below").isCloseTo(-50, within(1e-5));
    }

    @Test
    void aCubicSplineIsKeptExactly() {
        // One span with four control points is the Bezier curve of those points.
        Written w = drawing().group(0, "SPLINE").group(8, "a").group(71, 3);
        for (int knot : new int[] {0, 0, 0, 0, 1, 1, 1, 1}) {
            w.group(40, knot);
        }
        for (int[] p : new int[][] {{0, 0}, {10, 40}, {90, 50}, {100, 0}}) {
            w.group(10, p[0]).group(20, p[1]);
        }
        Cubic c = (Cubic)
                w.end().read().drawing().strokes().get(0).path().segments().get(0);
        assertThat(c.handle1().x()).isEqualTo(10);
        assertThat(c.handle2().y()).isEqualTo(50);
    }

    @Test
    void theUserSaysTheUnitElseATextElseTheHeader() {
        String body = drawing().line(1, 0, 0, 10, 0).end().toString();
        String header = new Written()
                .section("HEADER")
                .group(9, "$INSUNITS")
                .group(70, 5)
                .end()
                .toString()
                .replace("0\nEOF\n", "");
        String said = body.replace("0\nLINE", "0\nTEXT\n10\n0\n20\n0\n40\n3\n1\nUNITS:english\n0\nLINE");
        assertThat(Written.read(body).unit().basis()).isEqualTo(Basis.ASSUMED);
        assertThat(Written.read(body).drawing().findings())
                .filteredOn(f -> f.sentence().contains("does not say its unit"))
                .hasSize(1);
        assertThat(Written.read(header + body).unit().mm()).isEqualTo(10);
        assertThat(Written.read(header + said).unit().mm()).isEqualTo(25.4);
        assertThat(Written.read(header + said).drawing().findings())
                .anySatisfy(f -> assertThat(f.sentence()).contains("a text says inches and the header centimetres"));
        DxfReading asked =
                Dxf.read("x.dxf", (header + said).getBytes(StandardCharsets.UTF_8), Optional.of(LengthUnit.MILLIMETRE));
        assertThat(asked.unit()).isEqualTo(new DrawingUnit(1, "millimetres", Basis.ASKED));
        assertThat(asked.drawing().strokes().get(0).path().length()).isEqualTo(10);
    }

    @Test
    void aUnitThatMakesNoSenseIsTold() {
        assertThat(drawing().line(1, 0, 0, 27, 0).end().read().drawing().findings())
                .anySatisfy(f -> assertThat(f.sentence()).contains("in inches it would be 686 mm"));
    }

    @Test
    void aStretchedBlockIsLeftOutByName() {
        Written w = new Written()
                .section("BLOCKS")
                .block("FRONT")
                .line(1, 0, 0, 100, 0)
                .endBlock()
                .end()
                .section("ENTITIES")
                .insert("FRONT", 0, 0)
                .group(41, 2)
                .insert("FRONT", 0, 0)
                .group(41, 2)
                .group(42, -2)
                .end();
        assertThat(w.read().drawing().strokes())
                .singleElement()
                .satisfies(s -> assertThat(s.path().length()).isEqualTo(200));
        assertThat(w.read().drawing().findings())
                .filteredOn(f -> f.severity() == Severity.FAILURE)
                .singleElement()
                .satisfies(f -> assertThat(f.sentence()).contains("\"FRONT\" is placed 2.0 times as wide and 1.0"));
    }

    @Test
    void blocksInsideThemselvesAreRefused() {
        Written w = new Written()
                .section("BLOCKS")
                .block("A")
                .insert("B", 0, 0)
                .endBlock()
                .block("B")
                .insert("a", 0, 0)
                .endBlock()
                .end()
                .section("ENTITIES")
                .insert("A", 0, 0)
                .end();
        assertThatThrownBy(w::read).isInstanceOf(DrawingException.class).hasMessageContaining("placed inside itself");
    }

    @Test
    void whatIsDamagedIsLeftOutAloneAndTold() {
        DxfReading read = drawing()
                .line(1, 0, 0, 100, 0)
                .line(1, 0, 0, 100, 0)
                .group(0, "CIRCLE")
                .group(10, "12x")
                .group(20, 0)
                .group(40, 5)
                .group(0, "HATCH")
                .group(0, "LINE")
                .group(10, 1e9)
                .group(20, 0)
                .group(11, 0)
                .group(21, 0)
                .end()
                .read();
        assertThat(read.drawing().strokes()).hasSize(2);
        List<String> said =
                read.drawing().findings().stream().map(Finding::sentence).toList();
        assertThat(said).anyMatch(s -> s.contains("this CIRCLE was left out: \"12x\""));
        assertThat(said).anyMatch(s -> s.contains("1 time: HATCH"));
        assertThat(said).anyMatch(s -> s.contains("this LINE was left out: A point at"));
    }

    @Test
    void layersThatAreSwitchedOffAreReadAndTold() {
        DxfReading read = new Written()
                .section("TABLES")
                .group(0, "LAYER")
                .group(2, "Sketch")
                .group(62, -1)
                .end()
                .section("ENTITIES")
                .line("SKETCH", 0, 0, 200, 0)
                .end()
                .read();
        assertThat(read.drawing().strokes())
                .singleElement()
                .satisfies(s -> assertThat(s.look().colour()).isEqualTo("#ff0000"));
        assertThat(read.drawing().findings())
                .anySatisfy(f -> assertThat(f.sentence()).endsWith("in the drawing all the same: SKETCH."));
    }

    @Test
    void aFileCutShortSaysThatPartIsMissing() {
        String whole = drawing().line(1, 0, 0, 100, 0).end().toString();
        assertThat(Written.read(whole.replace("0\nEOF\n", "")).drawing().findings())
                .anySatisfy(f -> assertThat(f.sentence()).contains("ends before its EOF"));
    }

    @Test
    void otherFilesAreRefusedInOneSentence() {
        for (String other : List.of(
                "", "%PDF-1.7\n", "AC1032\u0000\u0001", "NAME Binary DXF\r\n\u001a\u0000", "<svg/>", "0\n0\n0\n0\n")) {
            assertThatThrownBy(() -> Written.read(other))
                    .as(other)
                    .isInstanceOf(DrawingException.class)
                    .hasMessageStartingWith("x.dxf")
                    .hasMessageEndingWith(".");
        }
    }

    @Test
    void wordsLoseTheSignsThatSetThem() {
        assertThat(Wording.plain("45%%d, \\U+00e4 %%uunder%%u 100%%%")).isEqualTo("45\u00b0, \u00e4 under 100%");
        assertThat(Wording.lines("{\\fArial|b0;Front}\\PSize \\H2.5x;12\\~cm \\S1/2;\\P"))
                .containsExactly("Front", "Size 12 cm 1/2");
    }

    @Test
    void linesOfMtextStandBelowEachOther() {
        List<Caption> captions = drawing()
                .group(0, "MTEXT")
                .group(10, 5)
                .group(20, 100)
                .group(40, 6)
                .group(3, "one\\Pt")
                .group(1, "wo")
                .end()
                .read()
                .drawing()
                .captions();
        assertThat(captions).extracting(Caption::text).containsExactly("one", "two");
        assertThat(captions.get(0).at().y() - captions.get(1).at().y()).isCloseTo(10, within(1e-9));
    }
}
