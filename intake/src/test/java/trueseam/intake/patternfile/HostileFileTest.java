package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static trueseam.intake.patternfile.Drawing.GRAIN;
import static trueseam.intake.patternfile.Drawing.OUTLINE;
import static trueseam.intake.patternfile.Drawing.front;
import static trueseam.intake.patternfile.Drawing.rectangleWith;
import static trueseam.intake.patternfile.Drawing.sheet;

import org.junit.jupiter.api.Test;

/** Files made to do harm, or broken on the way, end in one sentence. */
class HostileFileTest {

    private static PatternFileException refused(String text) {
        PatternFileException e =
                catchThrowableOfType(PatternFileException.class, () -> PatternFile.read("x.svg", text));
        assertThat(e).isNotNull();
        assertThat(e.getMessage())
                .startsWith("x.svg")
                .endsWith(".")
                .doesNotContain("\n")
                .hasSizeLessThan(400);
        return e;
    }

    @Test
    void entitiesThatGrowAreRefused() {
        StringBuilder bomb = new StringBuilder("<?xml version='1.0'?><!DOCTYPE svg [<!ENTITY a0 'ha'>");
        for (int i = 1; i < 40; i++) {
            bomb.append("<!ENTITY a%d '&a%d;&a%d;'>".formatted(i, i - 1, i - 1));
        }
        bomb.append("]>").append(sheet("<text>&a39;</text>"));
        assertThat(refused(bomb.toString()).what()).contains("document type");
    }

    @Test
    void entitiesThatReachOutsideAreRefused() {
        String outside = "<!DOCTYPE svg [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>" + sheet("<g data-piece='&e;'/>");
        assertThat(refused(outside).what()).doesNotContain("root");
        assertThat(refused("<!DOCTYPE svg SYSTEM 'file:///nowhere/svg.dtd'>" + front(OUTLINE + GRAIN))
                        .what())
                .contains("document type");
        assertThat(refused(rectangleWith("<text>&e;</text>")).what()).isNotBlank();
    }

    @Test
    void groupsNestedTooDeepAreRefused() {
        assertThat(refused(front(OUTLINE + "<g>".repeat(100_000))).what()).contains("nested more than 100 deep");
    }

    @Test
    void tooManyElementsAndTooMuchTextAreRefused() {
        assertThat(refused(rectangleWith("<g/>".repeat(200_001))).what()).contains("More than 200000 elements");
        assertThat(refused(" ".repeat(SvgTree.MOST_CHARACTERS + 1)).what()).contains("20000001 characters");
    }

    @Test
    void numbersThatAreNoneAreRefused() {
        for (String number : new String[] {"1e400", "-1e400", "1e7", "NaN", "Infinity", "1".repeat(500), "0x10"}) {
            assertThat(refused(front(OUTLINE.replace("L100 0", "L100 " + number) + GRAIN))
                            .what())
                    .contains("Path data");
            assertThat(refused(front(OUTLINE.replace("data-allowance='40'", "data-allowance='" + number + "'") + GRAIN))
                            .what())
                    .containsAnyOf("data-allowance is", "an allowance of");
        }
    }

    @Test
    void aFileCutShortAnywhereIsRefused() {
        String text = PatternFile.write(Blocks.pattern());
        int whole = text.lastIndexOf("</svg>") + "</svg>".length();
        for (int length = 0; length < whole; length += 7) {
            refused(text.substring(0, length));
        }
    }

    @Test
    void aFileOfAnotherEncodingOrNoTextAtAllIsRefused() {
        refused("\u0000\u0001\u0002");
        refused("PK\u0003\u0004");
        refused("\ufeff");
        refused("<svg xmlns='http://www.w3.org/2000/svg' data-pattern='a\u0000b'/>");
    }
}
