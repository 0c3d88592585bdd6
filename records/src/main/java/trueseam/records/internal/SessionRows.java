package trueseam.records.internal;

import java.util.Optional;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Sessions;

/** Sessions as rows. */
public final class SessionRows implements Sessions {

    /** A day at school; OWASP, Session Management Cheat Sheet, asks for an end that does not move. */
    private static final long SESSION_MS = 12L * 60 * 60 * 1000;

    /** Failures count for so long. */
    private static final long WINDOW_MS = 15L * 60 * 1000;

    /** At most 960 guesses a day at one account; NIST SP 800-63B, 5.2.2, allows 100 in a row. */
    private static final int MOST_BY_NAME = 10;

    /** A school may come from one address. */
    private static final int MOST_BY_ADDRESS = 100;

    private record Known(Account account, String password, long version) {}

    private final StudioRows rows;

    /**
     * Sessions as rows.
     *
     * @param rows the studio's rows
     */
    public SessionRows(StudioRows rows) {
        this.rows = rows;
    }

    @Override
    public String begin(String signIn, String password, String from) {
        String small = Rows.small(signIn.strip());
        String name = attemptsOf(small);
        String address = Tokens.mark("address " + from);
        // Counted before it is tried, so that many at the same moment are counted too; what was right is taken off
        // again.
        if (tried(address) > MOST_BY_ADDRESS || tried(name) > MOST_BY_NAME) {
            throw AccountException.wait("That was tried too often; wait a quarter of an hour, then sign in again.");
        }
        Optional<Known> known = known(small);
        boolean right;
        if (known.isPresent()) {
            right = Passwords.fits(password, known.get().password());
        } else {
            Passwords.fitsNobody(password);
            right = false;
        }
        if (!right) {
            throw AccountException.refused("Name and password do not belong together; try again, or ask the studio's"
                    + " owner for a link to set a new password.");
        }
        String token = Tokens.fresh();
        rows.together(one -> {
            one.put("delete from attempt where who = :who", Bound.none().text("who", name));
            one.put(
                    "update attempt set failed = failed - 1 where who = :who",
                    Bound.none().text("who", address));
            one.put("delete from session where ends_at <= :now", Bound.none().whole("now", one.now()));
            return one.put(
                    "insert into session (mark, account_id, session_version, ends_at)"
                            + " values (:mark, :id, :version, :ends)",
                    Bound.none()
                            .text("mark", Tokens.mark(token))
                            .whole("id", known.get().account().id())
                            .whole("version", known.get().version())
                            .whole("ends", one.now() + SESSION_MS));
        });
        return token;
    }

    /** Under which mark failed sign-ins with a name are counted. */
    static String attemptsOf(String signIn) {
        return Tokens.mark("name " + signIn);
    }

    private Optional<Known> known(String signIn) {
        return rows.first(
                "select * from account where sign_in = :sign and closed = 0 and password is not null",
                Bound.none().text("sign", signIn),
                (row, context) ->
                        new Known(AccountRows.account(row), row.getString("password"), row.getLong("session_version")));
    }

    private int tried(String who) {
        return rows.together(one -> {
            one.put("delete from attempt where since <= :old", Bound.none().whole("old", one.now() - WINDOW_MS));
            one.put(
                    "insert into attempt (who, failed, since) values (:who, 1, :now)"
                            + " on conflict (who) do update set failed = attempt.failed + 1",
                    Bound.none().text("who", who).whole("now", one.now()));
            return one.first(
                            "select failed from attempt where who = :who",
                            Bound.none().text("who", who),
                            (row, context) -> row.getInt("failed"))
                    .orElseThrow();
        });
    }

    @Override
    public Optional<Account> of(String token) {
        return rows.first(
                "select account.* from session join account on account.id = session.account_id"
                        + " and account.session_version = session.session_version"
                        + " where session.mark = :mark and session.ends_at > :now and account.closed = 0",
                Bound.none().text("mark", Tokens.mark(token)).whole("now", rows.now()),
                (row, context) -> AccountRows.account(row));
    }

    @Override
    public void end(String token) {
        rows.put("delete from session where mark = :mark", Bound.none().text("mark", Tokens.mark(token)));
    }

    @Override
    public void endAll(long account) {
        rows.put(
                "update account set session_version = session_version + 1 where id = :id",
                Bound.none().whole("id", account));
    }
}
