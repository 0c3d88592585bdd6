package trueseam.worktable.project;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.person.MeasuringDay;
import trueseam.records.person.Person;
import trueseam.records.person.TrendPoint;
import trueseam.records.project.KeptProject;
import trueseam.records.sitting.Evidence;
import trueseam.worktable.project.PersonPart.Day;
import trueseam.worktable.project.PersonPart.Typed;

/** What follows from a project has rows of its own, and projects of older versions get there too. */
class RecordBookRowsTest {

    @TempDir
    private Path folder;

    private DataFolder data;
    private RecordBook book;
    private Shelf shelf;
    private Drawer drawer;

    @BeforeEach
    void open() {
        data = DataFolder.open(folder);
        book = data.recordBook(Optional.empty(), Optional.empty(), Clock.systemUTC());
        drawer = book.drawer(RecordBook.SINGLE_OWNER);
        shelf = new Shelf(drawer);
    }

    @AfterEach
    void close() {
        book.close();
        data.close();
    }

    private static Project of(String label, Day... days) {
        return Project.named("Dress for " + label).with(new PersonPart(label, "in", List.of(days)));
    }

    private static Day day(String date, String bust) {
        return new Day(date, List.of(new Typed("bust girth", "", bust, "in")), "");
    }

    private Kept change(String id, Project project) {
        Kept kept = shelf.kept(id);
        return shelf.change(id, kept.version(), now -> now.changed("change", "", project));
    }

    private KeptProject row(String id) {
        return drawer.projects().find(id).orElseThrow();
    }

    @Test
    void aPersonIsThereAsSoonAsSomethingIsKnownOfHerAndFollowsWhatIsTyped() {
        String id = shelf.begin(Project.named("Dress"));
        assertThat(drawer.people().list("", true)).isEmpty();
        change(id, of("R"));
        change(id, of("Rosalind", day("2026-11-20", "37 1/2")));
        assertThat(drawer.people().list("", true)).extracting(Person::label).containsExactly("Rosalind");
        String person = row(id).head().person().orElseThrow();
        assertThat(drawer.days().trend(person, "bust girth"))
                .containsExactly(new TrendPoint("2026-11-20", "", 952.5, ""));
        shelf.change(id, shelf.kept(id).version(), Kept::undone);
        assertThat(drawer.days().of(person)).as("undone").isEmpty();
        shelf.change(id, shelf.kept(id).version(), Kept::redone);
        assertThat(drawer.days().of(person)).hasSize(1);
    }

    @Test
    void theNextProjectOfAPersonBeginsWithHerMeasures() {
        String first = shelf.begin(of("Rosalind", day("2025-11-20", "37"), day("2026-11-20", "37 1/2")));
        String person = row(first).head().person().orElseThrow();
        PersonPart known = shelf.person(person).orElseThrow();
        assertThat(known).isEqualTo(shelf.kept(first).project().person());
        String next = shelf.begin(Project.named("Skirt").with(known), Optional.of(person));
        assertThat(row(next).head().person()).contains(person);
        change(next, Project.named("Skirt").with(known.withNextDay(day("2026-12-01", "38"))));
        assertThat(drawer.days().of(person))
                .extracting(MeasuringDay::date)
                .containsExactly("2025-11-20", "2026-11-20", "2026-12-01");
        assertThat(shelf.kept(first).project().person())
                .as("the first was fitted to these")
                .isEqualTo(known);
    }

    @Test
    void aPatternIsOneRowForAllItsProjectsAndADraftGoesWithItsLast() {
        String mark = shelf.keepFile("<svg/>");
        PatternPart bought = new PatternPart("file", "", List.of(), "", "14", mark, "dress.svg", Map.of());
        PatternPart draft = new PatternPart("draft", "skirt", List.of(), "misses", "", "", "", Map.of());
        String one = shelf.begin(Project.named("One").with(bought));
        String two = shelf.begin(Project.named("Two").with(bought));
        String three = shelf.begin(Project.named("Three").with(draft));
        assertThat(row(one).head().pattern())
                .isEqualTo(row(two).head().pattern())
                .isPresent();
        assertThat(row(one).head().size()).isEqualTo("14");
        assertThat(row(three).garment()).isEqualTo("skirt");
        change(three, Project.named("Three").with(bought));
        assertThat(drawer.patterns().list("", true))
                .extracting(KeptPattern::name)
                .containsExactly("dress.svg");
        shelf.delete(one);
        shelf.delete(two);
        shelf.delete(three);
        assertThat(drawer.patterns().list("", true))
                .as("a pattern that was brought stays")
                .hasSize(1);
        assertThat(shelf.file(mark)).isEqualTo("<svg/>");
    }

