package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.pattern.KeptTable;
import trueseam.records.pattern.Tables;

/** Size tables as rows. */
public final class TableRows implements Tables {

    private final Rows rows;

    /**
     * Size tables as rows.
     *
     * @param rows the owner's rows
     */
    public TableRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public List<KeptTable> list(boolean archivedToo) {
        return rows.all(
                "select * from size_table where owner_id = :owner"
                        + (archivedToo ? "" : " and archived = 0")
                        + " order by name, id",
                Bound.none(),
                (row, context) -> table(row));
    }

    @Override
    public Optional<KeptTable> find(String id) {
        return rows.first(
                "select * from size_table where owner_id = :owner and id = :id",
                Bound.id(id),
                (row, context) -> table(row));
    }

    @Override
    public KeptTable add(KeptTable table) {
        String id = Rows.fresh();
        rows.put(
                "insert into size_table (id, owner_id, name, source, mark, archived, created_at, changed_at, version)"
                        + " values (:id, :owner, :name, :source, :mark, :archived, :now, :now, 1)",
                values(table, id));
        return new KeptTable(id, table.name(), table.source(), table.file(), table.archived(), 1);
    }

    @Override
    public KeptTable change(KeptTable table) {
        rows.putOne(
                "size table",
                "update size_table set name = :name, source = :source, mark = :mark, archived = :archived,"
                        + " changed_at = :now, version = version + 1"
                        + " where owner_id = :owner and id = :id and version = :version",
                values(table, table.id()).whole("version", table.version()));
        return new KeptTable(
                table.id(), table.name(), table.source(), table.file(), table.archived(), table.version() + 1);
    }

    @Override
    public boolean delete(String id) {
        return rows.put("delete from size_table where owner_id = :owner and id = :id", Bound.id(id)) == 1;
    }

    private Bound values(KeptTable table, String id) {
        return Bound.id(id)
                .text("name", table.name())
                .text("source", table.source())
                .text("mark", table.file())
                .flag("archived", table.archived())
                .whole("now", rows.now());
    }

    private static KeptTable table(ResultSet row) throws SQLException {
        return new KeptTable(
                row.getString("id"),
                row.getString("name"),
                row.getString("source"),
                row.getString("mark"),
                row.getInt("archived") == 1,
                row.getLong("version"));
    }
}
