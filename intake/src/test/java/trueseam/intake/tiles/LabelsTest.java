package trueseam.intake.tiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Caption;

/** Ways of labelling pages. */
class LabelsTest {

    private static List<Page> pages(String... labels) {
        List<Page> pages = new ArrayList<>();
        for (String label : labels) {
            List<Caption> captions = List.of(
                    new Caption(label, new Point(20, 20), 5, ""), new Caption("cut 2", new Point(99, 99), 5, ""));
            pages.add(new Page(pages.size() + 1, 210, 297, List.of(), captions, List.of(), 0));
        }
        return pages;
    }

    @ParameterizedTest
    @CsvSource({
        "A1|A2|B1|B2",
        "1A|1B|2A|2B",
        "1-1|1-2|2-1|2-2",
        "row 1 col 1|row 1 col 2|row 2 col 1|row 2 col 2",
        "R1C1|R1C2|R2C1|R2C2",
        "column 1 row 1|column 2 row 1|column 1 row 2|column 2 row 2",
        "Page A-1|Page A-2|Page B-1|Page B-2"
    })
    void rowsAndColumnsAreRead(String labels) {
        List<Labels.Found> found = Labels.of(pages(labels.split("\\|")));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).grids().get(0).cells())
                .isEqualTo(Map.of(0, new Cell(0, 0), 1, new Cell(0, 1), 2, new Cell(1, 0), 3, new Cell(1, 1)));
    }

    @ParameterizedTest
    @CsvSource({"Page 1 of 9|Page 2 of 9|Page 5 of 9", "1/9|2/9|5/9", "1|2|5", "sheet 1|sheet 2|sheet 5"})
    void numbersAreRead(String labels) {
        assertThat(Labels.of(pages(labels.split("\\|"))).stream().map(Labels.Found::numbers))
                .contains(Map.of(0, 1, 1, 2, 2, 5));
    }

    @Test
    void aWordThatTwoPagesShareIsNoLabel() {
        assertThat(Labels.of(pages("A1", "A1", "A2"))).isEmpty();
    }

    @Test
    void aCoverWithoutALabelDoesNotMatter() {
        assertThat(Labels.of(pages("Read me", "A1", "A2", "A3", "B1"))).hasSize(1);
    }
}
