package trueseam.drafting;

import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import trueseam.intake.size.SizeTables;

/** The figure of every size of every table that ships with the program. */
final class TableFigures {

    private TableFigures() {}

    static Stream<Named<DraftFigure>> all() {
        return SizeTables.builtIn().stream().flatMap(table -> table.rows().stream()
                .map(row -> Named.of(table.name() + " " + row.size(), DraftFigure.of(table, row.size()))));
    }

    static DraftFigure misses(String size) {
        return DraftFigure.of(SizeTables.named("misses"), size);
    }
}
