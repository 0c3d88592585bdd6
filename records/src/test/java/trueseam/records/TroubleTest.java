package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.person.Person;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;

/** No room, a lost server, a wrong address: each is one clear sentence, and nothing is half-written. */
class TroubleTest {

    @TempDir
    private Path folder;

    /** A change in several parts, the last of them large. */
    private static void change(Drawer drawer, String person, byte[] file) {
        drawer.together(all -> {
            Person now = all.people().find(person).orElseThrow();
            all.people().change(now.withNote(now.note() + "x"));
            return all.files().keep(file);
        });
    }

    private static byte[] file(Random random) {
        byte[] file = new byte[40_000];
        random.nextBytes(file);
        return file;
    }

    private static RecordBookException untilItFails(Drawer drawer, String person) {
        Random random = new Random(1);
        for (int made = 0; true; made++) {
            int before = made;
            RecordBookException failed =
                    catchThrowableOfType(RecordBookException.class, () -> change(drawer, person, file(random)));
            if (failed != null) {
                assertThat(drawer.people().find(person).orElseThrow().note()).hasSize(before);
                return failed;
            }
            assertThat(made).as("it must be full some time").isLessThan(1000);
        }
    }

    private static void isFull(RecordBookException failed) {
        assertThat(failed.trouble()).isEqualTo(Trouble.NO_ROOM);
        assertThat(failed)
                .hasMessageStartingWith("There is no room left for the record book ")
                .hasMessageEndingWith(", so your last change was not made; make room there, then make it again.");
    }

