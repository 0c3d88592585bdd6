package trueseam.worktable.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Projects on the shelf: nothing lost, nothing overwritten. */
class ShelfTest {

    @TempDir
    private Path folder;

    private static Project with(Project project, String amount) {
        return project.with(project.chart().withDecision("bust girth", amount));
    }

    @Test
    void whatWasChangedIsThereAfterANewStart() {
        String id;
        try (Shelf shelf = Shelf.open(folder)) {
            id = shelf.begin(Project.named("Dress"));
            shelf.change(id, 1, kept -> kept.changed("Full bust: 1", "", with(kept.project(), "1")));
        }
        try (Shelf shelf = Shelf.open(folder)) {
            Kept kept = shelf.kept(id);
            assertThat(kept.project().chart().decisions()).containsEntry("bust girth", "1");
            assertThat(kept.undoable()).contains("Full bust: 1");
            assertThat(kept.undone().project()).isEqualTo(Project.named("Dress"));
        }
    }

    @Test
    void aChangeOfAnOldVersionIsRefusedAndChangesNothing() {
        try (Shelf shelf = Shelf.open(folder)) {
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
        try (Shelf shelf = Shelf.open(folder)) {
            assertThat(shelf.list()).isEmpty();
            assertThatThrownBy(() -> Shelf.open(folder))
                    .isInstanceOf(ShelfException.class)
                    .hasMessageContaining("in use by another running Trueseam");
        }
    }

    @Test
    void aFolderThatCannotBeUsedIsOneSentence() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        assertThatThrownBy(() -> Shelf.open(file))
                .isInstanceOf(ShelfException.class)
                .hasMessageContaining("--data");
    }

    @Test
    void aFileHalfWrittenBesideIsNoProject() throws IOException {
        try (Shelf shelf = Shelf.open(folder)) {
            String id = shelf.begin(Project.named("Dress"));
            Files.writeString(folder.resolve("projects").resolve(id + ".json.new"), "{\"version\":");
            assertThat(shelf.list()).extracting(Shelf.Listed::id).containsExactly(id);
        }
    }

    @Test
    void theSameFileBroughtTwiceIsKeptOnce() throws IOException {
        try (Shelf shelf = Shelf.open(folder)) {
            String mark = shelf.keepFile("<svg/>");
            assertThat(shelf.keepFile("<svg/>")).isEqualTo(mark);
            assertThat(shelf.file(mark)).isEqualTo("<svg/>");
            try (Stream<Path> files = Files.list(folder.resolve("files"))) {
                assertThat(files).hasSize(1);
            }
        }
    }

    @Test
    void aMarkIsNeverAPath() {
        try (Shelf shelf = Shelf.open(folder)) {
            assertThatThrownBy(() -> shelf.kept("../secret")).isInstanceOf(NoSuchProjectException.class);
            assertThatThrownBy(() -> shelf.file("../secret")).isInstanceOf(NoSuchProjectException.class);
        }
    }
}
