package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.pattern.KeptTable;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.Person;
import trueseam.records.person.TapeReading;
import trueseam.records.person.TrendPoint;
import trueseam.records.project.KeptFit;
import trueseam.records.project.KeptPrint;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.project.Sought;
import trueseam.records.sitting.Evidence;
import trueseam.records.sitting.KeptSitting;
import trueseam.records.trouble.OutdatedException;
import trueseam.records.trouble.RecordBookException;

/** What a drawer promises, held to on both databases. */
@ParameterizedClass
@EnumSource(Books.class)
class DrawerTest {

    private static final long SOMEBODY = 2;

    @Parameter
    private Books books;

    private String place;
    private RecordBook book;
    private Drawer drawer;

    @BeforeEach
    void open() throws SQLException {
        place = books.fresh();
        book = books.open(place);
        books.addAccount(place, SOMEBODY);
        drawer = book.drawer(RecordBook.SINGLE_OWNER);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Person anna() {
        return drawer.people().add(Person.named("Anna Ärmel", "in", "women"));
    }

    @Test
    void whatWasKeptIsThereAfterANewStart() {
        Person kept = drawer.people()
                .change(anna().withNote("left shoulder lower")
                        .withPhoto(Optional.of(drawer.files().keep(new byte[] {1, 2, 0, -1}))));
        drawer.projects().begin(Invented.begun("a1b2c3d4", "Dress", "{\"typed\":\"37 ½\"}"));
        book.close();
        book = books.open(place);
        drawer = book.drawer(RecordBook.SINGLE_OWNER);
        assertThat(drawer.people().find(kept.id())).contains(kept);
        assertThat(drawer.files().read(kept.photo().orElseThrow())).contains(new byte[] {1, 2, 0, -1});
        assertThat(drawer.projects().states("a1b2c3d4"))
                .containsExactly(new ProjectState(1, "", "", "{\"typed\":\"37 ½\"}"));
    }

    @Test
    void aPersonIsFoundByAnyPartOfLabelOrNoteInAnyCase() {
        Person anna = drawer.people().change(anna().withNote("50% cotton_only"));
        drawer.people().add(Person.named("Berta", "cm", ""));
        assertThat(drawer.people().list("äRM", false)).containsExactly(anna);
        assertThat(drawer.people().list("%", false)).containsExactly(anna);
        assertThat(drawer.people().list("n_o", false)).containsExactly(anna);
        assertThat(drawer.people().list("!", false)).isEmpty();
        assertThat(drawer.people().list("", false)).hasSize(2);
        drawer.people().change(anna.withArchived(true));
        assertThat(drawer.people().list("", false)).extracting(Person::label).containsExactly("Berta");
        assertThat(drawer.people().list("", true)).hasSize(2);
    }

    @Test
    void aChangeOfAnOldVersionIsRefused() {
        Person anna = anna();
        Person changed = drawer.people().change(anna.withNote("one"));
        assertThatThrownBy(() -> drawer.people().change(anna.withNote("two")))
                .isInstanceOf(OutdatedException.class)
                .hasMessageContaining("person was changed elsewhere");
        assertThat(drawer.people().find(anna.id())).contains(changed);
        drawer.people().erase(anna.id());
        assertThatThrownBy(() -> drawer.people().change(changed)).isInstanceOf(OutdatedException.class);
    }

    @Test
    void theDaysOfAllProjectsAndOfThePersonAreOneRow() {
        Person anna = anna();
        begin("a1", anna, Optional.empty());
        begin("b2", anna, Optional.empty());
        MeasuringDay spring =
                Invented.day("2025-04-02", Invented.inches("bust girth", 37), Invented.inches("waist girth", 30));
        MeasuringDay autumn = Invented.day("2026-10-01", Invented.inches("bust girth", 38));
        drawer.days().replaceOf("a1", anna.id(), List.of(spring));
        drawer.days().replaceOf("b2", anna.id(), List.of(spring, autumn));
        drawer.days().replaceOwn(anna.id(), List.of(Invented.day("2024-01-01", Invented.inches("bust girth", 36))));
        assertThat(drawer.days().of(anna.id()))
                .extracting(MeasuringDay::date)
                .containsExactly("2024-01-01", "2025-04-02", "2026-10-01");
        assertThat(drawer.days().of(anna.id()).get(1)).isEqualTo(spring);
        assertThat(drawer.days().trend(anna.id(), "bust girth"))
                .containsExactly(
                        new TrendPoint("2024-01-01", "", 36 * 25.4, ""),
                        new TrendPoint("2025-04-02", "", 37 * 25.4, ""),
                        new TrendPoint("2026-10-01", "", 38 * 25.4, ""));
    }

    @Test
    void ofOneDateTheReadingCountsThatWasWrittenLast() {
        Person anna = anna();
        drawer.days()
                .replaceOwn(
                        anna.id(),
                        List.of(Invented.day(
                                "2026-10-01", Invented.inches("bust girth", 36), Invented.inches("hip girth", 40))));
        begin("a1", anna, Optional.empty());
        drawer.days()
                .replaceOf("a1", anna.id(), List.of(Invented.day("2026-10-01", Invented.inches("bust girth", 36.5))));
        assertThat(drawer.days().of(anna.id()))
                .containsExactly(Invented.day(
                        "2026-10-01", Invented.inches("bust girth", 36.5), Invented.inches("hip girth", 40)));
        assertThat(drawer.days().own(anna.id())).hasSize(1);
    }

    @Test
    void aReadingThatIsNoLengthIsKeptAsItWasTyped() {
        Person anna = anna();
        TapeReading odd =
                new TapeReading("bust girth", "left", "37 7/", "in", "estimated", "hm", OptionalDouble.empty());
        drawer.days().replaceOwn(anna.id(), List.of(Invented.day("", odd)));
        assertThat(drawer.days().of(anna.id())).containsExactly(Invented.day("", odd));
        assertThat(drawer.days().trend(anna.id(), "bust girth")).isEmpty();
    }

    private void begin(String id, Person person, Optional<String> pattern) {
        drawer.projects()
                .begin(Invented.begun(
                        id, new KeptProject.Head("Project " + id, Optional.of(person.id()), pattern, "14"), "{}"));
    }

    @Test
    void aPatternMadeOfTheSameIsTheSamePattern() {
        String mark = drawer.files().keep("<svg/>".getBytes(StandardCharsets.UTF_8));
        KeptPattern bought = KeptPattern.of(
                "file/" + mark, "dress.svg", "dress", "misses", List.of(new KeptPattern.InFile(mark, "dress.svg")));
        KeptPattern kept = drawer.patterns().keep(bought);
        KeptPattern described =
                drawer.patterns().change(kept.described("Tea dress", "found in the attic", "short in the waist"));
        assertThat(drawer.patterns().keep(bought)).isEqualTo(described);
        assertThat(drawer.patterns().list("ATTIC", false)).containsExactly(described);
        begin("a1", anna(), Optional.of(kept.id()));
        assertThat(drawer.patterns().delete(kept.id())).as("in use").isFalse();
        drawer.projects().delete("a1");
        assertThat(drawer.patterns().delete(kept.id())).isTrue();
        assertThat(drawer.files().sweep()).isEqualTo(1);
    }

    @Test
    void aTableIsKeptWithItsFile() {
        String mark = drawer.files().keep("size,bust girth".getBytes(StandardCharsets.UTF_8));
        KeptTable table = drawer.tables().add(new KeptTable("", "Shop", "measured in the shop", mark, false, 0));
        assertThat(drawer.tables().list(false)).containsExactly(table);
        assertThat(drawer.files().sweep()).as("in use").isZero();
        drawer.tables().change(table);
        assertThatThrownBy(() -> drawer.tables().change(table)).isInstanceOf(OutdatedException.class);
        assertThat(drawer.tables().delete(table.id())).isTrue();
    }

    @Test
    void aProjectIsChangedStateByState() {
        drawer.projects().begin(Invented.begun("a1", "Dress", "one"));
        KeptProject.Head head = new KeptProject.Head("Dress, blue", Optional.empty(), Optional.empty(), "12");
        drawer.projects()
                .change(new ProjectChange("a1", 1, 2, head, 3, List.of(), List.of(state(2, "two"), state(3, "three"))));
        drawer.projects().change(new ProjectChange("a1", 2, 3, head, 4, List.of(1L, 3L), List.of(state(4, "four"))));
        assertThat(drawer.projects().states("a1")).containsExactly(state(2, "two"), state(4, "four"));
        KeptProject project = drawer.projects().find("a1").orElseThrow();
        assertThat(project.head()).isEqualTo(head);
        assertThat(List.of(project.state(), project.version())).containsExactly(4L, 3L);
    }

    @Test
    void aProjectChangedElsewhereKeepsEverythingOfThatChange() {
        drawer.projects().begin(Invented.begun("a1", "Dress", "one"));
        KeptProject.Head head = drawer.projects().find("a1").orElseThrow().head();
        drawer.projects().change(new ProjectChange("a1", 1, 2, head, 2, List.of(1L), List.of(state(2, "two"))));
        assertThatThrownBy(() -> drawer.projects()
                        .change(new ProjectChange("a1", 1, 2, head, 9, List.of(2L), List.of(state(9, "nine")))))
                .isInstanceOf(OutdatedException.class);
        assertThat(drawer.projects().states("a1")).containsExactly(state(2, "two"));
    }

    private static ProjectState state(long number, String content) {
        return new ProjectState(number, "label " + number, "", content);
    }

    @Test
    void projectsAreFoundByNamePersonAndPattern() {
        Person anna = anna();
        KeptPattern skirt = drawer.patterns().keep(KeptPattern.of("draft/skirt", "skirt", "skirt", "", List.of()));
        begin("a1", anna, Optional.of(skirt.id()));
        drawer.projects().begin(Invented.begun("b2", "Winter coat", ""));
        assertThat(found("ärmel")).containsExactly("a1");
        assertThat(found("SKIRT")).containsExactly("a1");
        assertThat(found("coat")).containsExactly("b2");
        assertThat(found("")).containsExactlyInAnyOrder("a1", "b2");
        assertThat(drawer.projects().list(Sought.of(anna.id()))).hasSize(1);
        assertThat(drawer.projects().archive("a1", true)).isTrue();
        assertThat(found("")).containsExactly("b2");
        assertThat(drawer.projects().list(Sought.of(anna.id()))).hasSize(1);
    }

    private List<String> found(String text) {
        return drawer.projects().list(new Sought(text, Optional.empty(), Optional.empty(), false)).stream()
                .map(KeptProject::id)
                .toList();
    }

    @Test
    void whatWasPinnedOverAllGarmentsIsEvidenceOfThePerson() {
        Person anna = anna();
        begin("a1", anna, Optional.empty());
        begin("b2", anna, Optional.empty());
        KeptSitting first = new KeptSitting("2026-05-01", List.of(Invented.pinned("+ sway-back", 0.5)));
        KeptSitting second = new KeptSitting(
                "2026-06-01", List.of(Invented.pinned("+ sway-back", 0.25), Invented.pinned("- hem", 1)));
        drawer.sittings().replaceOf("a1", List.of(first));
        drawer.sittings().replaceOf("b2", List.of(first));
        drawer.sittings().replaceOf("b2", List.of(second));
        assertThat(drawer.sittings().of("b2")).containsExactly(second);
        assertThat(drawer.sittings().evidence(anna.id()))
                .extracting(Evidence::alteration, Evidence::project, e -> e.amountMm()
                        .getAsDouble())
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("+ sway-back", "a1", 12.7),
                        org.assertj.core.groups.Tuple.tuple("+ sway-back", "b2", 6.35),
                        org.assertj.core.groups.Tuple.tuple("- hem", "b2", 25.4));
        drawer.projects().delete("b2");
        assertThat(drawer.sittings().evidence(anna.id())).hasSize(1);
    }

