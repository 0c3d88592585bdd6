package trueseam.records.internal;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * The rows that belong to no owner: accounts, and what signing in needs. A statement that names any other table is refused, so that
 * nobody's measures can be reached past {@link Rows}. Safe for use by several threads, but for what is given to {@link #together}.
 */
public final class StudioRows {

    private static final Set<String> TABLES = Set.of("account", "session", "invitation", "attempt");

    private static final Pattern TABLE =
            Pattern.compile("\\b(?:from|join|into|(?<!do )update)\\s+(\\w+)(\\s*,)?", Pattern.CASE_INSENSITIVE);

    private final Database database;
    private final Optional<Handle> within;
    private final Clock clock;

    /**
     * The rows of the studio itself.
     *
     * @param database where they are
     * @param clock what time it is
     */
    public StudioRows(Database database, Clock clock) {
        this(database, Optional.empty(), clock);
    }

    private StudioRows(Database database, Optional<Handle> within, Clock clock) {
        this.database = database;
        this.within = within;
        this.clock = clock;
    }

    <T> T together(Function<StudioRows, T> work) {
        return within.isPresent()
                ? work.apply(this)
                : database.together(handle -> work.apply(new StudioRows(database, Optional.of(handle), clock)));
    }

    /** What one owner has, as part of the same doing: for erasing all of it with her account. */
    Rows owned(long owner) {
        return new Rows(database, within, owner, clock);
    }

    <T> List<T> all(String sql, Bound values, RowMapper<T> row) {
        return with(handle -> {
            try (var query = handle.createQuery(allowed(sql))) {
                values.in(query);
                return query.map(row).list();
            }
        });
    }

    <T> Optional<T> first(String sql, Bound values, RowMapper<T> row) {
        return all(sql, values, row).stream().findFirst();
    }

    int put(String sql, Bound values) {
        return with(handle -> {
            try (var update = handle.createUpdate(allowed(sql))) {
                values.in(update);
                return update.execute();
            }
        });
    }

    private <T> T with(Function<Handle, T> work) {
        return within.isPresent() ? work.apply(within.get()) : database.with(work);
    }

    static String allowed(String sql) {
        Matcher table = TABLE.matcher(sql);
        boolean any = false;
        while (table.find()) {
            any = true;
            boolean list = table.group(2) != null; // tables in a list would hide behind the first
            if (list || !TABLES.contains(table.group(1))) {
                throw new IllegalArgumentException("a statement about rows that have an owner: " + sql);
            }
        }
        if (!any) {
            throw new IllegalArgumentException("a statement about no table: " + sql);
        }
        return sql;
    }

    long now() {
        return clock.millis();
    }
}
