package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;
import trueseam.records.account.Sessions;
import trueseam.records.group.JoinedClass;
import trueseam.records.group.SharedProject;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;

/** Accounts, sessions and classes, in both databases. */
@ParameterizedClass
@EnumSource(Books.class)
class StudioTest {

    private static final String PASSWORD = "thimble ladder otter rain";

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

    @Parameter
    private Books books;

    private final Hands clock = new Hands();
    private String place;
    private RecordBook book;
    private Accounts accounts;
    private Sessions sessions;

    @BeforeEach
    void open() {
        place = books.fresh();
        book = RecordBook.open(place, Optional.empty(), clock);
        accounts = book.studio().accounts();
        sessions = book.studio().sessions();
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void passes(Duration time) {
        clock.now = clock.now.plus(time);
    }

    private Account entered(String name, Role role) {
        Account account = accounts.add(name, role);
        return accounts.enter(accounts.invite(account.id()), name, name + "@example.org", PASSWORD);
    }

    @Test
    void theFirstAccountKeepsWhatWasFittedBeforeThereWereAccounts() {
        String anna = book.drawer(RecordBook.SINGLE_OWNER)
                .people()
                .add(Person.named("Anna", "in", ""))
                .id();
        String link = accounts.invite(RecordBook.SINGLE_OWNER);
        accounts.enter(link, "Irena", "Irena", PASSWORD);
        Account owner = sessions.of(sessions.begin("IRENA ", PASSWORD, "here")).orElseThrow();
        assertThat(owner.role()).isEqualTo(Role.OWNER);
        assertThat(book.drawer(owner.id()).people().find(anna)).isPresent();
    }

    @Test
    void anInvitationIsGoodOnceAndForAWeekAndALaterOneEndsIt() {
        long id = accounts.add("Bea", Role.STUDENT).id();
        String early = accounts.invite(id);
        String late = accounts.invite(id);
        assertThat(accounts.invited(early)).isEmpty();
        assertThat(accounts.invited(late)).isPresent();
        passes(Duration.ofDays(7));
        assertThat(accounts.invited(late)).isEmpty();
        String fresh = accounts.invite(id);
        accounts.enter(fresh, "Bea", "bea", PASSWORD);
        assertThatThrownBy(() -> accounts.enter(fresh, "Bea", "bea", PASSWORD))
                .isInstanceOf(AccountException.class)
                .hasMessageContaining("used already");
    }

    @Test
    void twoDoNotSignInWithOneName() {
        entered("bea", Role.STUDENT);
        String link = accounts.invite(accounts.add("Other", Role.STUDENT).id());
        assertThatThrownBy(() -> accounts.enter(link, "Other", "BEA@example.org", PASSWORD))
                .hasMessageContaining("Somebody else");
        assertThatThrownBy(() -> accounts.enter(link, "Other", "other", "too short"))
                .hasMessageContaining("12");
        assertThat(accounts.invited(link)).isPresent();
    }

    @Test
    void neitherPasswordsNorTokensStandInTheTables() throws SQLException {
        Account bea = entered("bea", Role.STUDENT);
        String invitation = accounts.invite(bea.id());
        String session = sessions.begin("bea@example.org", PASSWORD, "192.0.2.7");
        StringBuilder all = new StringBuilder();
        try (Connection connection = books.connect(place)) {
            for (String table : List.of("account", "session", "invitation", "attempt")) {
                ResultSet rows = connection.createStatement().executeQuery("select * from " + table);
                while (rows.next()) {
                    for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                        all.append(rows.getString(i)).append('\n');
                    }
                }
            }
        }
        assertThat(all)
                .contains("$argon2id$")
                .doesNotContain(PASSWORD)
                .doesNotContain(invitation)
                .doesNotContain(session)
                .doesNotContain("192.0.2.7");
    }

