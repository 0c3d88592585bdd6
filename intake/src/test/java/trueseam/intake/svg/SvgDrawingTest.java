package trueseam.intake.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/** Reading drawings of any vector editor. Lengths are closed forms; units and shapes as in SVG 1.1 and CSS 2.1. */
class SvgDrawingTest {

    private static Drawing read(String size, String content) {
        return SvgDrawing.read(
                "drawing.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" " + size + ">"
                        + content + "</svg>",
                OptionalDouble.empty());
    }

    private static Drawing mm(String content) {
        return read("width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\"", content);
    }

    private static Stroke only(Drawing drawing) {
        assertThat(drawing.strokes()).hasSize(1);
        return drawing.strokes().get(0);
    }

    // CSS 2.1, 4.3.2: 1 in = 2.54 cm = 96 px = 72 pt = 6 pc.
    @ParameterizedTest
    @CsvSource({
        "width='100mm' viewBox='0 0 100 100', 10",
        "width='10cm' viewBox='0 0 100 100', 10",
        "width='4in' viewBox='0 0 4 4', 254",
        "width='72pt' viewBox='0 0 1 1', 254",
        "width='6pc' viewBox='0 0 1 1', 254",
        "width='96px' viewBox='0 0 96 96', 2.6458333333",
        "width='200mm' height='50mm' viewBox='0 0 100 100', 5"
    })
    void aUnitIsAsLongAsSizeAndViewBoxSay(String size, double mm) {
        Drawing drawing =
                read(size.replace('\'', '"'), "<line x1=\"0\" y1=\"0\" x2=\"10\" y2=\"0\" stroke=\"black\"/>");
        assertThat(only(drawing).path().length()).isCloseTo(mm, within(1e-6));
    }

    @Test
    void withoutASizeTheUserIsToldWhatWasTaken() {
        Drawing drawing = read("", "<line x2=\"96\" stroke=\"black\"/>");
        assertThat(only(drawing).path().length()).isCloseTo(25.4, within(1e-9));
        assertThat(drawing.findings()).anyMatch(f -> f.sentence().contains("96 user units"));
    }

