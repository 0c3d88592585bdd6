package trueseam.records;

import java.time.Clock;
import trueseam.records.account.Accounts;
import trueseam.records.account.Sessions;
import trueseam.records.internal.AccountRows;
import trueseam.records.internal.Database;
import trueseam.records.internal.SessionRows;
import trueseam.records.internal.StudioRows;

/** What a studio has in the record book beside the drawers of its accounts. Safe for use by several threads. */
public final class Studio {

    private final StudioRows rows;

    Studio(Database database, Clock clock) {
        this.rows = new StudioRows(database, clock);
    }

    /**
     * The accounts.
     *
     * @return accounts
     */
    public Accounts accounts() {
        return new AccountRows(rows);
    }

    /**
     * Who is signed in.
     *
     * @return sessions
     */
    public Sessions sessions() {
        return new SessionRows(rows);
    }
}
