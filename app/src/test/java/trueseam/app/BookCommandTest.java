package trueseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;

/** The record book out and back, as its user does it: in a process of its own. People and measures are invented. */
class BookCommandTest {

    /** A skirt in size 14 of the first table for somebody with a hip an inch and a half larger. */
    private static final String TYPED = """
            {"name":"Skirt","person":{"label":"Anna","units":"in","people":"women","days":[{"date":"2026-11-01","readings":[\
            {"measure":"waist girth","text":"29"},{"measure":"hip girth","text":"40"}]}]},\
            "pattern":{"way":"draft","garment":"skirt","table":"misses","size":"14"}}""";

    @TempDir
    private Path folder;

    private String book;

    @BeforeEach
    void fill() {
        book = folder.resolve("book.sqlite").toString();
        try (RecordBook open = RecordBook.open(book, Optional.empty(), Clock.systemUTC())) {
            Drawer drawer = open.drawer(RecordBook.SINGLE_OWNER);
            Person anna = drawer.people().add(Person.named("Anna", "in", "women"));
            drawer.people().add(Person.named("Berta", "in", "women"));
            drawer.projects()
                    .begin(new ProjectChange(
                            "a1a1a1a1",
                            0,
                            1,
                            new KeptProject.Head("Skirt", Optional.of(anna.id()), Optional.empty(), "14"),
                            1,
                            List.of(),
                            List.of(new ProjectState(1, "", "", TYPED))));
        }
    }

    private Ran run(String... args) throws IOException, InterruptedException {
        return Ran.in(folder, "", args);
    }

    @Test
    void onePersonGoesOutWithHerStepSheetAndComesBackIntoAnotherRecordBook() throws IOException, InterruptedException {
        Ran out = run("book", "export", "--record-book", book, "--person", "anna", "--out", "anna.zip");
        assertThat(out.err()).isEmpty();
        assertThat(out.code()).isZero();
        assertThat(out.out()).contains("all of anna, projects: 1");
        try (ZipFile zip = new ZipFile(folder.resolve("anna.zip").toFile())) {
            assertThat(zip.getEntry("people.csv")).isNotNull();
            byte[] steps =
                    zip.getInputStream(zip.getEntry("made/a1a1a1a1/steps.pdf")).readAllBytes();
            assertThat(new String(steps, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
            assertThat(zip.getEntry("made/a1a1a1a1/chart.pdf")).isNotNull();
            assertThat(zip.getEntry("made/a1a1a1a1/altered.svg")).isNotNull();
        }
        Ran back = run("book", "bring-back", "anna.zip", "--record-book", "other.sqlite");
        assertThat(back.err()).isEmpty();
        assertThat(back.out().strip()).isEqualTo("Brought back: 1 person, 1 project, 0 patterns.");
        try (RecordBook other = RecordBook.inFile(folder.resolve("other.sqlite"), Clock.systemUTC())) {
            Drawer drawer = other.drawer(RecordBook.SINGLE_OWNER);
            assertThat(drawer.people().list("", true)).extracting(Person::label).containsExactly("Anna");
            assertThat(drawer.projects().states("a1a1a1a1")).containsExactly(new ProjectState(1, "", "", TYPED));
        }
    }

    @Test
    void whatCannotBeDoneIsOneSentenceAndNothingIsWritten() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("text.zip"), "not a zip");
        refused(
                "Nobody in the record book is called Clara",
                "export",
                "--record-book",
                book,
                "--person",
                "Clara",
                "--out",
                "x.zip");
        refused("There is no record book at", "export", "--record-book", "none.sqlite", "--out", "x.zip");
        refused(
                "text.zip is no whole zip file; nothing of it was taken",
                "bring-back",
                "text.zip",
                "--record-book",
                book);
        refused("There is no file", "bring-back", "gone.zip", "--record-book", book);
        assertThat(folder.resolve("x.zip")).doesNotExist();
        assertThat(folder.resolve("none.sqlite")).doesNotExist();
    }

    @Test
    void everyAccountOfAStudioGoesOutIntoAFolderAndOneComesBackToItsOwn() throws IOException, InterruptedException {
        try (RecordBook open = RecordBook.open(book, Optional.empty(), Clock.systemUTC())) {
            Accounts accounts = open.studio().accounts();
            long bea = accounts.add("Bea, \"B\"", Role.STUDENT).id();
            accounts.enter(accounts.invite(bea), "Bea, \"B\"", "bea", "thimble ladder otter rain");
            open.drawer(bea).people().add(Person.named("Clara", "in", "women"));
            accounts.add("Dora", Role.STUDENT);
        }
        Ran out = run("book", "export", "--record-book", book, "--every-account", "--out", "all");
        assertThat(out.err()).isEmpty();
        assertThat(out.out()).contains("accounts: 3, projects: 1");
        List<String> list = Files.readAllLines(folder.resolve("all/accounts.csv"));
        assertThat(list).hasSize(4).anyMatch(line -> line.contains("\"Bea, \"\"B\"\"\",\"bea\",student,open"));
        String zip = list.stream()
                .filter(line -> line.contains("bea"))
                .map(line -> line.replaceFirst(",.*", ""))
                .findFirst()
                .orElseThrow();
        try (RecordBook other = RecordBook.inFile(folder.resolve("other.sqlite"), Clock.systemUTC())) {
            Accounts accounts = other.studio().accounts();
            accounts.enter(
                    accounts.invite(accounts.add("Bea", Role.STUDENT).id()), "Bea", "bea", "thimble ladder otter rain");
        }
        Ran back = run("book", "bring-back", "all/" + zip, "--record-book", "other.sqlite", "--account", "Bea");
        assertThat(back.err()).isEmpty();
        assertThat(back.out().strip()).isEqualTo("Brought back: 1 person, 0 projects, 0 patterns.");
        try (RecordBook other = RecordBook.inFile(folder.resolve("other.sqlite"), Clock.systemUTC())) {
            assertThat(other.drawer(RecordBook.SINGLE_OWNER).people().list("", true))
                    .isEmpty();
        }
        refused(
                "Nobody signs in to this record book as ada",
                "export",
                "--record-book",
                book,
                "--account",
                "ada",
                "--out",
                "x.zip");
        refused(
                "leave --person and --account out",
                "export",
                "--record-book",
                book,
                "--every-account",
                "--account",
                "bea",
                "--out",
                "x");
    }

    private void refused(String because, String... args) throws IOException, InterruptedException {
        String[] all = new String[args.length + 1];
        all[0] = "book";
        System.arraycopy(args, 0, all, 1, args.length);
        Ran ran = run(all);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(because);
        assertThat(ran.err().strip().lines()).hasSize(1);
        assertThat(ran.out()).isEmpty();
    }
}
