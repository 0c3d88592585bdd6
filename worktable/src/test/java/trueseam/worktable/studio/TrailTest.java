package trueseam.worktable.studio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.access.Access;
import trueseam.records.account.Role;
import trueseam.records.trouble.RecordBookException;

/** Whoever goes on with the same thing is written down once a while; anything else, and anybody else, at once. */
class TrailTest {

    private static final long SHE = RecordBook.SINGLE_OWNER;

    /** A clock that is put on by hand. */
    private static final class Hands extends Clock {
        private Instant now = Instant.parse("2026-11-02T08:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @TempDir
    private Path folder;

    private final Hands clock = new Hands();
    private final Trail trail = new Trail(clock);
    private RecordBook book;
    private Drawer drawer;

    @BeforeEach
    void open() {
        book = RecordBook.inFile(folder.resolve("book.sqlite"), clock);
        drawer = book.drawer(SHE);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private int lines() {
        return drawer.trail().of("anna").size();
    }

    @Test
    void goingOnIsOneLineAndAfterAWhileAnother() {
        for (int i = 0; i < 50; i++) {
            trail.note(drawer, SHE, "anna", "dress", "worked on a project");
            clock.now = clock.now.plus(Duration.ofSeconds(10));
        }
        assertThat(lines()).as("50 readings in 500 seconds").isEqualTo(1);
        clock.now = clock.now.plus(Trail.WHILE);
        trail.note(drawer, SHE, "anna", "dress", "worked on a project");
        assertThat(drawer.trail().of("anna"))
                .extracting(Access::what)
                .containsExactly("worked on a project", "worked on a project");
    }

    @Test
    void anotherProjectAndAnotherDoingAreALineOfTheirOwn() {
        trail.note(drawer, SHE, "anna", "dress", "looked at a project");
        trail.note(drawer, SHE, "anna", "dress", "worked on a project");
        trail.note(drawer, SHE, "anna", "coat", "looked at a project");
        trail.note(drawer, SHE, "anna", "dress", "looked at a project");
        assertThat(lines()).isEqualTo(3);
    }

    @Test
    void anotherAccountIsALineOfItsOwn() {
        long tea = book.studio().accounts().add("Tea", Role.TEACHER).id();
        trail.note(drawer, SHE, "anna", "dress", "looked at a project");
        trail.note(drawer, tea, "anna", "dress", "looked at a project");
        assertThat(drawer.trail().of("anna")).extracting(Access::account).containsExactlyInAnyOrder(SHE, tea);
    }

    @Test
    void whatCouldNotBeWrittenIsWrittenTheNextTime() {
        book.close();
        assertThatThrownBy(() -> trail.note(drawer, SHE, "anna", "dress", "looked at a project"))
                .isInstanceOf(RecordBookException.class);
        book = RecordBook.inFile(folder.resolve("book.sqlite"), clock);
        drawer = book.drawer(SHE);
        trail.note(drawer, SHE, "anna", "dress", "looked at a project");
        assertThat(lines()).isEqualTo(1);
    }
}
