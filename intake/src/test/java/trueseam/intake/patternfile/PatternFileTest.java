package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class PatternFileTest {

    private static void keep(String name, String text) throws IOException {
        Files.createDirectories(java.nio.file.Path.of("target"));
        Files.writeString(java.nio.file.Path.of("target", name), text);
    }

    @Test
    void oneOfEverythingReadsBackEqual() throws IOException {
        Pattern pattern = Blocks.pattern();
        String text = PatternFile.write(pattern);
        keep("one-of-everything.svg", text);
        PatternReading read = PatternFile.read("shift.svg", text);
        assertThat(read.findings()).isEmpty();
        assertThat(read.hasFailures()).isFalse();
        assertThat(read.pattern()).isEqualTo(pattern);
    }

    @Test
    void coordinatesAreMillimetresWithYTurnedDown() {
        assertThat(PatternFile.write(Blocks.pattern()))
                .contains("data-edge=\"shoulder\" data-role=\"shoulder\" data-line=\"stitching\""
                        + " data-allowance=\"15\" d=\"M190 -560 L70 -600\"")
                .contains("data-landmark=\"bust point\" x=\"92.5\" y=\"-392.75\"");
    }

    private static Edge drawn(Piece piece, String edge, Point... through) {
        return piece.edge(edge).withPath(Path.through(through));
    }

    @Test
    void theLineBeforeAlteringIsShownAndNotReadBack() throws IOException {
        Pattern pattern = Blocks.pattern();
        Piece front = pattern.piece("front");
        Point hemAtSide = new Point(262, -30);
        List<Edge> edges = List.of(
                drawn(front, "hem", new Point(0, -30), hemAtSide),
                drawn(front, "side", hemAtSide, new Point(230, 400)),
                front.edge("armhole"),
                front.edge("shoulder"),
                front.edge("neck"),
                drawn(front, "centre front", new Point(0, 520), new Point(0, -30)));
        Pattern altered =
                pattern.withPieces(List.of(front.toBuilder().edges(edges).build()));
        String text = PatternFile.write(altered, Optional.of(pattern));
        keep("altered.svg", text);
        assertThat(text).contains("<path class=\"original\" data-line=\"original\" d=\"M250 0 L230 -400\"/>");
        assertThat(PatternFile.read("altered.svg", text).pattern()).isEqualTo(altered);
    }

    @Test
    void aNameThatNoFileCanHoldIsRefused() {
        Pattern pattern = Blocks.pattern();
        Pattern odd = new Pattern("bell \u0007", "", "", "", pattern.pieces(), pattern.seams(), pattern.easeMm());
        assertThat(catchThrowable(() -> PatternFile.write(odd)))
                .isInstanceOf(PatternFileException.class)
                .hasMessageContaining("U+0007")
                .hasMessageEndingWith("take it out.");
    }
}