    @Test
    void whatTheUserSaysOfTheUnitGoesBeforeTheFile() {
        Drawing drawing = SvgDrawing.read(
                "drawing.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><line x2=\"10\" stroke=\"black\"/></svg>",
                OptionalDouble.of(1));
        assertThat(only(drawing).path().length()).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <rect x="1" y="2" width="30" height="40"/>                    | 140
            <rect width="30" height="40" rx="5"/>                         | 131.41592654
            <circle cx="5" cy="5" r="10"/>                                | 62.83185307
            <ellipse cx="0" cy="0" rx="20" ry="20"/>                      | 125.66370614
            <polyline points="0,0 3,4 3,14"/>                             | 15
            <polygon points="0 0 3 0 3 4"/>                               | 12
            <path d="M0 0h3v4z"/>                                         | 12
            <path d="M10 0A10 10 0 0 1 -10 0"/>                           | 31.41592654
            """)
    void everyShapeHasItsLength(String shape, double length) {
        Drawing drawing = mm("<g stroke=\"black\">" + shape + "</g>");
        // Arcs are cubics of at most an eighth of a turn: 1e-5 of a length.
        assertThat(only(drawing).path().length()).isCloseTo(length, within(1e-4 * length));
    }

    @Test
    void nestedTransformsAreAppliedFromTheInside() {
        Drawing drawing = mm("<g transform=\"translate(10,20)\"><g transform=\"rotate(90) scale(2)\">"
                + "<line x1=\"0\" y1=\"0\" x2=\"5\" y2=\"0\" stroke=\"black\"/></g></g>");
        // (5,0) doubled, turned to (0,10), shifted to (10,30); y up.
        assertThat(only(drawing).path().start().isNear(new Point(10, -20), 1e-9))
                .isTrue();
        assertThat(only(drawing).path().end().isNear(new Point(10, -30), 1e-9)).isTrue();
    }

    @Test
    void aDistortingTransformMakesAnEllipseOfACircle() {
        Drawing drawing = mm("<circle r=\"1\" transform=\"matrix(20 0 0 10 50 50)\" stroke=\"black\"/>");
        var bounds = only(drawing).path().bounds();
        assertThat(bounds.width()).isCloseTo(40, within(1e-3));
        assertThat(bounds.height()).isCloseTo(20, within(1e-3));
    }

    @Test
    void usedElementsAreDrawnWhereTheyAreUsed() {
        Drawing drawing = mm("<defs><line id=\"a\" x2=\"7\" stroke=\"black\"/></defs>"
                + "<use href=\"#a\" x=\"10\"/><use xlink:href=\"#a\" y=\"20\" transform=\"scale(2)\"/>");
        assertThat(drawing.strokes()).hasSize(2);
        assertThat(drawing.strokes().get(0).path().start().x()).isEqualTo(10);
        assertThat(drawing.strokes().get(1).path().length()).isCloseTo(14, within(1e-9));
        assertThat(drawing.strokes().get(1).path().start().y()).isCloseTo(-40, within(1e-9));
    }

    @Test
    void elementsThatUseOneAnotherInACircleAreRefused() {
        assertThatThrownBy(() -> mm("<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><use href=\"#a\"/></g>"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("in a circle");
    }

    @Test
    void stylesCountInTheOrderAttributeRuleOwn() {
        Drawing drawing = mm("<style>.cut{stroke:#ff0000;stroke-width:2} #x{stroke-dasharray:4,1}</style>"
                + "<path id=\"x\" class=\"cut\" stroke=\"blue\" style=\"stroke-width:0.5mm\" d=\"M0 0h9\"/>");
        Stroke stroke = only(drawing);
        assertThat(stroke.look().colour()).isEqualTo("#ff0000");
        assertThat(stroke.look().dashMm()).containsExactly(4.0, 1.0);
        assertThat(stroke.look().widthMm()).isCloseTo(0.5 * 96 / 25.4, within(1e-3));
    }

    @Test
    void whatIsNotShownIsNotRead() {
        Drawing drawing = mm(
                "<g stroke=\"black\"><path d=\"M0 0h1\" display=\"none\"/><path d=\"M0 0h2\" visibility=\"hidden\"/>"
                        + "<path d=\"M0 0h3\" stroke=\"none\" fill=\"none\"/><clipPath><path d=\"M0 0h4\"/></clipPath></g>");
        assertThat(drawing.strokes()).isEmpty();
    }

    @Test
    void layersAndWordsAreKept() {
        Drawing drawing =
                mm("<g id=\"layer1\" label=\"Size 14\"><g id=\"front\"><path stroke=\"black\" d=\"M0 0h9\"/></g>"
                        + "<text x=\"5\" y=\"6\" font-size=\"4\">cut <tspan>2</tspan></text></g>");
        assertThat(only(drawing).layer()).isEqualTo("Size 14/front");
        assertThat(drawing.captions()).hasSize(1);
        assertThat(drawing.captions().get(0).text()).isEqualTo("cut 2");
        assertThat(drawing.captions().get(0).at()).isEqualTo(new Point(5, -6));
    }

    @Test
    void aPictureIsLeftOutAndNamed() {
        Drawing drawing = mm("<image id=\"scan\" width=\"5\" height=\"5\" href=\"file:///etc/passwd\"/>");
        assertThat(drawing.strokes()).isEmpty();
        assertThat(drawing.findings()).anyMatch(f -> f.place().contains("image \"scan\""));
    }

    @Test
    void aTransformThatCannotBeReadIsRefusedWithItsElement() {
        assertThatThrownBy(() -> mm("<g id=\"sleeve\" transform=\"spin(3)\"><path d=\"M0 0h9\"/></g>"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("\"sleeve\"")
                .hasMessageContaining("spin(3)");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <svg xmlns="http://www.w3.org/2000/svg"><g>                                          | well-formed
            <html/>                                                                              | no SVG
            <!DOCTYPE svg [<!ENTITY a "aaaa">]><svg><text>&a;</text></svg>                       | entity
            <!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]><svg><text>&a;</text></svg>  | entity
            """)
    void whatIsNoDrawingOrUnsafeIsOneSentence(String text, String said) {
        assertThatThrownBy(() -> SvgDrawing.read("bad.svg", text, OptionalDouble.empty()))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("bad.svg")
                .hasMessageContaining(said);
    }

    @Test
    void numbersBeyondThePaperAreLeftOutWithTheirElement() {
        Drawing drawing = mm("<path id=\"far\" stroke=\"black\" d=\"M0 0L1e400 0\"/><line x2=\"5\" stroke=\"black\"/>");
        assertThat(drawing.strokes()).extracting(s -> s.path().length()).isEqualTo(List.of(5.0));
        assertThat(drawing.findings()).anyMatch(f -> f.place().contains("far"));
    }
}
