package trueseam.intake.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.geometry.Bounds;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;

/** Printed sizes against drawn ones, in SVG and DXF, and the correction that is confirmed. */
class TrueScaleTest {

    private static Drawing read(String name, String text, ReadChoices choices) {
        return DrawingFiles.read(name, text.getBytes(StandardCharsets.UTF_8), choices);
    }

    private static String svg(String inside) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"600mm\" height=\"600mm\" viewBox=\"0 0 600 600\">"
                + "<path d=\"M100 100H300V500H100Z\" stroke=\"black\" fill=\"none\"/>" + inside + "</svg>";
    }

    private static String square(double width, double height, String text) {
        return "<rect x=\"10\" y=\"10\" width=\"" + width + "\" height=\"" + height
                + "\" stroke=\"black\" fill=\"none\"/><text x=\"12\" y=\"30\" font-size=\"5\">" + text + "</text>";
    }

    private static List<Finding> told(Drawing drawing) {
        return drawing.findings().stream()
                .filter(f -> f.place().equals("test square") || f.place().equals("printed dimensions"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "50, 5 cm",
        "50.8, 2 in x 2 in",
        "50.75, TEST SQUARE 2\u2033",
        "25.4, 1 inch / 2.5 cm",
        "25, 1 inch / 2.5 cm"
    })
    void aSquareThatIsTrueIsSaidToBe(double side, String text) {
        List<Finding> told = told(read("a.svg", svg(square(side, side, text)), ReadChoices.NONE));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(told.get(0).sentence()).contains("\"" + text + "\"").contains("at true scale");
    }

    @Test
    void aSquareThatIsNotTrueWarnsWithBothSizesAndTheOption() {
        List<Finding> told = told(read("a.svg", svg(square(48.5, 49.7, "5 cm")), ReadChoices.NONE));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.WARNING);
        assertThat(told.get(0).sentence())
                .contains("48.50 by 49.70 mm")
                .contains("97.0 % across, 99.4 % up")
                .contains("--test-square \"5 cm\"");
    }

    @Test
    void aConfirmedSquareScalesTheWholeDrawingInEachDirection() {
        Drawing drawing = read("a.svg", svg(square(48.5, 49.7, "5 cm")), ReadChoices.NONE.withTestSquare(50));
        Bounds piece = drawing.strokes().get(0).path().bounds();
        // 200 by 400 mm were drawn where 48.5 by 49.7 stand for 50.
        assertThat(piece.width()).isCloseTo(200 * 50 / 48.5, within(1e-9));
        assertThat(piece.height()).isCloseTo(400 * 50 / 49.7, within(1e-9));
        assertThat(told(drawing)).hasSize(1).allMatch(f -> f.severity() == Severity.NOTE);
    }

    @Test
    void ofTwoSquaresTheOneWithThatSizeIsMeant() {
        String two = square(48.5, 48.5, "50 mm")
                + "<rect x=\"10\" y=\"90\" width=\"49.276\" height=\"49.276\" stroke=\"black\" fill=\"none\"/>"
                + "<text x=\"12\" y=\"110\" font-size=\"5\">2 in</text>";
        Drawing drawing = read("a.svg", svg(two), ReadChoices.NONE.withTestSquare(50.8));
        assertThat(drawing.strokes().get(0).path().bounds().width()).isCloseTo(200 / 0.97, within(1e-9));
    }

    @Test
    void aSquareWithoutASizeIsToldAndCanBeConfirmed() {
        String bare = "<rect x=\"10\" y=\"10\" width=\"49\" height=\"49\" stroke=\"black\" fill=\"none\"/>";
        assertThat(told(read("a.svg", svg(bare), ReadChoices.NONE)))
                .hasSize(1)
                .allMatch(f -> f.sentence().contains("49.00 by 49.00 mm") && f.severity() == Severity.NOTE);
        Drawing drawing = read("a.svg", svg(bare), ReadChoices.NONE.withTestSquare(50));
        assertThat(drawing.strokes().get(0).path().bounds().width()).isCloseTo(200 * 50 / 49.0, within(1e-9));
    }

    @Test
    void anAbsurdSizeIsRefused() {
        assertThatThrownBy(() -> read("a.svg", svg(square(50, 50, "5 cm")), ReadChoices.NONE.withTestSquare(500)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("scaled by 10.00");
        assertThatThrownBy(() -> read("a.svg", svg(""), ReadChoices.NONE.withTestSquare(50)))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("no test square");
    }

    @Test
    void anAllowanceInASquarePieceIsNoTestSize() {
        Drawing drawing = read("a.svg", svg(square(120, 120, "seam allowance 1.5 cm")), ReadChoices.NONE);
        assertThat(told(drawing)).isEmpty();
        assertThat(told(read("a.svg", svg(square(120, 120, "1.5 cm")), ReadChoices.NONE)))
                .isEmpty();
    }

    @Test
    void aSquareOfFourLinesInADxfFileIsFound() {
        StringBuilder dxf =
                new StringBuilder("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n");
        double[][] lines = {{0, 0, 96, 0}, {96, 0, 96, 96}, {96, 96, 0, 96}, {0, 96, 0, 0}};
        for (double[] l : lines) {
            dxf.append("0\nLINE\n8\n1\n10\n" + l[0] + "\n20\n" + l[1] + "\n11\n" + l[2] + "\n21\n" + l[3] + "\n");
        }
        dxf.append("0\nTEXT\n8\n1\n10\n5\n20\n40\n40\n6\n1\nTest square 10 cm\n0\nENDSEC\n0\nEOF\n");
        List<Finding> told = told(read("a.dxf", dxf.toString(), ReadChoices.NONE));
        assertThat(told).hasSize(1);
        assertThat(told.get(0).sentence()).contains("96.00 by 96.00 mm").contains("--test-square \"10 cm\"");
    }

    @Test
    void dimensionLinesOfARealDrawingAgree() throws IOException {
        // data/patterns/README.md: real drawing (CC0) at true scale, 1 unit = 1 mm, with labels of 533, 432, 381, 205,
        // 150, 72 mm.
        Path file = Path.of("..", "data", "patterns", "kid-carrier.svg");
        Drawing drawing = DrawingFiles.read(file.toString(), Files.readAllBytes(file), ReadChoices.NONE);
        List<Finding> told = told(drawing);
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(told.get(0).sentence()).contains("agree with what is drawn");
        // The same drawing said to have smaller units.
        Drawing small = DrawingFiles.read(file.toString(), Files.readAllBytes(file), ReadChoices.NONE.withUnit(0.96));
        assertThat(told(small))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.WARNING && f.sentence().contains("--test-square \"533 mm\""));
        Drawing mended = DrawingFiles.read(
                file.toString(),
                Files.readAllBytes(file),
                ReadChoices.NONE.withUnit(0.96).withTestSquare(533));
        Bounds first = mended.strokes().get(0).path().bounds();
        assertThat(first.width()).isCloseTo(533, within(0.5));
    }
}