    @Test
    void whatIsPinnedIsEvidenceOfThePerson() {
        TrialPart.Seen seen = new TrialPart.Seen("3.1", "", "+ sway-back", "1/2", "fold", "both", "");
        String id = shelf.begin(of("Rosalind").with(TrialPart.empty().withSeen(seen)));
        String person = row(id).head().person().orElseThrow();
        assertThat(drawer.sittings().evidence(person))
                .extracting(Evidence::alteration, e -> e.amountMm().getAsDouble())
                .containsExactly(org.assertj.core.groups.Tuple.tuple("+ sway-back", 12.7));
    }

    @Test
    void aProjectThatAnotherProgramChangedIsReadAnew() {
        String id = shelf.begin(Project.named("Dress"));
        Shelf elsewhere = new Shelf(drawer);
        elsewhere.change(id, 1, kept -> kept.changed("name", "", Project.named("Blue dress")));
        assertThat(shelf.kept(id).project().name()).isEqualTo("Blue dress");
        assertThat(shelf.kept(id).undoable()).contains("name");
    }

    @Test
    void projectsInFilesOfAnOlderVersionAreTakenOverOnceAndMovedAside() throws IOException {
        String text = "<svg data-pattern=\"dress\"/>";
        String mark = shelf.keepFile(text); // old files were named by what is in them, too
        assertThat(drawer.files().sweep()).isEqualTo(1);
        close();
        Path projects = Files.createDirectories(folder.resolve("projects"));
        Path files = Files.createDirectories(folder.resolve("files"));
        Files.writeString(files.resolve(mark), text);
        Kept dress = Kept.begun(of("Rosalind", day("2025-11-20", "37")))
                .changed("measured", "", of("Rosalind", day("2025-11-20", "37 1/4")))
                .changed("again", "", of("Rosalind", day("2025-11-20", "37 1/2")))
                .undone();
        Kept skirt = Kept.begun(of("rosalind ", day("2026-11-20", "38")));
        ObjectMapper json = new ObjectMapper();
        Files.writeString(projects.resolve("d0d0d0d0.json"), json.writeValueAsString(dress));
        Files.writeString(projects.resolve("e1e1e1e1.json"), json.writeValueAsString(skirt));
        Files.writeString(projects.resolve("e1e1e1e1.json.new"), "{\"version\":");
        open();
        Kept taken = shelf.kept("d0d0d0d0");
        assertThat(taken).isEqualTo(dress);
        assertThat(taken.undoable()).contains("measured");
        assertThat(taken.redoable()).contains("again");
        assertThat(drawer.people().list("", true)).as("one label is one person").hasSize(1);
        String person = row("e1e1e1e1").head().person().orElseThrow();
        assertThat(drawer.days().trend(person, "bust girth"))
                .extracting(TrendPoint::mm)
                .containsExactly(946.15, 965.2);
        assertThat(shelf.file(mark)).isEqualTo(text);
        assertThat(folder.resolve("projects")).doesNotExist();
        assertThat(folder.resolve("projects-before-record-book").resolve("d0d0d0d0.json"))
                .exists();
        try (Stream<Path> aside = Files.list(folder.resolve("files-before-record-book"))) {
            assertThat(aside).hasSize(1);
        }
        change("d0d0d0d0", Project.named("Later"));
        close();
        open();
        assertThat(shelf.kept("d0d0d0d0").project().name()).isEqualTo("Later");
    }
}
