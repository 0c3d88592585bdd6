package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static trueseam.intake.patternfile.Drawing.CENTRE;
import static trueseam.intake.patternfile.Drawing.GRAIN;
import static trueseam.intake.patternfile.Drawing.HEM;
import static trueseam.intake.patternfile.Drawing.OUTLINE;
import static trueseam.intake.patternfile.Drawing.SIDE;
import static trueseam.intake.patternfile.Drawing.WAIST;
import static trueseam.intake.patternfile.Drawing.front;
import static trueseam.intake.patternfile.Drawing.group;
import static trueseam.intake.patternfile.Drawing.rectangleWith;
import static trueseam.intake.patternfile.Drawing.sheet;

import org.junit.jupiter.api.Test;

/** What is no pattern is refused in one sentence with its place. */
class RefusedFileTest {

    private static PatternFileException refused(String text) {
        PatternFileException e =
                catchThrowableOfType(PatternFileException.class, () -> PatternFile.read("skirt.svg", text));
        assertThat(e).isNotNull();
        assertThat(e.file()).isEqualTo("skirt.svg");
        assertThat(e.getMessage()).startsWith("skirt.svg").endsWith(".").doesNotContain("\n");
        return e;
    }

    @Test
    void anOpenOutlineNamesPieceEdgesAndGap() {
        PatternFileException e = refused(front(HEM + SIDE.replace("L100 -200", "L97 -196") + WAIST + CENTRE + GRAIN));
        assertThat(e.what())
                .isEqualTo("The outline is open: edge \"side\" ends 5.0 mm from where edge \"waist\" begins; expected"
                        + " edges that meet; move their ends together in a vector editor.");
        assertThat(e.element()).isEqualTo("edge \"side\" of piece \"front\"");
        assertThat(e.line()).isEqualTo(4);
    }

    @Test
    void aMissingEdgeLeavesTheOutlineOpen() {
        assertThat(refused(front(HEM + SIDE + CENTRE + GRAIN)).what())
                .startsWith("The outline is open: edge \"side\" ends 100.0 mm from where edge \"centre front\" begins");
    }

    @Test
    void aMissingOutlineIsNamed() {
        assertThat(refused(front(GRAIN)).getMessage())
                .isEqualTo("skirt.svg, line 2, piece \"front\": Its outline is missing: it has 0 lines with data-edge;"
                        + " expected at least two that close; name its stitching lines.");
    }

    @Test
    void aDrawingWithoutPiecesIsNoPattern() {
        assertThat(refused(sheet("<path d='M0 0 L1 1'/>")).what()).startsWith("No piece is named in this drawing");
        assertThat(refused("<html><body/></html>").what()).contains("no SVG drawing");
        assertThat(refused("").what()).contains("not well-formed XML");
        assertThat(refused("measure,value\nbust girth,38").what()).contains("not well-formed XML");
    }

    @Test
    void unknownRoleKindAndCountAreRefusedWithTheWordsExpected() {
        assertThat(refused(front(OUTLINE.replace("'side'", "'side' data-role='flank'")))
                        .what())
                .startsWith("data-role \"flank\" is not known; expected one of centre, neck, shoulder, armhole, side,");
        assertThat(refused(front(OUTLINE + GRAIN).replace("skirt front", "kilt"))
                        .what())
                .startsWith("data-kind \"kilt\" is not known; expected one of bodice front,");
        assertThat(refused(front(OUTLINE + GRAIN).replace("data-cut='1'", "data-cut='0'"))
                        .what())
                .contains("data-cut is \"0\"; expected how many to cut");
        assertThat(refused(front(OUTLINE.replace("'40'", "'forty'"))).what())
                .isEqualTo("data-allowance is \"forty\"; expected a number such as 15 or 15.875; correct it.");
        assertThat(refused(front(OUTLINE.replace("'40'", "'-40'"))).what()).contains("an allowance of -40.0 mm");
    }

