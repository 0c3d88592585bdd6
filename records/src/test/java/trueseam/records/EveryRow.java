package trueseam.records;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every row of a record book as text, read from outside of our own code, so that two record books can be laid side by side. */
final class EveryRow {

    /** All tables but those of accounts, of the trail of access, and of the migrating library. */
    static final List<String> TABLES = List.of(
            "file",
            "person",
            "pattern",
            "pattern_file",
            "project",
            "project_state",
            "measuring_day",
            "reading",
            "size_table",
            "fit",
            "print",
            "sitting",
            "finding",
            "measure_again");

    private EveryRow() {}

    static Map<String, List<String>> of(Books books, String place) {
        Map<String, List<String>> all = new TreeMap<>();
        try (Connection connection = books.connect(place);
                Statement statement = connection.createStatement()) {
            for (String table : TABLES) {
                try (ResultSet rows = statement.executeQuery("select * from " + table)) {
                    List<String> lines = new ArrayList<>();
                    while (rows.next()) {
                        lines.add(line(rows));
                    }
                    lines.sort(null);
                    all.put(table, lines);
                }
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return all;
    }

    private static String line(ResultSet row) throws SQLException {
        ResultSetMetaData heads = row.getMetaData();
        Map<String, String> cells = new TreeMap<>();
        for (int i = 1; i <= heads.getColumnCount(); i++) {
            Object cell = row.getObject(i);
            String text =
                    switch (String.valueOf(heads.getColumnName(i))) {
                        case "content" ->
                            cell instanceof byte[] bytes ? HexFormat.of().formatHex(bytes) : "" + cell;
                        case "mm", "amount_mm" -> cell == null ? "null" : Double.toString(row.getDouble(i));
                        default -> cell instanceof Number ? Long.toString(row.getLong(i)) : "" + cell;
                    };
            cells.put(heads.getColumnName(i), text);
        }
        return cells.toString();
    }
}