    @Test
    void aFullBookIsOneSentenceAndGoesOnWhenThereIsRoom() throws SQLException {
        // SQLite, PRAGMA max_page_count: a write beyond it fails with SQLITE_FULL, as on a full disk.
        Path place = folder.resolve("book.sqlite");
        String person;
        try (RecordBook book = RecordBook.inFileOfAtMost(place, Clock.systemUTC(), 150)) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            person = drawer.people().add(Person.named("Anna", "in", "")).id();
            isFull(untilItFails(drawer, person));
            assertThat(drawer.people().list("anna", false)).hasSize(1);
        }
        try (RecordBook book = RecordBook.inFile(place, Clock.systemUTC())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            int before = drawer.people().find(person).orElseThrow().note().length();
            change(drawer, person, file(new Random(2)));
            assertThat(drawer.people().find(person).orElseThrow().note()).hasSize(before + 1);
        }
        whole(place);
    }

    @Test
    void aFullDiskIsOneSentence() throws IOException, InterruptedException, SQLException {
        // A disk of one megabyte; only root may make one.
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Assumptions.assumeTrue(ran("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk.toString()), "no small disk");
        try {
            Path place = disk.resolve("book.sqlite");
            try (RecordBook book = RecordBook.inFile(place, Clock.systemUTC())) {
                Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
                String person =
                        drawer.people().add(Person.named("Anna", "in", "")).id();
                isFull(untilItFails(drawer, person));
                assertThat(drawer.people().list("anna", false)).hasSize(1);
            }
            whole(place);
        } finally {
            ran("umount", disk.toString());
        }
    }

    private static boolean ran(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }

    private static void whole(Path place) throws SQLException {
        try (Connection connection = Books.IN_FILE.connect(place.toString());
                var check = connection.createStatement().executeQuery("pragma integrity_check")) {
            assertThat(check.getString(1)).isEqualTo("ok");
        }
    }

    @Test
    void aLostServerIsOneSentenceAndNothingIsHalfWritten() throws SQLException {
        String place = Books.AT_SERVER.fresh();
        try (RecordBook book = Books.AT_SERVER.open(place)) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            String person = drawer.people().add(Person.named("Anna", "in", "")).id();
            RecordBookException failed = catchThrowableOfType(
                    RecordBookException.class,
                    () -> drawer.together(all -> {
                        Person now = all.people().find(person).orElseThrow();
                        all.people().change(now.withNote("half"));
                        endOtherConnections(place); // as if the server were switched off in the middle
                        return all.people().add(Person.named("Berta", "in", ""));
                    }));
            assertThat(failed.trouble()).isEqualTo(Trouble.NOT_REACHED);
            assertThat(failed.getCause()).as("nothing personal gets into a log").hasMessageNotContaining("Berta");
            assertThat(failed)
                    .hasMessageStartingWith("The connection to the record book at jdbc:postgresql://localhost:")
                    .hasMessageContaining("was lost, so your last change may not have been made")
                    .hasMessageNotContaining("user=");
            assertThat(onceReached(drawer)).extracting(Person::note).containsExactly("");
            assertThat(drawer.people().add(Person.named("Berta", "in", "")).version())
                    .as("it goes on by itself once the server is there again")
                    .isEqualTo(1);
        }
    }

    /** Each dead connection of the pool is found out by one who uses it, and there are at most ten. */
    private static List<Person> onceReached(Drawer drawer) {
        for (int dead = 0; dead < 10; dead++) {
            try {
                return drawer.people().list("", true);
            } catch (RecordBookException e) {
                assertThat(e.trouble()).isEqualTo(Trouble.NOT_REACHED);
            }
        }
        return drawer.people().list("", true);
    }

    private static void endOtherConnections(String place) {
        try (Connection connection = DriverManager.getConnection(place)) {
            connection
                    .createStatement()
                    .execute("select pg_terminate_backend(pid) from pg_stat_activity"
                            + " where datname = current_database() and pid <> pg_backend_pid()");
        } catch (SQLException e) {
            throw new IllegalStateException("the connections could not be ended", e);
        }
    }

    @Test
    void moreAtOnceThanThereAreConnectionsAreToldToTryAgain() throws InterruptedException {
        int connections = 10;
        try (RecordBook book = Books.AT_SERVER.open(Books.AT_SERVER.fresh())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            CountDownLatch working = new CountDownLatch(connections);
            CountDownLatch done = new CountDownLatch(1);
            ExecutorService others = Executors.newFixedThreadPool(connections);
            for (int i = 0; i < connections; i++) {
                others.execute(() -> drawer.together(all -> {
                    all.people().list("", true);
                    working.countDown();
                    return awaited(done);
                }));
            }
            working.await();
            try {
                assertThatThrownBy(() -> drawer.people().add(Person.named("Anna", "in", "")))
                        .isInstanceOfSatisfying(RecordBookException.class, e -> {
                            assertThat(e.trouble()).isEqualTo(Trouble.BUSY);
                            assertThat(e).hasMessageContaining("was not made; make it again");
                        });
            } finally {
                done.countDown();
                others.shutdown();
            }
            drawer.people().add(Person.named("Anna", "in", ""));
            assertThat(drawer.people().list("", true)).hasSize(1);
        }
    }

    private static boolean awaited(CountDownLatch latch) {
        try {
            latch.await();
            return true;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aServerThatIsGoneIsOneSentence() throws IOException {
        EmbeddedPostgres server = EmbeddedPostgres.builder().start();
        String place = server.getJdbcUrl("postgres", "postgres");
        try (RecordBook book = Books.AT_SERVER.open(place)) {
            server.close();
            RecordBookException failed = catchThrowableOfType(
                    RecordBookException.class,
                    () -> book.drawer(RecordBook.SINGLE_OWNER).people().list("", true));
            assertThat(failed.trouble()).isEqualTo(Trouble.NOT_REACHED);
        }
        RecordBookException again = catchThrowableOfType(RecordBookException.class, () -> Books.AT_SERVER.open(place));
        assertThat(again.trouble()).isEqualTo(Trouble.NOT_REACHED);
        assertThat(again).hasMessageContaining("does not answer; see whether the database is running");
    }

    @Test
    void aDatabaseThatIsNotThereIsOneSentenceWithoutThePassword() {
        String place = Books.AT_SERVER.fresh().replaceFirst("/t[0-9a-f]+\\?", "/nowhere?") + "&password=secret";
        RecordBookException failed = catchThrowableOfType(
                RecordBookException.class, () -> RecordBook.open(place, Optional.of("secret"), Clock.systemUTC()));
        assertThat(failed.trouble()).isEqualTo(Trouble.NOT_ALLOWED);
        assertThat(failed).hasMessageContaining("/nowhere may not be used").hasMessageNotContaining("secret");
    }
}