    @Test
    void aStretchedSlantedOrMirroredPieceIsRefusedWhereverItIsStretched() {
        for (String transform : new String[] {
            "scale(2)",
            "scale(1 -1)",
            "skewX(5)",
            "matrix(1 0 0 1.001 0 0)",
            "translate(3) scale(.5)",
            "scale(-1)scale(1,-1)"
        }) {
            String attributes = "data-piece='front' data-kind='skirt front' data-cut='1'";
            String outside = sheet(group("transform='" + transform + "'", group(attributes, OUTLINE + GRAIN)));
            String onPiece = sheet(group(attributes + " transform='" + transform + "'", OUTLINE + GRAIN));
            String inside = sheet(group(attributes, group("transform='" + transform + "'", OUTLINE + GRAIN)));
            String onEdge = sheet(group(
                    attributes, OUTLINE.replace("data-edge='hem'", "data-edge='hem' transform='" + transform + "'")));
            for (String text : new String[] {outside, onPiece, inside, onEdge}) {
                assertThat(refused(text).what()).startsWith("It is stretched, slanted or mirrored by its transform");
            }
        }
    }

    @Test
    void aTransformThatCannotBeReadIsRefused() {
        for (String transform :
                new String[] {"rotate()", "spin(4)", "translate(1 2 3)", "translate(1e999)", "scale(1"}) {
            assertThat(refused(rectangleWith("<g transform='" + transform + "'/>"))
                            .what())
                    .startsWith("transform is \"" + transform + "\"; expected translate, rotate or matrix");
        }
        assertThat(refused(rectangleWith("<g style='transform: scale(2)'/>")).what())
                .contains("moved by a style");
    }

    @Test
    void aDrawingAtAnotherScaleIsRefused() {
        String good = front(OUTLINE + GRAIN);
        assertThat(refused(good.replace("width='300mm'", "width='300px'")).what())
                .contains("expected 1 mm for each user unit");
        assertThat(refused(good.replace("height='300mm'", "height='29.9cm'")).what())
                .startsWith("Its height is 299.0 mm");
        assertThat(refused(good.replace(" viewBox='0 0 300 300'", "")).what()).startsWith("Its width is 300.0 mm for");
        assertThat(refused(good.replace("0 0 300 300", "0 0 300")).what()).contains("expected four numbers");
        assertThat(refused(good.replace("0 0 300 300", "0 0 300 0")).what()).contains("expected four numbers");
    }

    @Test
    void aLaterFormatIsRefused() {
        assertThat(refused(front(OUTLINE + GRAIN).replace("data-pattern=", "data-format='2' data-pattern="))
                        .what())
                .isEqualTo("data-format is \"2\"; this program reads 1; read it with the program that wrote it.");
    }

    @Test
    void piecesEdgesAndFoldsMustBeNamedOnce() {
        String piece = group("data-piece='front' data-kind='skirt front' data-cut='1'", OUTLINE + GRAIN);
        assertThat(refused(sheet(piece + piece)).what()).contains("two pieces have this name");
        assertThat(refused(front(OUTLINE.replace("'waist'", "'side'") + GRAIN)).what())
                .contains("two edges are named \"side\"");
        assertThat(refused(front(OUTLINE.replace("'side'", "'side' data-line='fold'") + GRAIN))
                        .what())
                .contains("a second fold");
        assertThat(refused(rectangleWith("<path data-line='stitching' d='M0 0 L1 1'/>"))
                        .what())
                .contains("A stitching line has no data-edge");
        assertThat(refused(rectangleWith(piece)).what()).contains("Another piece lies within it");
    }

    @Test
    void anEdgeThatIsNoLineIsRefused() {
        assertThat(refused(front(OUTLINE.replace("M0 0 L100 0", "M0 0 L100 zero") + GRAIN))
                        .getMessage())
                .contains("edge \"hem\" of piece \"front\": Path data, character 11:");
        assertThat(refused(front(OUTLINE.replace("d='M0 0 L100 0'", "") + GRAIN))
                        .what())
                .contains("Its line is missing");
        assertThat(refused(front(OUTLINE.replace("M0 0 L100 0", "M0 0 L40 0 M50 0 L100 0") + GRAIN))
                        .what())
                .contains("falls into parts 10.0 mm apart");
        assertThat(refused(front(OUTLINE.replace("<path data-edge='hem'", "<rect data-edge='hem'") + GRAIN))
                        .what())
                .contains("It is drawn as rect; expected path");
    }
}
