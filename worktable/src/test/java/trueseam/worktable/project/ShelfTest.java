package trueseam.worktable.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trueseam.records.RecordBook;

/** Projects on the shelf: nothing lost, nothing overwritten. */
class ShelfTest {

    @TempDir
    private Path folder;

    /** A data folder in use. */
    private record Opened(DataFolder folder, RecordBook book, Shelf shelf) implements AutoCloseable {

        Opened(Path path) {
            this(DataFolder.open(path));
        }

        private Opened(DataFolder folder) {
            this(folder, folder.recordBook(Optional.empty(), Optional.empty(), Clock.systemUTC()));
        }

        private Opened(DataFolder folder, RecordBook book) {
            this(folder, book, new Shelf(book.drawer(RecordBook.SINGLE_OWNER)));
        }

        @Override
        public void close() {
            book.close();
            folder.close();
        }
    }

    private static Project with(Project project, String amount) {
        return project.with(project.chart().withDecision("bust girth", amount));
    }

    @Test
    void whatWasChangedIsThereAfterANewStart() {
        String id;
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            id = shelf.begin(Project.named("Dress"));
            shelf.change(id, 1, kept -> kept.changed("Full bust: 1", "", with(kept.project(), "1")));
        }
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            Kept kept = shelf.kept(id);
            assertThat(kept.project().chart().decisions()).containsEntry("bust girth", "1");
            assertThat(kept.undoable()).contains("Full bust: 1");
            assertThat(kept.undone().project()).isEqualTo(Project.named("Dress"));
        }
    }

    @Test
    void aChangeOfAnOldVersionIsRefusedAndChangesNothing() {
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            String id = shelf.begin(Project.named("Dress"));
            shelf.change(id, 1, kept -> kept.changed("1", "", with(kept.project(), "1")));
            assertThatThrownBy(() -> shelf.change(id, 1, kept -> kept.changed("2", "", with(kept.project(), "2"))))
                    .isInstanceOf(ChangedElsewhereException.class)
                    .hasMessageContaining("another tab");
            assertThat(shelf.kept(id).project().chart().decisions()).containsEntry("bust girth", "1");
        }
    }

    @Test
    void goingOnTypingInOneFieldIsOneChange() {
        Kept kept = Kept.begun(Project.named("Dress"));
        for (String typed : List.of("1", "1 1", "1 1/2")) {
            kept = kept.changed("Full bust: " + typed, "decision/bust girth", with(kept.project(), typed));
        }
        assertThat(kept.undoable()).contains("Full bust: 1 1/2");
        assertThat(kept.undone().project()).isEqualTo(Project.named("Dress"));
    }

    @Test
    void everyChangeCanBeTakenBackAndBroughtBackInOrder() {
        Kept kept = Kept.begun(Project.named("Dress"));
        for (int i = 1; i <= 5; i++) {
            kept = kept.changed("to " + i, "", with(kept.project(), String.valueOf(i)));
        }
        Kept last = kept;
        for (int i = 0; i < 5; i++) {
            kept = kept.undone();
        }
        assertThat(kept.project()).isEqualTo(Project.named("Dress"));
        assertThat(kept.undoable()).isEmpty();
        for (int i = 0; i < 5; i++) {
            kept = kept.redone();
        }
        assertThat(kept.project()).isEqualTo(last.project());
        assertThat(kept.version())
                .as("going back and forth is seen by other tabs")
                .isGreaterThan(last.version());
    }

    @Test
    void aChangeAfterUndoingForgetsWhatWasUndone() {
        Kept kept = Kept.begun(Project.named("Dress"))
                .changed("a", "", Project.named("A"))
                .changed("b", "", Project.named("B"))
                .undone()
                .changed("c", "", Project.named("C"));
        assertThat(kept.redoable()).isEmpty();
        assertThat(kept.undone().project()).isEqualTo(Project.named("A"));
    }

    @Test
    void twoProgramsCannotHaveOneFolder() {
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            assertThat(shelf.list()).isEmpty();
            assertThatThrownBy(() -> DataFolder.open(folder))
                    .isInstanceOf(ShelfException.class)
                    .hasMessageContaining("in use by another running Trueseam");
        }
    }

    @Test
    void aFolderThatCannotBeUsedIsOneSentence() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        assertThatThrownBy(() -> DataFolder.open(file))
                .isInstanceOf(ShelfException.class)
                .hasMessageContaining("--data");
    }

    @Test
    void theSameFileBroughtTwiceIsKeptOnce() {
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            String mark = shelf.keepFile("<svg/>");
            assertThat(shelf.keepFile("<svg/>")).isEqualTo(mark);
            assertThat(shelf.file(mark)).isEqualTo("<svg/>");
        }
    }

    @Test
    void aMarkIsNeverAPath() {
        try (Opened opened = new Opened(folder)) {
            Shelf shelf = opened.shelf();
            assertThatThrownBy(() -> shelf.kept("../secret")).isInstanceOf(NoSuchProjectException.class);
            assertThatThrownBy(() -> shelf.file("../secret")).isInstanceOf(NoSuchProjectException.class);
        }
    }
}
