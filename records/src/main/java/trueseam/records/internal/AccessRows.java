package trueseam.records.internal;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trueseam.records.access.Access;
import trueseam.records.access.AccessTrail;

/** The trail of access as rows. */
public final class AccessRows implements AccessTrail {

    private final Rows rows;

    /**
     * The trail as rows.
     *
     * @param rows the owner's rows
     */
    public AccessRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public void note(long account, String person, String what) {
        rows.put(
                "insert into access (id, owner_id, account_id, person_id, what, happened_at)"
                        + " values (:id, :owner, :account, :person, :what, :now)",
                Bound.id(Rows.fresh())
                        .whole("account", account)
                        .text("person", person)
                        .text("what", what)
                        .whole("now", rows.now()));
    }

    @Override
    public List<Access> of(String person) {
        return rows.all(
                "select * from access where owner_id = :owner and person_id = :id order by happened_at desc, id",
                Bound.id(person),
                (row, context) -> new Access(
                        row.getLong("account_id"),
                        row.getString("person_id"),
                        row.getString("what"),
                        row.getLong("happened_at")));
    }

    private record Named(long account, String name) {}

    @Override
    public Map<Long, String> names() {
        return rows
                .all(
                        "select distinct account.id, account.name from access"
                                + " join account on account.id = access.account_id where access.owner_id = :owner",
                        Bound.none(),
                        (row, context) -> new Named(row.getLong("id"), row.getString("name")))
                .stream()
                .collect(Collectors.toMap(Named::account, Named::name));
    }
}