    @Test
    void fitsAndPrintsAreKeptWithTheirFiles() {
        begin("a1", anna(), Optional.empty());
        String report = drawer.files().keep(new byte[] {1});
        KeptFit fit = drawer.fits().keep(new KeptFit("", "a1", 7, true, report, Optional.empty(), 0));
        assertThat(drawer.fits().keep(new KeptFit("", "a1", 7, true, report, Optional.empty(), 0)))
                .isEqualTo(fit);
        KeptPrint print = drawer.fits().printed(new KeptPrint("", "a1", fit.id(), "strips", "{}", 0));
        assertThat(drawer.fits().of("a1")).containsExactly(fit);
        assertThat(drawer.fits().prints("a1")).containsExactly(print);
        assertThat(drawer.files().sweep()).as("in use").isZero();
        drawer.projects().delete("a1");
        assertThat(drawer.files().read(report)).isEmpty();
    }

    @Test
    void deletingAProjectLeavesHerMeasuresAndTakesWhatNothingElseNeeds() {
        Person anna = anna();
        String file = drawer.files().keep(new byte[] {9});
        drawer.projects()
                .begin(Invented.begun(
                        "a1",
                        new KeptProject.Head("Dress", Optional.of(anna.id()), Optional.empty(), ""),
                        "{\"file\":\"" + file + "\"}"));
        MeasuringDay day = Invented.day("2026-10-01", Invented.inches("bust girth", 36));
        drawer.days().replaceOf("a1", anna.id(), List.of(day));
        assertThat(drawer.files().sweep()).as("a state needs it").isZero();
        assertThat(drawer.projects().delete("a1")).isTrue();
        assertThat(drawer.projects().delete("a1")).isFalse();
        assertThat(drawer.projects().find("a1")).isEmpty();
        assertThat(drawer.files().read(file)).isEmpty();
        assertThat(drawer.days().of(anna.id())).containsExactly(day);
    }

