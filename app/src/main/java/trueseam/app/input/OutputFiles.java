package trueseam.app.input;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes result files: each is written beside its place under another name and then moved there, so that nobody ever finds half a
 * file; and nothing is written before everything is ready.
 */
public final class OutputFiles {

    private final Map<Path, byte[]> ready = new LinkedHashMap<>();

    /** Begins with nothing to write. */
    public OutputFiles() {}

    /**
     * Makes a file ready.
     *
     * @param file where it goes
     * @param content what is in it
     * @return these files
     */
    public OutputFiles add(Path file, byte[] content) {
        ready.put(file, content.clone());
        return this;
    }

    /**
     * Makes a text file ready.
     *
     * @param file where it goes
     * @param text what is in it
     * @return these files
     */
    public OutputFiles add(Path file, String text) {
        return add(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes one file that is too large to be made ready first.
     *
     * @param file where it goes
     * @param content writes what is in it
     * @throws InputException if it cannot be written; nothing is there then
     */
    public static void write(Path file, Consumer<OutputStream> content) {
        OutputFiles one = new OutputFiles().add(file, new byte[0]);
        one.refuseFolders();
        Path beside = beside(file);
        try {
            Files.createDirectories(beside.getParent());
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
                content.accept(out);
            }
            moveInPlace(beside, file);
        } catch (IOException e) {
            throw one.unwritten(e);
        } catch (UncheckedIOException e) {
            throw one.unwritten(e.getCause());
        } finally {
            discard(beside);
        }
    }

    /**
     * Writes all of them.
     *
     * @throws InputException if one cannot be written; those before it are in place, none is half-written
     */
    public void write() {
        refuseFolders();
        Map<Path, Path> moves = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> file : ready.entrySet()) {
                moves.put(writtenBeside(file.getKey(), file.getValue()), file.getKey());
            }
            for (Map.Entry<Path, Path> move : moves.entrySet()) {
                moveInPlace(move.getKey(), move.getValue());
            }
        } catch (IOException e) {
            moves.keySet().forEach(OutputFiles::discard);
            throw unwritten(e);
        }
    }

    private InputException unwritten(IOException e) {
        return new InputException("The results cannot be written to " + where() + " (" + why(e)
                + "); check that the folder may be written to and that there is room.");
    }

    private static String why(IOException e) {
        if (e instanceof FileAlreadyExistsException there) {
            return there.getFile() + " is a file, and a folder is needed there";
        }
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be written to";
        }
        if (e instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there and cannot be made";
        }
        return String.valueOf(e.getMessage());
    }

    private void refuseFolders() {
        for (Path file : ready.keySet()) {
            if (Files.isDirectory(file)) {
                throw new InputException(file + " is a folder; name the file to write.");
            }
        }
    }

    private String where() {
        Path first = ready.keySet().iterator().next().toAbsolutePath();
        return String.valueOf(first.getParent());
    }

    private static Path writtenBeside(Path file, byte[] content) throws IOException {
        Path beside = beside(file);
        Files.createDirectories(beside.getParent());
        Files.write(beside, content);
        return beside;
    }

    /** Not a temporary file of the system's: those are closed to everybody else for good. */
    private static Path beside(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return folder.resolve(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    }

    private static void moveInPlace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            part.toFile().deleteOnExit();
        }
    }
}
