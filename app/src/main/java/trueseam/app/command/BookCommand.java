package trueseam.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.AccountOption;
import trueseam.app.input.InputException;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.RecordBookOption;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.archive.Brought;
import trueseam.records.person.Person;
import trueseam.worktable.page.Desk;
import trueseam.worktable.print.MadeSheets;
import trueseam.worktable.project.Shelf;

/** The record book as one file of open formats, out and back. */
@Command(
        name = "book",
        description = "Take the record book, or one person of it, out as one file of open formats, and bring it back.",
        mixinStandardHelpOptions = true,
        subcommands = {BookCommand.Export.class, BookCommand.BringBack.class},
        footer = {
            "",
            "Example:",
            "  trueseam book export --person Anna --out anna.zip",
            "  trueseam book bring-back anna.zip --record-book elsewhere.sqlite",
            "  trueseam book export --every-account --out backup-of-2026-11-02"
        })
public final class BookCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    /** For the command line. */
    public BookCommand() {}

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** Out. */
    @Command(
            name = "export",
            description = "Write everything, or all of one person, as a zip of CSV, JSON, SVG and PDF files.",
            mixinStandardHelpOptions = true)
    static final class Export implements Callable<Integer> {

        @Spec
        private CommandSpec spec;

        @Mixin
        private RecordBookOption kept;

        @Mixin
        private AccountOption account;

        @Option(names = "--person", paramLabel = "LABEL", description = "Only this person. Default: everything.")
        private String person;

        @Option(
                names = "--every-account",
                description =
                        "Of a studio's record book: a zip for each account, and accounts.csv that says whose is which.")
        private boolean everyAccount;

        @Option(
                names = "--out",
                paramLabel = "FILE",
                required = true,
                description = "The zip file to write; with --every-account the folder for them.")
        private Path out;

        @Override
        public Integer call() {
            if (everyAccount && (person != null || account.isNamed())) {
                throw new InputException(
                        "--every-account takes everything of everybody; leave --person and --account out.");
            }
            try (RecordBook book = kept.open()) {
                String said = everyAccount
                        ? EveryAccount.write(book, out)
                        : "Wrote " + out + ": " + (person == null ? "everything" : "all of " + person) + ", projects: "
                                + written(account.drawer(book));
                spec.commandLine().getOut().println(said + ". It holds measures of people; keep it as you keep those.");
            }
            return 0;
        }

        private int written(Drawer drawer) {
            return write(drawer, Optional.ofNullable(person).map(label -> called(drawer, label)), out);
        }

        /** All of an owner, or one person of hers, with the sheets worked out of each project. */
        static int write(Drawer drawer, Optional<String> person, Path file) {
            Shelf shelf = new Shelf(drawer);
            MadeSheets made = new MadeSheets(new Desk(() -> shelf), LocalDate.now(ZoneId.systemDefault()));
            int[] projects = {0};
            OutputFiles.write(
                    file, to -> projects[0] = drawer.archive().write(to, person, RecordBook.SINGLE_OWNER, made::of));
            return projects[0];
        }

        private static String called(Drawer drawer, String label) {
            List<Person> people = drawer.people().list(label.strip(), true).stream()
                    .filter(one -> one.label().strip().equalsIgnoreCase(label.strip()))
                    .toList();
            if (people.isEmpty()) {
                throw new InputException("Nobody in the record book is called " + label.strip() + ".");
            }
            if (people.size() > 1) {
                throw new InputException(people.size() + " people in the record book are called " + label.strip()
                        + "; give them labels that differ on the start page.");
            }
            return people.get(0).id();
        }
    }

    /** Back. */
    @Command(
            name = "bring-back",
            description =
                    "Bring an exported zip back. What is in the record book already stays; a zip with anything wrong is refused.",
            mixinStandardHelpOptions = true)
    static final class BringBack implements Callable<Integer> {

        @Spec
        private CommandSpec spec;

        @Mixin
        private RecordBookOption kept;

        @Mixin
        private AccountOption account;

        @Parameters(paramLabel = "FILE", description = "The zip file that was exported.")
        private Path file;

        @Override
        public Integer call() {
            if (!Files.isRegularFile(file)) {
                throw new InputException("There is no file " + file + ".");
            }
            try (RecordBook book = kept.begin()) {
                Brought brought = account.drawer(book).archive().bringBack(file);
                spec.commandLine().getOut().println(brought.sentence());
            }
            return 0;
        }
    }
}