    @Test
    void aSessionEndsAfterADayOrWhenItIsEndedAndASecondOneGoesOn() {
        entered("bea", Role.STUDENT);
        String one = sessions.begin("bea@example.org", PASSWORD, "here");
        String two = sessions.begin("bea@example.org", PASSWORD, "there");
        assertThat(one).isNotEqualTo(two);
        sessions.end(one);
        assertThat(sessions.of(one)).isEmpty();
        assertThat(sessions.of(two)).isPresent();
        passes(Duration.ofHours(12));
        assertThat(sessions.of(two)).isEmpty();
        assertThat(sessions.of("no such token")).isEmpty();
    }

    @Test
    void signingOutEverywhereANewPasswordAndClosingEndEverySession() {
        accounts.enter(accounts.invite(RecordBook.SINGLE_OWNER), "Irena", "irena", PASSWORD);
        Account bea = entered("bea", Role.STUDENT);
        String other = sessions.begin("irena", PASSWORD, "here");
        String session = sessions.begin("bea@example.org", PASSWORD, "here");
        sessions.endAll(bea.id());
        assertThat(sessions.of(session)).isEmpty();
        session = sessions.begin("bea@example.org", PASSWORD, "here");
        accounts.enter(accounts.invite(bea.id()), "bea", "bea@example.org", PASSWORD + "!");
        assertThat(sessions.of(session)).isEmpty();
        session = sessions.begin("bea@example.org", PASSWORD + "!", "here");
        accounts.close(bea.id(), true);
        assertThat(sessions.of(session)).isEmpty();
        assertThatThrownBy(() -> sessions.begin("bea@example.org", PASSWORD + "!", "here"))
                .isInstanceOf(AccountException.class);
        assertThat(sessions.of(other)).isPresent();
        assertThatThrownBy(() -> accounts.close(RecordBook.SINGLE_OWNER, true)).hasMessageContaining("only owner");
    }

    @Test
    void tooManyFailuresWaitAQuarterOfAnHourEvenWithTheRightPasswordAndAfterANewStart() {
        entered("bea", Role.STUDENT);
        entered("cleo", Role.STUDENT);
        for (int i = 0; i < 10; i++) {
            assertThatThrownBy(() -> sessions.begin("bea@example.org", "wrong wrong wrong", "here"))
                    .isInstanceOfSatisfying(AccountException.class, e -> assertThat(e.isWaiting())
                            .isFalse());
        }
        book.close();
        book = RecordBook.open(place, Optional.empty(), clock);
        Sessions later = book.studio().sessions();
        assertThatThrownBy(() -> later.begin("bea@example.org", PASSWORD, "elsewhere"))
                .isInstanceOfSatisfying(
                        AccountException.class, e -> assertThat(e.isWaiting()).isTrue());
        assertThat(later.begin("cleo@example.org", PASSWORD, "here")).isNotEmpty();
        passes(Duration.ofMinutes(15));
        assertThat(later.begin("bea@example.org", PASSWORD, "here")).isNotEmpty();
    }

    /** A project with a person, as somebody's shelf keeps it. */
    private String project(Account of, String mark) {
        Drawer drawer = book.drawer(of.id());
        Person person = drawer.people().add(Person.named("Person of " + of.name(), "in", ""));
        KeptProject.Head head = new KeptProject.Head("Dress", Optional.of(person.id()), Optional.empty(), "");
        drawer.projects()
                .begin(new ProjectChange(
                        mark, 0, 1, head, 1, List.of(), List.of(new ProjectState(1, "begun", "", "{}"))));
        return mark;
    }

    private String personOf(Account of, String project) {
        return book.drawer(of.id())
                .projects()
                .find(project)
                .flatMap(one -> one.head().person())
                .orElseThrow();
    }

