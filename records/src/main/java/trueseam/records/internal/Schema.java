package trueseam.records.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.OptionalInt;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;

/** The tables, one story for both databases; only the words of these maps differ. */
enum Schema {
    /** Strict tables, so that no text gets into a column of numbers. */
    SQLITE(Map.of("whole", "integer", "number", "real", "bytes", "blob", "strict", "strict")),
    /** Columns hold to their types anyway. */
    POSTGRESQL(Map.of("whole", "bigint", "number", "double precision", "bytes", "bytea", "strict", ""));

    /** The newest script. */
    static final int VERSION = 5;

    private final Map<String, String> words;

    Schema(Map<String, String> words) {
        this.words = words;
    }

    /**
     * Makes or migrates the tables. Where they are up to date, one question finds that out: the migrating library would take longer to
     * load than the rest of the program.
     */
    void bringUpToDate(Connection connection, DataSource source, String where) throws SQLException {
        OptionalInt now = version(connection);
        if (now.isPresent() && now.getAsInt() == VERSION) {
            return;
        }
        if (now.isPresent() && now.getAsInt() > VERSION) {
            throw new RecordBookException(
                    Trouble.NOT_READABLE,
                    "The record book " + where + " was made by a newer Trueseam; use that one, or name another record"
                            + " book.",
                    null);
        }
        try {
            scripts(source).load().migrate();
        } catch (FlywayException e) {
            throw Sentences.opening(where, e);
        }
    }

    /** How the scripts are run, for opening and for tests of migrating. */
    FluentConfiguration scripts(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:trueseam/records/schema")
                .placeholders(words)
                .cleanDisabled(true);
    }

    private static OptionalInt version(Connection connection) throws SQLException {
        try (ResultSet tables = connection.getMetaData().getTables(null, null, "flyway_schema_history", null)) {
            if (!tables.next()) {
                return OptionalInt.empty();
            }
        }
        try (Statement ask = connection.createStatement();
                ResultSet rows = ask.executeQuery("select version, success from flyway_schema_history"
                        + " where version is not null order by installed_rank desc")) {
            return rows.next() && rows.getBoolean("success")
                    ? OptionalInt.of(Integer.parseInt(rows.getString("version")))
                    : OptionalInt.empty();
        }
    }
}
