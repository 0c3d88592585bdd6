package trueseam.worktable.start;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import trueseam.records.archive.Archive;
import trueseam.records.archive.ArchiveException;
import trueseam.worktable.page.Brought;
import trueseam.worktable.page.Desk;
import trueseam.worktable.print.MadeSheets;
import trueseam.worktable.project.ShelfException;

/** The record book, or one person of it, as one file to take away, and bringing it back. */
final class TakeAway {

    private final Desk desk;
    private final StartScreen start;

    TakeAway(Desk desk, StartScreen start) {
        this.desk = desk;
        this.start = start;
    }

    private Archive archive() {
        return desk.shelf().drawer().archive();
    }

    /** Written to the disk first: what fails on the way is said, and not half a file. */
    void give(Context context) {
        Optional<String> person =
                Optional.ofNullable(context.queryParam("person")).filter(mark -> !mark.isEmpty());
        MadeSheets made = new MadeSheets(desk, LocalDate.now(ZoneId.systemDefault()));
        try {
            Path file = Files.createTempFile("take-away", ".zip");
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                archive().write(out, person, desk.shelf().drawer().owner(), made::of);
            } catch (IOException | RuntimeException e) {
                Files.delete(file);
                throw e;
            }
            context.contentType("application/zip")
                    .header(
                            "Content-Disposition",
                            "attachment; filename=\"" + (person.isEmpty() ? "record-book" : "one-person") + ".zip\"")
                    .result(Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE));
        } catch (IOException e) {
            throw unwritten(e);
        }
    }

    void bringBack(Context context) {
        UploadedFile brought = context.uploadedFile("file");
        if (brought == null || brought.size() == 0) {
            throw new ArchiveException("no file was chosen");
        }
        try {
            Path folder = Files.createTempDirectory("bring-back");
            Path file = folder.resolve(plain(Brought.name(brought))); // what is wrong with it is said by its own name
            try (InputStream in = brought.content()) {
                Files.copy(in, file);
                start.show(context, archive().bringBack(file).sentence());
            } finally {
                Files.deleteIfExists(file);
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw unwritten(e);
        }
    }

    /** As much of a file's name as is a name everywhere. */
    private static String plain(String name) {
        String plain = name.replaceAll("[^\\p{L}\\p{N}._ -]", "_");
        return plain.matches("[. ]*") ? "archive.zip" : plain.substring(Math.max(0, plain.length() - 80));
    }

    private static ShelfException unwritten(IOException e) {
        return new ShelfException(
                "There is no room for the archive in the folder for passing files; make room, then try again.", e);
    }
}
