package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.records.access.Access;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;
import trueseam.records.pattern.KeptTable;
import trueseam.records.person.Person;
import trueseam.records.person.Reminding;

/** An erased account leaves nothing of itself behind, in any table of either database, and takes nothing of anybody else's with it. */
@ParameterizedClass
@EnumSource(Books.class)
class ErasedAccountTest {

    private static final String PASSWORD = "thimble ladder otter rain";

    @Parameter
    private Books books;

    private String place;
    private RecordBook book;
    private Accounts accounts;
    private Account owner;
    private Account tea;
    private Account bea;
    private String monday;

    @BeforeEach
    void fill() {
        place = books.fresh();
        book = books.open(place);
        accounts = book.studio().accounts();
        owner = accounts.enter(accounts.invite(RecordBook.SINGLE_OWNER), "Irena", "irena", PASSWORD);
        tea = entered("Tea", Role.TEACHER);
        bea = entered("Bea", Role.STUDENT);
        monday = book.drawer(tea.id()).classes().begin("Monday");
        book.drawer(tea.id()).classes().add(monday, bea.id());
        String person = filled(bea, "b1b1b1b1");
        filled(tea, "c1c1c1c1");
        book.drawer(bea.id()).sharing().person(monday, person, true);
        book.drawer(bea.id()).sharing().project(monday, "b1b1b1b1", true);
        book.drawer(bea.id()).trail().note(tea.id(), person, "looked at a project");
        book.studio().sessions().begin("bea", PASSWORD, "here");
        accounts.invite(bea.id());
    }

    private Account entered(String name, Role role) {
        return accounts.enter(accounts.invite(accounts.add(name, role).id()), name, name, PASSWORD);
    }