    @Test
    void aPersonOfWhomNothingWasKeptGoesWithHerLastProject() {
        Person anna = anna();
        begin("a1", anna, Optional.empty());
        begin("b2", anna, Optional.empty());
        drawer.projects().delete("a1");
        assertThat(drawer.people().find(anna.id())).isPresent();
        drawer.projects().delete("b2");
        assertThat(drawer.people().find(anna.id())).isEmpty();
    }

    @Test
    void erasingAPersonLeavesNothingOfHer() throws SQLException {
        Person anna = anna();
        begin("a1", anna, Optional.empty());
        drawer.days()
                .replaceOf("a1", anna.id(), List.of(Invented.day("2026-10-01", Invented.inches("bust girth", 36))));
        drawer.sittings().replaceOf("a1", List.of(new KeptSitting("", List.of(Invented.pinned("+ sway-back", 0.5)))));
        assertThat(drawer.people().erase(anna.id())).isTrue();
        assertThat(drawer.people().erase(anna.id())).isFalse();
        for (String table : List.of(
                "person", "project", "project_state", "measuring_day", "reading", "sitting", "finding", "file")) {
            try (var connection = books.connect(place);
                    var rows = connection.createStatement().executeQuery("select count(*) from " + table)) {
                rows.next();
                assertThat(rows.getLong(1)).as(table).isZero();
            }
        }
    }

