package trueseam.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {

    @Test
    void linesAreCountedAsAnEditorCountsThem() {
        Sheet sheet = Sheet.read("t.csv", "# label: Ann\n\na,b\n1,2\n\n# a remark\n3,\"4\n5\"\n6,7\n");
        assertThat(sheet.header()).containsExactly("a", "b");
        assertThat(sheet.rows()).extracting(SheetRow::line).containsExactly(4, 7, 9);
        assertThat(sheet.rows().get(1).cells()).containsExactly("3", "4\n5");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"a,b c\n1,2 1/2\"\n", "a;b c\n1;2 1/2\"\n", "a\tb c\r\n1\t2 1/2\"\r\n", "\ufeffa,b c\n1,2 1/2\""
            })
    void anySpreadsheetsSeparatorWillDo(String text) {
        Sheet sheet = Sheet.read("t.csv", text);
        assertThat(sheet.header()).containsExactly("a", "b c");
        assertThat(sheet.rows()).singleElement().satisfies(row -> assertThat(row.cells())
                .containsExactly("1", "2 1/2\""));
        assertThat(sheet.needColumn("B C")).isEqualTo(1);
    }

    @Test
    void remarksDoNotDecideTheSeparator() {
        Sheet sheet = Sheet.read("t.csv", "# source: one; two; three; four\na,b\n1,2\n");
        assertThat(sheet.header()).containsExactly("a", "b");
    }

    @Test
    void decimalCommasNeedNoQuotesBetweenSemicolons() {
        assertThat(Sheet.read("t.csv", "measure;value\nbust girth;95,2 cm\n")
                        .rows()
                        .get(0)
                        .cells())
                .containsExactly("bust girth", "95,2 cm");
    }

    @Test
    void remarksAboveTheHeaderAreKept() {
        Sheet sheet =
                Sheet.read("t.csv", "# Label: Ann: the tall one\n#unit:cm\n# just a remark\na\n# label: no more\n");
        assertThat(sheet.remarks()).containsExactly(Map.entry("label", "Ann: the tall one"), Map.entry("unit", "cm"));
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void whatIsWrittenReadsBack() {
        Sheet sheet = new Sheet(
                "t.csv",
                Map.of("label", "Ann"),
                List.of("size", "note"),
                List.of(
                        new SheetRow(3, List.of("#1", "comma, quote \" and\nline")),
                        new SheetRow(5, List.of("", " blanks ")),
                        new SheetRow(6, List.of("5/8\"", ""))));
        assertThat(Sheet.read("t.csv", sheet.text())).isEqualTo(sheet);
    }

    @Test
    void anEmptyFileAndAnOpenQuoteAreRefused() {
        assertThatThrownBy(() -> Sheet.read("t.csv", "\n# only a remark\n"))
                .isInstanceOf(SheetException.class)
                .hasMessageStartingWith("t.csv: The file is empty");
        assertThatThrownBy(() -> Sheet.read("t.csv", "a,b\n1,2\n3,\"4\n"))
                .isInstanceOfSatisfying(SheetException.class, e -> {
                    assertThat(e.file()).isEqualTo("t.csv");
                    assertThat(e.line()).isPositive();
                    assertThat(e.what()).contains("quote mark that is not closed");
                });
        assertThatThrownBy(() -> Sheet.read("t.csv", "a,b\n").needColumn("c"))
                .hasMessage("t.csv: The header has no column \"c\"; it is: a, b.");
    }
}
