package trueseam.intake.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.garment.size.Figure;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.sheet.SheetException;

class SizeTableCsvTest {
    private static final String HEAD = "# name: mine\n# source: my own blocks\n";

    @Test
    void usersAddTheirOwnTable() {
        SizeTable table = SizeTableCsv.read(
                "mine.csv",
                HEAD
                        + "# unit: cm\n# note on height: a guess\nsize,Full bust,waist girth (cm),height\nA,88,\"70,5\",168\nB,36 in,28 in,168\n");
        assertThat(table.name()).isEqualTo("mine");
        assertThat(table.columns()).containsExactly(Measure.BUST_GIRTH, Measure.WAIST_GIRTH, Measure.STATURE);
        assertThat(table.mm("A", Measure.WAIST_GIRTH)).isEqualTo(705);
        assertThat(table.mm("b", Measure.BUST_GIRTH)).isEqualTo(914.4);
        assertThat(table.notes()).containsExactly(Map.entry(Measure.STATURE, "a guess"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "size,bust girth~A,88~B,wide           | 5 | The bust girth: \"wide\" is not a length",
                "size,bust girth~A,-88                 | 4 | The bust girth must be above zero, not -88.",
                "size,bust girth~A,0                   | 4 | The bust girth must be above zero, not 0.",
                "size,bust girth,waist girth~A,88      | 4 | The waist girth: \"\" is not a length: nothing is written",
                "size,bust girth~A,88,5                | 4 | The line has more cells than the header",
                "size,bust girth~,88                   | 4 | The size has no name.",
                "size,bust girth~A,88~A,90             | 0 | Size table \"mine\" has size A twice.",
                "size,bust girth,full bust~A,88,88     | 0 | Size table \"mine\" has a measure twice.",
                "size,bust grith~A,88                  | 0 | did you mean \"bust girth\"?",
                "bust girth~88                         | 0 | The header has no column \"size\"",
                "size,bust girth                       | 0 | Size table \"mine\" has no sizes or no measures."
            })
    void aDefectiveTableIsRefusedWithItsLine(String lines, int line, String what) {
        assertThatThrownBy(() -> SizeTableCsv.read("mine.csv", HEAD + lines.replace('~', '\n') + "\n"))
                .isInstanceOfSatisfying(SheetException.class, e -> {
                    assertThat(e.line()).isEqualTo(line);
                    assertThat(e.file()).isEqualTo("mine.csv");
                })
                .hasMessageContaining(what);
    }

    @Test
    void nameSourceAndAKnownUnitAreNeeded() {
        assertThatThrownBy(() -> SizeTableCsv.read("mine.csv", "# name: mine\nsize,bust girth\nA,36\n"))
                .hasMessageContaining("A line \"# source: ...\" above the header was expected");
        assertThatThrownBy(() -> SizeTableCsv.read("mine.csv", HEAD + "# unit: ell\nsize,bust girth\nA,36\n"))
                .hasMessageContaining("The unit is \"ell\"; in, cm or mm was expected.");
    }

    @Test
    void builtInTablesAreLossless() {
        for (SizeTable table : SizeTables.builtIn()) {
            for (LengthUnit unit : LengthUnit.values()) {
                assertThat(SizeTableCsv.read("x", SizeTableCsv.write(table, unit)))
                        .isEqualTo(table);
            }
        }
    }

    static Stream<Long> seeds() {
        return LongStream.rangeClosed(1, 200).boxed();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void writingAndReadingGivesAnyTableBack(long seed) {
        Random random = new Random(seed);
        List<Measure> columns = new ArrayList<>(List.of(Measure.values()));
        Collections.shuffle(columns, random);
        columns = columns.subList(0, 1 + random.nextInt(8));
        List<SizeRow> rows = new ArrayList<>();
        int sizes = 1 + random.nextInt(6);
        for (int size = 0; size < sizes; size++) {
            Map<Measure, Double> mm = new EnumMap<>(Measure.class);
            for (Measure measure : columns) {
                mm.put(
                        measure,
                        random.nextBoolean() ? 1 + random.nextInt(900) * 25.4 / 16 : 1 + random.nextDouble() * 999);
            }
            rows.add(new SizeRow(random.nextBoolean() ? "#" + size : size + ", tall", mm));
        }
        SizeTable table = new SizeTable(
                "my \"own\", table",
                "source: mine",
                columns,
                rows,
                random.nextBoolean() ? new Figure("", "") : new Figure("Tall", "5'8\" and over"),
                random.nextBoolean() ? Map.of() : Map.of(columns.get(0), "computed; see there"));
        for (LengthUnit unit : LengthUnit.values()) {
            assertThat(SizeTableCsv.read("x", SizeTableCsv.write(table, unit))).isEqualTo(table);
        }
    }
}
