package trueseam.records.internal;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;
import trueseam.records.trouble.OutdatedException;

/**
 * The rows of one owner. The ownership of rows is held to here and nowhere else: every statement has {@code :owner} in it, which is bound
 * to this owner. Safe for use by several threads, but for what is given to {@link #together}.
 */
public final class Rows {

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Database database;
    private final Optional<Handle> within;
    private final long owner;
    private final Clock clock;

    /**
     * The rows of one owner.
     *
     * @param database where they are
     * @param owner the owner's account
     * @param clock what time it is
     */
    public Rows(Database database, long owner, Clock clock) {
        this(database, Optional.empty(), owner, clock);
    }

    /** Rows within a transaction that somebody else began. */
    Rows(Database database, Optional<Handle> within, long owner, Clock clock) {
        this.database = database;
        this.within = within;
        this.owner = owner;
        this.clock = clock;
    }

    /**
     * Does several things as one: all of them, or none.
     *
     * @param <T> what comes of it
     * @param work what is done, with rows that are used by this thread alone and not after
     * @return what comes of it
     */
    public <T> T together(Function<Rows, T> work) {
        if (within.isPresent()) {
            return work.apply(this);
        }
        return database.together(handle -> work.apply(new Rows(database, Optional.of(handle), owner, clock)));
    }

    /** Reads several things as they are at one moment, whoever writes meanwhile. */
    <T> T atOneMoment(Function<Rows, T> work) {
        if (within.isPresent()) {
            return work.apply(this);
        }
        return database.atOneMoment(handle -> work.apply(new Rows(database, Optional.of(handle), owner, clock)));
    }

    /**
     * Whose rows they are.
     *
     * @return the owner's account
     */
    public long owner() {
        return owner;
    }

    <T> List<T> all(String sql, Bound values, RowMapper<T> row) {
        return with(handle -> {
            try (var query = handle.createQuery(owned(sql))) {
                bind(query, values);
                return query.map(row).list();
            }
        });
    }

    <T> Optional<T> first(String sql, Bound values, RowMapper<T> row) {
        return with(handle -> {
            try (var query = handle.createQuery(owned(sql))) {
                bind(query, values);
                return query.map(row).findFirst();
            }
        });
    }

    int put(String sql, Bound values) {
        return with(handle -> {
            try (var update = handle.createUpdate(owned(sql))) {
                bind(update, values);
                return update.execute();
            }
        });
    }

    /** A change of one version of something: exactly one row, or it was changed elsewhere. */
    void putOne(String what, String sql, Bound values) {
        if (put(sql, values) != 1) {
            throw new OutdatedException(what);
        }
    }

    void putAll(String sql, List<Bound> each) {
        if (each.isEmpty()) {
            return; // an empty batch is an error to the library
        }
        with(handle -> {
            try (PreparedBatch batch = handle.prepareBatch(owned(sql))) {
                for (Bound values : each) {
                    bind(batch, values);
                    batch.add();
                }
                return batch.execute().length;
            }
        });
    }

    private void bind(SqlStatement<?> statement, Bound values) {
        statement.bind("owner", owner);
        values.in(statement);
    }

    private <T> T with(Function<Handle, T> work) {
        return within.isPresent() ? work.apply(within.get()) : database.with(work);
    }

    private static String owned(String sql) {
        if (!sql.contains(":owner")) {
            throw new IllegalArgumentException("a statement that is bound to no owner: " + sql);
        }
        return sql;
    }

    long now() {
        return clock.millis();
    }

    /** A new mark for a row: 64 bits of chance, the same length as a project's. */
    static String fresh() {
        byte[] bytes = new byte[8];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** Small letters of any script; the databases know only those of English alike. */
    static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
