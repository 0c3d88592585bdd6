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
    void aWaistbandWhoseFoldRunsAcrossItsGrainIsOpenedAndNotLaidAtTheFold() throws Exception {
        run("draft", "skirt", "--table", "misses", "--size", "14", "--with", "waistband", "--out", "skirt.svg");
        Ran fashion = run("lay", "skirt.svg", "--width", "150cm", "--fold", "--rounds", "1", "--out", "fashion");
        String[] stiff = {"--cut-from", "interfacing", "--width", "90cm", "--fold", "--rounds", "1", "--out", "stiff"};
        Ran interfacing = run(with(new String[] {"lay", "skirt.svg"}, stiff));
        assertThat(fashion.code()).as(fashion.err()).isZero();
        assertThat(interfacing.code()).as(interfacing.err()).isZero();
        JsonNode all = new ObjectMapper()
                .readTree(folder.resolve("fashion/layout.json").toFile())
                .get("pieces");
        assertThat(all.findValuesAsText("piece")).containsExactly("skirt front", "skirt back", "waistband");
        assertThat(all.findValuesAsText("form")).containsExactly("at fold", "at fold", "opened");
        JsonNode only = new ObjectMapper()
                .readTree(folder.resolve("stiff/layout.json").toFile())
                .get("pieces");
        assertThat(only.findValuesAsText("piece")).containsExactly("waistband");
    }

    @Test
    void nothingIsTiltedOnStripedCloth() throws Exception {
        run("draft", "dress", "--table", "misses", "--size", "14", "--out", "dress.svg");
        String[] striped = {"--width", "150cm", "--stripes", "0,6cm", "--tilt", "2", "--rounds", "1", "--out", "laid"};
        Ran ran = run(with(new String[] {"lay", "dress.svg"}, striped));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("Stripes show every tilt");
        JsonNode laid =
                new ObjectMapper().readTree(folder.resolve("laid/layout.json").toFile());
        for (JsonNode piece : laid.get("pieces")) {
            assertThat(piece.get("turnDegrees").asDouble() % 180).isZero();
        }
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

    private static String[] with(String[] args, String... more) {
        String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return all;
    }
}
