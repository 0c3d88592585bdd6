package trueseam.intake.tiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts as they are typed. */
class TileChoicesTest {

    @Test
    void aSizeIsAcrossThenDown() {
        assertThat(TileChoices.layout(" 4 x 3 ")).isEqualTo(Optional.of(new TileChoices.Size(4, 3)));
    }

    @Test
    void pagesAreNamedRowByRowWithDashesForEmptyPlaces() {
        assertThat(TileChoices.layout("1 2, 3 / 4 5 -"))
                .isEqualTo(Optional.of(new TileChoices.Rows(List.of(List.of(1, 2, 3), List.of(4, 5, 0)))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "4", "0x3", "1 2 / 2 3", "- -", "a b", "1 2 // 3"})
    void whatIsNoLayoutIsNone(String text) {
        // A single number is one page in one row: it is a layout, and the only one of these.
        assertThat(TileChoices.layout(text).isPresent()).isEqualTo(text.equals("4"));
    }
}
