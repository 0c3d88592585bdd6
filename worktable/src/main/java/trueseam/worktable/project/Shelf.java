package trueseam.worktable.project;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The data folder: projects, and the files that were brought. Every change is on disk before it is answered: written beside and moved
 * into place. One running program at a time has the folder. Safe for use by several threads.
 */
public final class Shelf implements AutoCloseable {

    private static final Pattern MARK = Pattern.compile("[0-9a-f]{8,64}");
    private static final ObjectMapper JSON =
            new ObjectMapper().configure(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES, false);

    private final Path projects;
    private final Path files;
    private final Path secret;
    private final FileChannel lock;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, Kept> known = new ConcurrentHashMap<>();

    private Shelf(Path folder, FileChannel lock) throws IOException {
        this.projects = Files.createDirectories(folder.resolve("projects"));
        this.files = Files.createDirectories(folder.resolve("files"));
        this.secret = folder.resolve("secret");
        this.lock = lock;
    }

    /**
     * Takes the data folder into use.
     *
     * @param folder the folder; it is made if it is not there
     * @return the shelf
     * @throws ShelfException if it cannot be written, or another running program has it
     */
    public static Shelf open(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel lock =
                    FileChannel.open(folder.resolve("in-use"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(lock)) {
                lock.close();
                throw new ShelfException(
                        "The data folder " + folder + " is in use by another running Trueseam; use that one, close it,"
                                + " or name another folder with --data.",
                        null);
            }
            return new Shelf(folder, lock);
        } catch (IOException e) {
            throw new ShelfException(
                    "The data folder " + folder + " cannot be used (" + e.getMessage()
                            + "); name a folder that can be written with --data.",
                    e);
        }
    }

    private static boolean locked(FileChannel lock) throws IOException {
        try {
            return lock.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false; // by this very process, in tests
        }
    }

    /**
     * One line of the list of projects.
     *
     * @param id the project's mark
     * @param project what it is now
     * @param changed when it was changed last, milliseconds since 1970
     */
    public record Listed(String id, Project project, long changed) {}

    /**
     * All projects.
     *
     * @return the last changed first
     */
    public List<Listed> list() {
        try (Stream<Path> all = Files.list(projects)) {
            List<Listed> listed = new ArrayList<>();
            for (Path file : all.filter(f -> f.toString().endsWith(".json")).toList()) {
                String id = file.getFileName().toString().replace(".json", "");
                listed.add(new Listed(
                        id, kept(id).project(), Files.getLastModifiedTime(file).toMillis()));
            }
            listed.sort(Comparator.comparingLong(Listed::changed).reversed());
            return listed;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Begins a project.
     *
     * @param project what is known
     * @return its mark
     */
    public String begin(Project project) {
        byte[] bytes = new byte[8];
        random.nextBytes(bytes);
        String id = HexFormat.of().formatHex(bytes);
        keep(id, Kept.begun(project));
        return id;
    }

    /**
     * A project with its earlier states.
     *
     * @param id its mark
     * @return the project
     * @throws NoSuchProjectException if there is none
     */
    public Kept kept(String id) {
        return known.computeIfAbsent(checked(id), mark -> {
            try {
                return JSON.readValue(Files.readString(projects.resolve(mark + ".json")), Kept.class);
            } catch (java.nio.file.NoSuchFileException e) {
                throw new NoSuchProjectException();
            } catch (IOException e) {
                throw unreadable(e);
            }
        });
    }

    /**
     * Changes a project.
     *
     * @param id its mark
     * @param version the version that was changed
     * @param how the change, from what is kept now to what shall be
     * @return what is kept now
     * @throws ChangedElsewhereException if it has another version; nothing is changed then
     */
    public synchronized Kept change(String id, long version, UnaryOperator<Kept> how) {
        Kept now = kept(id);
        if (now.version() != version) {
            throw new ChangedElsewhereException(now.version());
        }
        Kept changed = how.apply(now);
        if (changed.version() != now.version()) {
            keep(id, changed);
        }
        return changed;
    }

    /**
     * Deletes a project for good.
     *
     * @param id its mark
     */
    public synchronized void delete(String id) {
        try {
            Files.deleteIfExists(projects.resolve(checked(id) + ".json"));
            known.remove(id);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Keeps the text of a file that was brought.
     *
     * @param text the text
     * @return its shelf mark, the same for the same text
     */
    public String keepFile(String text) {
        String mark = HexFormat.of().formatHex(sha256(text));
        Path file = files.resolve(mark);
        if (!Files.exists(file)) {
            write(file, text);
        }
        return mark;
    }

    /**
     * The text of a file that was brought.
     *
     * @param mark its shelf mark
     * @return the text
     */
    public String file(String mark) {
        try {
            return Files.readString(files.resolve(checked(mark)));
        } catch (IOException e) {
            throw new ShelfException(
                    "The pattern file of this project is not in the data folder any more; bring it again.", e);
        }
    }

    /**
     * A secret of this data folder, for telling our own pages from other people's.
     *
     * @return the secret; the same after a new start, so that an open page goes on working
     */
    public synchronized String secret() {
        try {
            if (!Files.exists(secret)) {
                byte[] bytes = new byte[16];
                random.nextBytes(bytes);
                write(secret, HexFormat.of().formatHex(bytes));
            }
            return Files.readString(secret);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private void keep(String id, Kept kept) {
        try {
            write(projects.resolve(id + ".json"), JSON.writeValueAsString(kept));
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a project is plain text", e);
        }
        known.put(id, kept);
    }

    private static void write(Path file, String text) {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        try {
            try (FileChannel channel = FileChannel.open(
                    beside,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.TRUNCATE_EXISTING)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new ShelfException(
                    "Your last change could not be written to the data folder (" + e.getMessage()
                            + "), so it was not made; make room there, then make it again.",
                    e);
        }
    }

    private static ShelfException unreadable(IOException e) {
        return new ShelfException("The data folder cannot be read (" + e.getMessage() + ").", e);
    }

    private static String checked(String mark) {
        if (!MARK.matcher(mark).matches()) {
            throw new NoSuchProjectException();
        }
        return mark;
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }
}
