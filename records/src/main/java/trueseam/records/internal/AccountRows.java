package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;

/** Accounts as rows. */
public final class AccountRows implements Accounts {

    private static final long INVITATION_MS = 7L * 24 * 60 * 60 * 1000;
    private static final int LONGEST_NAME = 80;
    private static final int SHORTEST_SIGN_IN = 3;
    /** Hashing is slow on purpose; nobody types more. */
    private static final int LONGEST_PASSWORD = 200;

    private final StudioRows rows;

    /**
     * Accounts as rows.
     *
     * @param rows the studio's rows
     */
    public AccountRows(StudioRows rows) {
        this.rows = rows;
    }

    @Override
    public List<Account> list() {
        return rows.all(
                "select * from account where erased_at is null order by name, id",
                Bound.none(),
                (row, context) -> account(row));
    }

    @Override
    public Optional<Account> find(long id) {
        return rows.first(
                "select * from account where id = :id", Bound.none().whole("id", id), (row, context) -> account(row));
    }

    @Override
    public Account add(String name, Role role) {
        String called = called(name);
        long id = Tokens.number();
        rows.put(
                "insert into account (id, name, role, created_at, version, closed, session_version)"
                        + " values (:id, :name, :role, :now, 1, 0, 1)",
                Bound.none()
                        .whole("id", id)
                        .text("name", called)
                        .text("role", role.word())
                        .whole("now", rows.now()));
        return new Account(id, called, "", role, false);
    }

    @Override
    public String invite(long account) {
        String token = Tokens.fresh();
        return rows.together(one -> {
            if (new AccountRows(one).find(account).filter(a -> !a.closed()).isEmpty()) {
                throw AccountException.refused("There is no such account, or it is closed; open it first.");
            }
            one.put(
                    "delete from invitation where account_id = :id",
                    Bound.none().whole("id", account));
            one.put(
                    "insert into invitation (mark, account_id, ends_at) values (:mark, :id, :ends)",
                    Bound.none()
                            .text("mark", Tokens.mark(token))
                            .whole("id", account)
                            .whole("ends", one.now() + INVITATION_MS));
            return token;
        });
    }

    @Override
    public Optional<Account> invited(String token) {
        return rows.first(
                "select account.* from invitation join account on account.id = invitation.account_id"
                        + " where invitation.mark = :mark and invitation.ends_at > :now and account.closed = 0",
                Bound.none().text("mark", Tokens.mark(token)).whole("now", rows.now()),
                (row, context) -> account(row));
    }

    @Override
    public Account enter(String token, String name, String signIn, String password) {
        String called = called(name);
        String small = Rows.small(signIn.strip());
        if (small.length() < SHORTEST_SIGN_IN || small.length() > LONGEST_NAME || small.matches(".*\\s.*")) {
            throw AccountException.refused(
                    "The name to sign in with has 3 to 80 characters and no blank; an e-mail address will do.");
        }
        if (password.length() < SHORTEST_PASSWORD || password.length() > LONGEST_PASSWORD) {
            throw AccountException.refused("A password has " + SHORTEST_PASSWORD + " to " + LONGEST_PASSWORD
                    + " characters; four words that do not belong together are a good one.");
        }
        if (invited(token).isEmpty()) {
            throw over(); // before the slow hashing, which would otherwise be free for everybody
        }
        String kept = Passwords.kept(password);
        return rows.together(one -> {
            AccountRows accounts = new AccountRows(one);
            Account account = accounts.invited(token).orElseThrow(AccountRows::over);
            boolean taken = one.first(
                            "select id from account where sign_in = :sign and id <> :id",
                            Bound.none().text("sign", small).whole("id", account.id()),
                            (row, context) -> row.getLong("id"))
                    .isPresent();
            if (taken) {
                throw AccountException.refused("Somebody else signs in with that name; take another one.");
            }
            one.put(
                    "delete from invitation where account_id = :id",
                    Bound.none().whole("id", account.id()));
            one.put(
                    "update account set name = :name, sign_in = :sign, password = :password, erased_at = null,"
                            + " version = version + 1, session_version = session_version + 1 where id = :id",
                    Bound.none()
                            .text("name", called)
                            .text("sign", small)
                            .text("password", kept)
                            .whole("id", account.id()));
            return accounts.find(account.id()).orElseThrow();
        });
    }

    private static AccountException over() {
        return AccountException.refused(
                "This link was used already or is too old; ask the studio's owner for a new one.");
    }

    @Override
    public void close(long account, boolean closed) {
        rows.together(one -> {
            one.put(
                    "update account set closed = :closed, version = version + 1, session_version = session_version + 1"
                            + " where id = :id and erased_at is null",
                    Bound.none().flag("closed", closed).whole("id", account));
            one.put(
                    "delete from invitation where account_id = :id",
                    Bound.none().whole("id", account));
            if (!new AccountRows(one).hasOwner()) {
                throw AccountException.refused("This is the studio's only owner; make another one before closing it.");
            }
            return true;
        });
    }

    @Override
    public boolean hasOwner() {
        return list().stream()
                .anyMatch(a ->
                        a.role() == Role.OWNER && !a.closed() && !a.signIn().isEmpty());
    }

    /** The first account is made by the tables and can be taken by a new owner again; all others are never opened again. */
    @Override
    public void erase(long account, long by) {
        rows.together(one -> {
            Account gone = new AccountRows(one)
                    .list().stream()
                            .filter(a -> a.id() == account)
                            .findFirst()
                            .orElseThrow(() -> AccountException.refused("There is no such account; reload the page."));
            one.put(
                    "update account set name = '', sign_in = null, password = null, created_at = 0, erased_at = :now,"
                            + " closed = case when id = :first then 0 else 1 end, version = version + 1,"
                            + " session_version = session_version + 1 where id = :id",
                    Bound.none().whole("now", one.now()).whole("first", FIRST).whole("id", account));
            one.put(
                    "delete from attempt where who = :who",
                    Bound.none().text("who", SessionRows.attemptsOf(gone.signIn())));
            if (!new AccountRows(one).hasOwner()) {
                throw AccountException.refused("This is the studio's only owner; make another one before erasing it.");
            }
            Rows hers = one.owned(account);
            ErasedRows.erase(hers);
            new AccessRows(hers).note(by, "", "erased the account");
            return true;
        });
    }

    @Override
    public List<Long> erased() {
        return rows.all(
                "select erased_at from account where erased_at is not null order by erased_at desc",
                Bound.none(),
                (row, context) -> row.getLong("erased_at"));
    }

    private static String called(String name) {
        String called = name.strip();
        if (called.isEmpty() || called.length() > LONGEST_NAME) {
            throw AccountException.refused("A name has 1 to 80 characters; a first name is enough.");
        }
        return called;
    }

    static Account account(ResultSet row) throws SQLException {
        return new Account(
                row.getLong("id"),
                row.getString("name"),
                Optional.ofNullable(row.getString("sign_in")).orElse(""),
                Role.valueOf(row.getString("role").toUpperCase(Locale.ROOT)),
                row.getInt("closed") == 1);
    }
}