    @Test
    void nothingOfAnotherOwnerIsSeenChangedOrDeleted() {
        Person anna = anna();
        begin("a1", anna, Optional.empty());
        String file = drawer.files().keep(new byte[] {5});
        drawer.trail().note(RecordBook.SINGLE_OWNER, anna.id(), "looked");
        KeptPattern pattern = drawer.patterns().keep(KeptPattern.of("draft/skirt", "skirt", "skirt", "", List.of()));
        Drawer other = book.drawer(SOMEBODY);
        assertThat(other.people().list("", true)).isEmpty();
        assertThat(other.people().find(anna.id())).isEmpty();
        assertThatThrownBy(() -> other.people().change(anna)).isInstanceOf(OutdatedException.class);
        assertThat(other.people().erase(anna.id())).isFalse();
        assertThat(other.projects().find("a1")).isEmpty();
        assertThat(other.projects().states("a1")).isEmpty();
        assertThat(other.projects().archive("a1", true)).isFalse();
        assertThat(other.projects().delete("a1")).isFalse();
        assertThat(other.patterns().find(pattern.id())).isEmpty();
        assertThat(other.patterns().delete(pattern.id())).isFalse();
        assertThat(other.files().has(file)).isFalse();
        assertThat(other.files().sweep()).isZero();
        assertThat(other.trail().of(anna.id())).isEmpty();
        assertThat(drawer.files().has(file)).isTrue();
        assertThat(drawer.people().find(anna.id())).contains(anna);
        assertThat(drawer.projects().find("a1")).isPresent();
    }

    @Test
    void aRowCannotHangOnAnotherOwnersRow() {
        Person anna = anna();
        Drawer other = book.drawer(SOMEBODY);
        assertThatThrownBy(() -> other.days().replaceOwn(anna.id(), List.of(Invented.day("2026-10-01"))))
                .isInstanceOf(RecordBookException.class);
        assertThatThrownBy(() -> other.projects()
                        .begin(Invented.begun(
                                "a1", new KeptProject.Head("Dress", Optional.of(anna.id()), Optional.empty(), ""), "")))
                .isInstanceOf(RecordBookException.class);
        assertThat(drawer.days().of(anna.id())).isEmpty();
        assertThat(other.projects().list(Sought.all())).isEmpty();
    }

    @Test
    void theTrailSaysWhoLookedAtWhom() {
        Person anna = anna();
        drawer.trail().note(SOMEBODY, anna.id(), "looked");
        assertThat(drawer.trail().of(anna.id()))
                .extracting("account", "what")
                .containsExactly(org.assertj.core.groups.Tuple.tuple(SOMEBODY, "looked"));
    }

    @Test
    void whatIsDoneTogetherIsDoneWhollyOrNotAtAll() {
        Person anna = anna();
        assertThatThrownBy(() -> drawer.together(all -> {
                    all.people().change(anna.withNote("half"));
                    all.projects().begin(Invented.begun("a1", "Dress", ""));
                    return all.people().change(anna.withNote("the old version again"));
                }))
                .isInstanceOf(OutdatedException.class);
        assertThat(drawer.people().find(anna.id())).contains(anna);
        assertThat(drawer.projects().find("a1")).isEmpty();
        assertThat(drawer.people().change(anna.withNote("whole")).note()).isEqualTo("whole");
    }
}
