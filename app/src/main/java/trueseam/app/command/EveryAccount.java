package trueseam.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import trueseam.app.input.OutputFiles;
import trueseam.records.RecordBook;
import trueseam.records.account.Account;

/** A studio's record book as one zip an account, and a list that says whose is which. */
final class EveryAccount {

    private EveryAccount() {}

    /** Writes them; an account that has nothing yet has a zip too, so that nobody looks for it in vain. */
    static String write(RecordBook book, Path folder) {
        List<Account> accounts = book.studio().accounts().list();
        StringBuilder list = new StringBuilder("file,number,name,signs in as,role,state\n");
        int projects = 0;
        for (Account account : accounts) {
            String file = "account-" + account.id() + ".zip";
            projects += BookCommand.Export.write(book.drawer(account.id()), Optional.empty(), folder.resolve(file));
            list.append(String.join(
                            ",",
                            file,
                            Long.toString(account.id()),
                            quoted(account.name()),
                            quoted(account.signIn()),
                            account.role().word(),
                            account.closed() ? "closed" : "open"))
                    .append('\n');
        }
        new OutputFiles().add(folder.resolve("accounts.csv"), list.toString()).write();
        return "Wrote to " + folder + ": accounts: " + accounts.size() + ", projects: " + projects;
    }

    /** RFC 4180, 2: a field with commas or quotes stands in quotes, and a quote in it twice. */
    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