    /** Something in every table that an owner can have rows in. */
    private String filled(Account of, String project) {
        Drawer drawer = book.drawer(of.id());
        Person person = drawer.people().add(Person.named("Person of " + of.name(), "in", ""));
        ArchiveTest.project(drawer, project, person, "<svg>" + of.name() + "</svg>");
        String table = drawer.files().keep(of.name().getBytes(StandardCharsets.UTF_8));
        drawer.tables().add(new KeptTable("", "our class", "measured by us", table, false, 0));
        drawer.reminding().tell(new Reminding.Pause(5, 2));
        return person.id();
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** How many rows of each table belong to an account or name it, asked from outside of our own code. */
    private Map<String, Integer> rowsOf(long account) throws SQLException {
        Map<String, Integer> rows = new TreeMap<>();
        try (Connection connection = books.connect(place);
                ResultSet columns = connection.getMetaData().getColumns(null, null, "%", "%")) {
            while (columns.next()) {
                String column = columns.getString("COLUMN_NAME");
                if (List.of("owner_id", "account_id").contains(column)) {
                    String table = columns.getString("TABLE_NAME");
                    rows.merge(table, count(connection, table, column + " = " + account), Integer::sum);
                }
            }
        }
        return rows;
    }

    private static int count(Connection connection, String table, String where) throws SQLException {
        try (Statement ask = connection.createStatement();
                ResultSet rows = ask.executeQuery("select count(*) from " + table + " where " + where)) {
            rows.next();
            return rows.getInt(1);
        }
    }

    @Test
    void everythingOfAStudentGoesAndNothingOfOthers() throws SQLException {
        assertThat(rowsOf(bea.id()))
                .as("before: something in every table but that of classes, which students do not lead")
                .allSatisfy((table, rows) ->
                        assertThat(rows).as(table).isGreaterThanOrEqualTo(table.equals("taught_class") ? 0 : 1));
        Map<String, Integer> teas = rowsOf(tea.id());
        accounts.erase(bea.id(), owner.id());
        Map<String, Integer> left = rowsOf(bea.id());
        assertThat(left.remove("access")).as("that it was erased").isEqualTo(1);
        assertThat(left).allSatisfy((table, rows) -> assertThat(rows).as(table).isZero());
        teas.computeIfPresent("access", (table, rows) -> rows - 1); // that Tea looked at Bea's person
        teas.computeIfPresent("class_member", (table, rows) -> rows - 1);
        assertThat(rowsOf(tea.id())).isEqualTo(teas);
        try (Connection connection = books.connect(place)) {
            assertThat(count(connection, "account", "name = 'Bea' or sign_in = 'bea'"))
                    .isZero();
        }
        assertThat(accounts.list()).extracting(Account::name).containsExactly("Irena", "Tea");
        assertThat(accounts.erased()).hasSize(1);
        assertThat(book.drawer(bea.id()).trail().of(""))
                .extracting(Access::account, Access::what)
                .containsExactly(tuple(owner.id(), "erased the account"));
    }

    @Test
    void aTeachersClassesAndWhatWasSharedWithThemGoWithHerAndTheTrailKeepsThatSomebodyLooked() throws SQLException {
        String person = book.drawer(bea.id()).people().list("", true).get(0).id();
        accounts.erase(tea.id(), tea.id());
        assertThat(book.drawer(bea.id()).sharing().classes()).isEmpty();
        assertThat(book.drawer(bea.id()).sharing().shares()).isEmpty();
        assertThat(book.drawer(bea.id()).trail().of(person))
                .extracting(Access::account)
                .contains(tea.id());
        assertThat(book.drawer(bea.id()).trail().names().get(tea.id()))
                .as("without a name")
                .isEmpty();
        assertThat(rowsOf(bea.id()).get("project")).isEqualTo(1);
    }

    @Test
    void anErasedAccountIsSignedOutAndNeverComesBack() {
        String token = book.studio().sessions().begin("bea", PASSWORD, "here");
        String link = accounts.invite(bea.id());
        accounts.erase(bea.id(), owner.id());
        assertThat(book.studio().sessions().of(token)).isEmpty();
        assertThat(accounts.invited(link)).isEmpty();
        assertThatThrownBy(() -> book.studio().sessions().begin("bea", PASSWORD, "here"))
                .isInstanceOf(AccountException.class);
        assertThatThrownBy(() -> accounts.invite(bea.id())).isInstanceOf(AccountException.class);
        accounts.close(bea.id(), false);
        assertThatThrownBy(() -> accounts.invite(bea.id()))
                .as("not opened again either")
                .isInstanceOf(AccountException.class);
        assertThatThrownBy(() -> accounts.erase(bea.id(), owner.id())).isInstanceOf(AccountException.class);
        Account another = entered("Bea", Role.STUDENT);
        assertThat(another.id()).as("the name is free again").isNotEqualTo(bea.id());
    }

    @Test
    void theLastOwnerStaysAndTheFirstCanGoAfterAnother() {
        assertThatThrownBy(() -> accounts.erase(owner.id(), owner.id()))
                .isInstanceOf(AccountException.class)
                .hasMessageContaining("only owner");
        assertThat(accounts.list()).extracting(Account::name).contains("Irena");
        entered("Olga", Role.OWNER);
        accounts.erase(owner.id(), owner.id());
        assertThat(accounts.list()).extracting(Account::name).doesNotContain("Irena");
        assertThat(accounts.hasOwner()).isTrue();
        Account next = accounts.enter(accounts.invite(RecordBook.SINGLE_OWNER), "Ida", "ida", PASSWORD);
        assertThat(next.role()).as("the lost password's way still leads in").isEqualTo(Role.OWNER);
        assertThat(accounts.erased()).isEmpty();
        assertThat(book.drawer(next.id()).people().list("", true)).isEmpty();
    }

    @Test
    void aNumberThatIsNobodysIsOneSentence() {
        assertThatThrownBy(() -> accounts.erase(4711, owner.id()))
                .isInstanceOf(AccountException.class)
                .hasMessageContaining("no such account");
        assertThat(accounts.list()).hasSize(3);
    }
}
