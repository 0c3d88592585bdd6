package trueseam.records.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jdbi.v3.core.statement.SqlStatement;

/** Values for the names in a statement, each of its own SQL type even where it is missing. Used by one thread. */
final class Bound {

    private interface Value {
        void in(SqlStatement<?> statement);
    }

    private final List<Value> values = new ArrayList<>();

    static Bound none() {
        return new Bound();
    }

    static Bound id(String id) {
        return new Bound().text("id", id);
    }

    Bound text(String name, String value) {
        values.add(statement -> statement.bind(name, value));
        return this;
    }

    Bound text(String name, Optional<String> value) {
        values.add(statement -> statement.bindByType(name, value.orElse(null), String.class));
        return this;
    }

    Bound whole(String name, long value) {
        values.add(statement -> statement.bind(name, value));
        return this;
    }

    Bound flag(String name, boolean value) {
        return whole(name, value ? 1 : 0);
    }

    Bound number(String name, OptionalDouble value) {
        Double boxed = value.isPresent() ? value.getAsDouble() : null;
        values.add(statement -> statement.bindByType(name, boxed, Double.class));
        return this;
    }

    Bound bytes(String name, byte[] value) {
        values.add(statement -> statement.bind(name, value));
        return this;
    }

    /** A part of a text that is kept in small letters, wherever it stands; what SQL takes for a pattern is taken as written. */
    Bound part(String name, String text) {
        String literal = Rows.small(text).replace("!", "!!").replace("%", "!%").replace("_", "!_");
        return text(name, "%" + literal + "%");
    }

    void in(SqlStatement<?> statement) {
        values.forEach(value -> value.in(statement));
    }
}
