package trueseam.records.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sqlite.SQLiteDataSource;
import trueseam.records.trouble.RecordBookException;

/** The tables come out the same from nothing and from every earlier version, and keep what is in them. */
class SchemaTest {

    private static EmbeddedPostgres server;

    @TempDir
    private Path folder;

    private int databases;

    @AfterAll
    static void stop() throws IOException {
        if (server != null) {
            server.close();
        }
    }

    private DataSource fresh(Schema schema) throws IOException, SQLException {
        databases++;
        if (schema == Schema.SQLITE) {
            SQLiteDataSource source = new SQLiteDataSource();
            source.setUrl("jdbc:sqlite:" + folder.resolve("book" + databases + ".sqlite"));
            return source;
        }
        if (server == null) {
            server = EmbeddedPostgres.builder().start();
        }
        String name = "book" + databases + "_" + System.identityHashCode(this);
        run(server.getPostgresDatabase(), "create database " + name);
        return server.getDatabase("postgres", name);
    }

    private static void run(DataSource source, String sql) throws SQLException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @ParameterizedTest
    @EnumSource
    void fromEveryEarlierVersionTheTablesComeOutAsFromNothing(Schema schema) throws IOException, SQLException {
        DataSource fresh = fresh(schema);
        upToDate(schema, fresh);
        Set<String> wanted = columns(fresh);
        assertThat(wanted).contains("person.sought", "standing_evidence.amount_mm", "access.what");
        for (MigrationVersion earlier : versions(schema, fresh)) {
            DataSource source = fresh(schema);
            schema.scripts(source).target(earlier).load().migrate();
            boolean hasShared = !earlier.isAtLeast("5"); // since then what is shared is a table of its own
            run(
                    source,
                    "insert into person (id, owner_id, label, note, units, population, photo, archived, sought,"
                            + " created_at, changed_at, version" + (hasShared ? ", shared)" : ")")
                            + " values ('a1', 1, 'Anna', '', 'in', '', null, 0, 'anna', 5, 5, 1"
                            + (hasShared ? ", 0)" : ")"));
            upToDate(schema, source);
            assertThat(columns(source)).as("from version %s", earlier).isEqualTo(wanted);
            try (Connection connection = source.getConnection();
                    ResultSet rows = connection.createStatement().executeQuery("select label from person")) {
                assertThat(rows.next()).isTrue();
                assertThat(rows.getString(1)).isEqualTo("Anna");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theVersionThatNeedsNoMigratingIsThatOfTheNewestScript(Schema schema) throws IOException, SQLException {
        DataSource source = fresh(schema);
        List<MigrationVersion> versions = versions(schema, source);
        assertThat(versions.get(versions.size() - 1).getVersion()).isEqualTo(String.valueOf(Schema.VERSION));
    }

    @ParameterizedTest
    @EnumSource
    void theSecondTimeNothingIsMigrated(Schema schema) throws IOException, SQLException {
        DataSource source = fresh(schema);
        upToDate(schema, source);
        try (Connection connection = source.getConnection()) {
            DataSource none = null; // migrating would need one
            schema.bringUpToDate(connection, none, "book");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aBookOfANewerProgramIsOneSentenceAndIsLeftAlone(Schema schema) throws IOException, SQLException {
        DataSource source = fresh(schema);
        upToDate(schema, source);
        run(
                source,
                "insert into flyway_schema_history (installed_rank, version, description, type, script, installed_by,"
                        + " execution_time, success) values (99, '99', 'later', 'SQL', 'V99__later.sql', 'x', 1, "
                        + (schema == Schema.SQLITE ? "1)" : "true)"));
        assertThatThrownBy(() -> upToDate(schema, source))
                .isInstanceOf(RecordBookException.class)
                .hasMessageContaining("was made by a newer Trueseam");
    }

    @Test
    void aFileThatIsNoRecordBookIsOneSentence() throws IOException {
        Path file = Files.writeString(folder.resolve("letter.txt"), "Dear Anna, ".repeat(1000));
        assertThatThrownBy(() -> Database.inFile(file, Optional.empty()))
                .isInstanceOf(RecordBookException.class)
                .hasMessageContaining("is not one, or is damaged");
        assertThat(file).content().startsWith("Dear Anna");
    }

    @Test
    void aRecordBookInAFileIsForItsOwnersEyes() throws IOException {
        Path file = folder.resolve("book.sqlite");
        Database.inFile(file, Optional.empty()).close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    private static void upToDate(Schema schema, DataSource source) throws SQLException {
        try (Connection connection = source.getConnection()) {
            schema.bringUpToDate(connection, source, "book");
        }
    }

    private static List<MigrationVersion> versions(Schema schema, DataSource source) {
        List<MigrationVersion> versions = new ArrayList<>();
        for (MigrationInfo info : schema.scripts(source).load().info().all()) {
            versions.add(info.getVersion());
        }
        return versions;
    }

    private static Set<String> columns(DataSource source) throws SQLException {
        Set<String> columns = new TreeSet<>();
        try (Connection connection = source.getConnection();
                ResultSet rows = connection
                        .getMetaData()
                        .getColumns(
                                null,
                                connection
                                                .getMetaData()
                                                .getDatabaseProductName()
                                                .equals("PostgreSQL")
                                        ? "public"
                                        : null,
                                "%",
                                "%")) {
            while (rows.next()) {
                columns.add(rows.getString("TABLE_NAME") + "." + rows.getString("COLUMN_NAME"));
            }
        }
        return columns;
    }
}
