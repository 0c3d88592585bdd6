package trueseam.records.internal;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.ConnectionFactory;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.StatementExceptions;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;

/** One of the two databases, ready for use. Safe for use by several threads. */
public final class Database implements AutoCloseable {

    /** Whoever else has the file locked, a backup for example, is done after this. */
    private static final int BUSY_MS = 5_000;

    /** Fifty people at once rarely save in the same hundredth of a second; a school's server allows a hundred connections. */
    private static final int MOST_CONNECTIONS = 10;

    private static final int CONNECT_S = 5;

    /** A statement that has no answer after this has lost its server. */
    private static final int ANSWER_S = 30;

    private final String where;
    private final Jdbi jdbi;
    private final AutoCloseable source;

    private Database(String where, Jdbi jdbi, AutoCloseable source) {
        this.where = where;
        this.jdbi = jdbi;
        this.source = source;
        // Otherwise the library puts the values of a statement, which are personal, into what it says, and that may be
        // logged.
        jdbi.getConfig(StatementExceptions.class).setMessageRendering(StatementExceptions.MessageRendering.NONE);
    }

    /**
     * The database in a file.
     *
     * @param file the file; it is made if it is not there, for its owner's eyes alone
     * @param mostPages how many pages of 4096 bytes it may have; usually as many as there is room for
     * @return the database, up to date
     */
    public static Database inFile(Path file, Optional<Integer> mostPages) {
        String where = file.toString();
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MS);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true"); // what is erased is overwritten
        mostPages.ifPresent(config::setMaxPageCount);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        try {
            prepared(file);
            Connection connection = source.getConnection();
            try {
                Schema.SQLITE.bringUpToDate(connection, source, where);
                OneAtATime one = new OneAtATime(connection);
                return new Database(where, Jdbi.create(one), one);
            } catch (SQLException | RuntimeException e) {
                connection.close();
                throw e;
            }
        } catch (SQLException | IOException e) {
            throw Sentences.opening(where, e);
        }
    }

    private static void prepared(Path file) throws IOException {
        if (file.getParent() != null) {
            Files.createDirectories(file.getParent());
        }
        if (!Files.exists(file)) {
            if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            } else {
                Files.createFile(file);
            }
        }
    }

    /**
     * The database at a PostgreSQL server.
     *
     * @param url its address
     * @param password the password, unless the address has it or none is needed
     * @return the database, up to date
     */
    public static Database atServer(String url, Optional<String> password) {
        String where = url.replaceFirst("\\?.*", ""); // a password may stand behind it
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        password.ifPresent(config::setPassword);
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(2);
        config.setConnectionTimeout(CONNECT_S * 1000L);
        config.setPoolName("record-book");
        config.addDataSourceProperty("connectTimeout", String.valueOf(CONNECT_S));
        config.addDataSourceProperty("socketTimeout", String.valueOf(ANSWER_S));
        config.addDataSourceProperty("tcpKeepAlive", "true");
        // Otherwise the server puts values of rows, which are personal, into what it says, and that may be logged.
        config.addDataSourceProperty("logServerErrorDetail", "false");
        // Rows of one batch, such as the readings of a day, go out as one statement.
        config.addDataSourceProperty("reWriteBatchedInserts", "true");
        config.addDataSourceProperty("ApplicationName", "trueseam");
        config.setInitializationFailTimeout(-1); // so that the first connection says what is wrong in our words
        HikariDataSource pool = new HikariDataSource(config);
        try (Connection connection = pool.getConnection()) {
            Schema.POSTGRESQL.bringUpToDate(connection, pool, where);
            return new Database(where, Jdbi.create((DataSource) pool), pool);
        } catch (SQLException e) {
            pool.close();
            throw Sentences.opening(where, e);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    /**
     * Where it is.
     *
     * @return the file, or the server's address without a password
     */
    public String where() {
        return where;
    }

    <T> T with(Function<Handle, T> work) {
        try {
            return jdbi.withHandle(work::apply);
        } catch (JdbiException e) {
            throw Sentences.using(where, e);
        }
    }

    <T> T together(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw Sentences.using(where, e);
        }
    }

    /** SQL:1999: what was read once in a repeatable read is the same to its end; at a server that is one snapshot. */
    <T> T atOneMoment(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, work::apply);
        } catch (JdbiException e) {
            throw Sentences.using(where, e);
        }
    }

    @Override
    public void close() {
        try {
            source.close();
        } catch (Exception e) {
            throw new RecordBookException(Trouble.NOT_REACHED, "The record book " + where + " could not be closed.", e);
        }
    }

    /** One connection that one thread has at a time: the file has one writer, and a reader sees only what is whole. */
    private record OneAtATime(Connection connection, ReentrantLock lock) implements ConnectionFactory, AutoCloseable {

        OneAtATime(Connection connection) {
            this(connection, new ReentrantLock(true));
        }

        @Override
        public Connection openConnection() {
            lock.lock();
            return connection;
        }

        @Override
        public void closeConnection(Connection used) {
            lock.unlock();
        }

        /** Waits for who is writing. */
        @Override
        public void close() throws SQLException {
            lock.lock();
            try {
                connection.close();
            } finally {
                lock.unlock();
            }
        }
    }
}