    @Test
    void aTeacherSeesWhatStudentsShareWithHerClassAndNothingElse() {
        Account teacher = accounts.add("Tea", Role.TEACHER);
        Account other = accounts.add("Theo", Role.TEACHER);
        Account bea = accounts.add("Bea", Role.STUDENT);
        Account cleo = accounts.add("Cleo", Role.STUDENT);
        String shared = project(bea, "aaaaaaaaaaaaaaa1");
        String alone = project(bea, "aaaaaaaaaaaaaaa2");
        String kept = project(bea, "aaaaaaaaaaaaaaa3");
        String foreign = project(cleo, "aaaaaaaaaaaaaaa4");
        Drawer hers = book.drawer(teacher.id());
        Drawer theos = book.drawer(other.id());
        Drawer beas = book.drawer(bea.id());
        String monday = hers.classes().begin("Monday");
        String friday = theos.classes().begin("Friday");
        assertThat(beas.sharing().person(monday, personOf(bea, shared), true))
                .as("she is in no class yet")
                .isFalse();
        assertThat(hers.classes().add(monday, bea.id())).isTrue();
        assertThat(hers.classes().add(monday, bea.id())).isFalse();
        assertThat(theos.classes().add(friday, bea.id())).isTrue();
        assertThat(hers.classes().add(monday, other.id()))
                .as("a teacher is no student")
                .isFalse();
        assertThat(theos.classes().add(monday, cleo.id()))
                .as("another teacher's class")
                .isFalse();
        assertThat(beas.sharing().classes())
                .extracting(JoinedClass::name, JoinedClass::teacher)
                .containsExactly(tuple("Friday", "Theo"), tuple("Monday", "Tea"));
        assertThat(beas.sharing().person(monday, personOf(cleo, foreign), true))
                .as("somebody else's person")
                .isFalse();
        assertThat(beas.sharing().project(monday, foreign, true)).isFalse();
        assertThat(beas.sharing().person(monday, personOf(bea, shared), true)).isTrue();
        assertThat(beas.sharing().person(monday, personOf(bea, shared), true))
                .as("twice is once")
                .isTrue();
        assertThat(beas.sharing().project(friday, alone, true)).isTrue();
        assertThat(hers.sharing().list()).extracting(SharedProject::id).containsExactly(shared);
        assertThat(theos.sharing().list()).extracting(SharedProject::id).containsExactly(alone);
        assertThat(hers.sharing().find(shared)).map(SharedProject::owner).contains(bea.id());
        assertThat(hers.sharing().find(alone)).as("of the other class").isEmpty();
        assertThat(theos.sharing().find(shared)).isEmpty();
        assertThat(hers.sharing().find(kept)).isEmpty();
        assertThat(hers.sharing().find(foreign)).isEmpty();
        assertThat(book.drawer(cleo.id()).sharing().find(shared)).isEmpty();
        assertThat(beas.sharing().project(friday, alone, false)).isFalse();
        assertThat(theos.sharing().list()).as("taken back").isEmpty();
        assertThat(theos.classes().remove(monday, bea.id())).isFalse();
        assertThat(theos.classes().end(monday)).isFalse();
        assertThat(hers.classes().remove(monday, bea.id())).isTrue();
        assertThat(hers.sharing().find(shared)).isEmpty();
        assertThat(hers.classes().add(monday, bea.id())).isTrue();
        assertThat(hers.sharing().list())
                .as("what she shared before she was let go is not shared again")
                .isEmpty();
        assertThat(hers.classes().end(monday)).isTrue();
        assertThat(hers.classes().list()).isEmpty();
    }

    @Test
    void theTrailSaysWhoByNameToTheOwnerAlone() {
        Account teacher = accounts.add("Tea", Role.TEACHER);
        Account bea = accounts.add("Bea", Role.STUDENT);
        book.drawer(bea.id()).trail().note(teacher.id(), "p1", "looked at chart");
        assertThat(book.drawer(bea.id()).trail().names()).containsEntry(teacher.id(), "Tea");
        assertThat(book.drawer(teacher.id()).trail().names()).isEmpty();
    }
}
