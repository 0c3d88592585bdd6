package trueseam.worktable.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import trueseam.cloth.lay.Lay;
import trueseam.intake.body.EntryRules;
import trueseam.worktable.project.ClothPart;
import trueseam.worktable.project.ClothPart.Lengths;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.work.Workings;

/** Searches that are stopped, dropped, waited for and not wanted any more. */
class SearchesTest {

    /** Remembers what was kept. */
    private static final class Kept implements Search.Keeping {
        /** Every round asks whether it is wanted. */
        private final CountDownLatch asked = new CountDownLatch(1);

        private final CountDownLatch layouts = new CountDownLatch(1);
        private volatile Lay lay;
        private volatile boolean wanted = true;

        @Override
        public boolean layout(Lay found, int rounds) {
            lay = found;
            layouts.countDown();
            return true;
        }

        @Override
        public void lengths(Lengths lengths) {
            // Not looked at here.
        }

        @Override
        public boolean isWanted() {
            asked.countDown();
            return wanted;
        }

        @Override
        public long version() {
            return 0;
        }
    }

    private static Search.Order order(String project, Kept kept) {
        Project skirt = Project.named("A skirt")
                .with(new PatternPart("draft", "skirt", List.of(), "misses", "14", "", "", Map.of()))
                .with(ClothPart.empty()
                        .with(
                                "fashion",
                                ClothPart.empty()
                                        .of("fashion")
                                        .chosen(Map.of("patience", "longest"), List.of(), List.of(), List.of())));
        Plan plan = Plan.of(
                        new Workings(skirt, mark -> new byte[0], EntryRules.usual(), LocalDate.of(2026, 11, 27)),
                        ClothChoices.of(skirt))
                .get();
        return new Search.Order(project, plan.laying().mark(), plan, true, kept);
    }

    @Test
    void whatIsStoppedKeepsTheBest() throws InterruptedException {
        Kept kept = new Kept();
        try (Searches searches = new Searches(1)) {
            searches.begin(order("one", kept));
            assertThat(kept.asked.await(1, TimeUnit.MINUTES)).isTrue();
            searches.stop("one");
            assertThat(kept.layouts.await(1, TimeUnit.MINUTES)).isTrue();
        }
    }

    @Test
    void closingEndsAllAndKeepsTheBest() throws InterruptedException {
        Kept kept = new Kept();
        Searches searches = new Searches(1);
        searches.begin(order("one", kept));
        Search search = searches.of("one").orElseThrow();
        assertThat(kept.asked.await(1, TimeUnit.MINUTES)).isTrue();
        searches.close();
        assertThat(search.isRunning()).isFalse();
        assertThat(kept.lay).isNotNull();
    }

    @Test
    void anotherSearchOfTheSameProjectDropsTheFirstAndNothingOfThatIsKept() throws InterruptedException {
        Kept first = new Kept();
        Kept second = new Kept();
        Searches searches = new Searches(1);
        searches.begin(order("one", first));
        Search dropped = searches.of("one").orElseThrow();
        searches.begin(order("one", second));
        assertThat(dropped.isStopped()).isTrue();
        assertThat(second.asked.await(1, TimeUnit.MINUTES)).isTrue();
        searches.close();
        assertThat(first.lay).isNull();
        assertThat(second.lay).isNotNull();
    }

    @Test
    void aSearchWhoseProjectIsGoneEndsByItselfAndTheNextHasItsTurn() throws InterruptedException {
        Kept gone = new Kept();
        gone.wanted = false;
        Kept next = new Kept();
        next.wanted = false;
        try (Searches searches = new Searches(1)) {
            searches.begin(order("gone", gone));
            searches.begin(order("next", next));
            assertThat(next.layouts.await(1, TimeUnit.MINUTES)).isTrue();
            assertThat(searches.of("gone").orElseThrow().isRunning()).isFalse();
        }
    }
}
