package trueseam.app.input;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.account.Account;

/** Whose part of a record book that several share. */
public final class AccountOption {

    @Option(
            names = "--account",
            paramLabel = "NAME",
            description =
                    "In a studio's record book: whose part, by the name that she signs in with. Default: the first"
                            + " owner's, which is everything where one person works alone.")
    private String account;

    /** For the command line. */
    public AccountOption() {}

    /**
     * The part that was named.
     *
     * @param book the record book
     * @return what that account has in it
     * @throws InputException if nobody signs in with that name
     */
    public Drawer drawer(RecordBook book) {
        if (account == null) {
            return book.drawer(RecordBook.SINGLE_OWNER);
        }
        String small = account.strip().toLowerCase(Locale.ROOT);
        List<Account> accounts = book.studio().accounts().list();
        return accounts.stream()
                .filter(one ->
                        one.signIn().equals(small) || Long.toString(one.id()).equals(small))
                .findFirst()
                .map(one -> book.drawer(one.id()))
                .orElseThrow(() -> new InputException("Nobody signs in to this record book as " + account.strip()
                        + "; the screen Accounts and accounts.csv of an export of every account have the names."));
    }

    /**
     * Whether an account was named.
     *
     * @return true if it was
     */
    public boolean isNamed() {
        return account != null;
    }
}
