package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pieces laid on cloth by the program as its user runs it. */
class LayCommandLineTest {

    @TempDir
    Path folder;

    private Ran run(String... args) throws Exception {
        return Ran.in(folder, "", args);
    }

    @Test
    void aBodiceAndASkirtAreLaidTogetherAndTheSameSeedGivesTheSameLayout() throws Exception {
        run("draft", "bodice", "--table", "misses", "--size", "14", "--out", "bodice.svg");
        run("draft", "skirt", "--table", "misses", "--size", "14", "--out", "skirt.svg");
        String[] asked = {
            "lay",
            "bodice.svg",
            "skirt.svg",
            "--width",
            "150cm",
            "--fold",
            "--nap",
            "--rounds",
            "3",
            "--units",
            "cm",
            "--out"
        };
        Ran one = run(with(asked, "one"));
        assertThat(one.code()).as(one.err()).isZero();
        assertThat(run(with(asked, "two")).code()).isZero();
        assertThat(one.out())
                .contains("150 cm wide, folded lengthwise:")
                .contains("buy ")
                .contains("Pin all pieces before you cut");
        JsonNode first =
                new ObjectMapper().readTree(folder.resolve("one/layout.json").toFile());
        assertThat(first.get("rounds").asInt()).isEqualTo(3);
        assertThat(first.get("pieces").size()).isEqualTo(5);
        assertThat(Files.readString(folder.resolve("two/layout.json")))
                .isEqualTo(Files.readString(folder.resolve("one/layout.json")));
        assertThat(Files.readString(folder.resolve("one/layout.svg"))).contains("data-piece=\"skirt front\"");
        assertThat(Files.size(folder.resolve("one/layout.pdf"))).isGreaterThan(2000);
        for (JsonNode piece : first.get("pieces")) {
            // As a dressmaker pins: both ends of the grainline as far from the selvage.
            double a = piece.get("grainEnds").get(0).get("acrossMm").asDouble();
            double b = piece.get("grainEnds").get(1).get("acrossMm").asDouble();
            assertThat(a).isCloseTo(b, org.assertj.core.data.Offset.offset(0.02));
        }
    }

    @Test
    void halfOfNarrowClothTooNarrowForAPieceIsSaidAndASingleLayerTaken() throws Exception {
        run("draft", "trousers", "--table", "misses", "--size", "14", "--out", "trousers.svg");
        Ran ran = run("lay", "trousers.svg", "--width", "26in", "--rounds", "1", "--out", "layout");
        Ran asked = run("lay", "trousers.svg", "--width", "26in", "--fold", "--rounds", "1", "--out", "no");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("laid in a single layer");
        assertThat(asked.code()).isEqualTo(2);
        assertThat(asked.err().strip())
                .contains("does not fit across the cloth")
                .doesNotContain("\n");
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void whatIsNoClothIsRefusedInOneSentence() throws Exception {
        run("draft", "skirt", "--table", "misses", "--size", "14", "--out", "skirt.svg");
        for (String[] bad : new String[][] {
            {"--width", "150cm", "--nap", "--crosswise", "fold it lengthwise"},
            {"--width", "1cm", "--nap", "--single", "is not sold"},
            {"--width", "150cm", "--shrink", "80", "less than 50 %"},
            {"--width", "150cm", "--flaw", "1cm,2cm", "needs four lengths"},
            {"--width", "150cm", "--cut-from", "wool", "fashion, lining or interfacing"},
            {"--width", "150cm", "--cut-from", "lining", "is cut from lining"},
            {"--width", "150cm", "--tilt", "20", "hangs"},
            {"--width", "150cm", "--match", "pocket", "has no such seam"},
            {"--width", "150cm", "--piece", "pocket", "has no such piece"}
        }) {
            Ran refused = run("lay", "skirt.svg", bad[0], bad[1], bad[2], bad[3], "--rounds", "1", "--out", "no");
            assertThat(refused.code()).as(String.join(" ", bad)).isEqualTo(2);
            assertThat(refused.err().strip()).contains(bad[bad.length - 1]).doesNotContain("\n");
            assertThat(folder.resolve("no")).doesNotExist();
        }
    }

    private static String[] with(String[] args, String last) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 1);
        all[args.length] = last;
        return all;
    }
}
