package trueseam.records.internal;

import java.util.Optional;
import trueseam.records.person.Reminding;

/** When to measure again, as a row. */
public final class RemindingRows implements Reminding {

    private final Rows rows;

    /**
     * The reminder as a row.
     *
     * @param rows the owner's rows
     */
    public RemindingRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public Optional<Pause> told() {
        return rows.first(
                "select months, growing_months from measure_again where owner_id = :owner",
                Bound.none(),
                (row, context) -> new Pause(row.getInt("months"), row.getInt("growing_months")));
    }

    @Override
    public void tell(Pause pause) {
        rows.put(
                "insert into measure_again (owner_id, months, growing_months) values (:owner, :months, :growing)"
                        + " on conflict (owner_id) do update set months = :months, growing_months = :growing",
                Bound.none().whole("months", pause.months()).whole("growing", pause.growingMonths()));
    }
}
