package trueseam.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.trouble.OutdatedException;

/** Many who change the same at once: each change is made once, on the version that it was made from. */
@ParameterizedClass
@EnumSource(Books.class)
class ManyAtOnceTest {

    private static final int PEOPLE_AT_ONCE = 16;
    private static final int CHANGES_EACH = 10;

    @Parameter
    private Books books;

    /** How often a change was refused on the way, over all who write. */
    private static int refused(Callable<Integer> writing) throws InterruptedException, ExecutionException {
        ExecutorService all = Executors.newFixedThreadPool(PEOPLE_AT_ONCE);
        try {
            List<Future<Integer>> done = new ArrayList<>();
            for (int i = 0; i < PEOPLE_AT_ONCE; i++) {
                done.add(all.submit(writing));
            }
            int refused = 0;
            for (Future<Integer> one : done) {
                refused += one.get();
            }
            return refused;
        } finally {
            all.shutdownNow();
        }
    }

    @Test
    void noChangeOfAPersonIsLost() throws InterruptedException, ExecutionException {
        try (RecordBook book = books.open(books.fresh())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            String id = drawer.people().add(Person.named("Anna", "in", "")).id();
            int refused = refused(() -> {
                int again = 0;
                for (int made = 0; made < CHANGES_EACH; ) {
                    Person now = drawer.people().find(id).orElseThrow();
                    try {
                        drawer.people().change(now.withNote(now.note() + "x"));
                        made++;
                    } catch (OutdatedException e) {
                        again++;
                    }
                }
                return again;
            });
            Person last = drawer.people().find(id).orElseThrow();
            assertThat(last.note()).hasSize(PEOPLE_AT_ONCE * CHANGES_EACH);
            assertThat(last.version()).isEqualTo(1 + PEOPLE_AT_ONCE * CHANGES_EACH);
            assertThat(refused).as("they met").isPositive();
        }
    }

    @Test
    void noChangeOfAProjectIsLost() throws InterruptedException, ExecutionException {
        try (RecordBook book = books.open(books.fresh())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            drawer.projects().begin(Invented.begun("a1", "Dress", "0"));
            KeptProject.Head head = new KeptProject.Head("Dress", Optional.empty(), Optional.empty(), "");
            int refused = refused(() -> {
                int again = 0;
                for (int made = 0; made < CHANGES_EACH; ) {
                    long version = drawer.projects().find("a1").orElseThrow().version();
                    ProjectState next = new ProjectState(version + 1, "", "", String.valueOf(version));
                    try {
                        drawer.projects()
                                .change(new ProjectChange(
                                        "a1", version, version + 1, head, version + 1, List.of(), List.of(next)));
                        made++;
                    } catch (OutdatedException e) {
                        again++;
                    }
                }
                return again;
            });
            assertThat(drawer.projects().states("a1"))
                    .extracting(ProjectState::number)
                    .doesNotHaveDuplicates()
                    .hasSize(1 + PEOPLE_AT_ONCE * CHANGES_EACH);
            assertThat(refused).as("they met").isPositive();
        }
    }

    @Test
    void aPatternBroughtByManyAtOnceIsOnePattern() throws InterruptedException, ExecutionException {
        try (RecordBook book = books.open(books.fresh())) {
            Drawer drawer = book.drawer(RecordBook.SINGLE_OWNER);
            refused(() -> {
                drawer.together(all -> {
                    String mark = all.files().keep(new byte[] {7});
                    return all.patterns()
                            .keep(trueseam.records.pattern.KeptPattern.of("file/" + mark, "p.svg", "", "", List.of()));
                });
                return 0;
            });
            assertThat(drawer.patterns().list("", true)).hasSize(1);
        }
    }
}
