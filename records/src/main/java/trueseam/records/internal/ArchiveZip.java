package trueseam.records.internal;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import trueseam.records.archive.ArchiveException;

/**
 * An archive that is read. All of it is looked at before any of it is used: every file is named in the manifest, has the size and the
 * checksum told there, and nothing else is in it. Nothing is ever unpacked onto the disk.
 */
final class ArchiveZip implements AutoCloseable {

    static final String MANIFEST = "manifest.json";

    static final String FORMAT = "trueseam-record-book";

    static final int VERSION = 1;

    /** A brought file has at most 32 MB; the readings of a school of thousands as CSV stay below this. */
    private static final long LARGEST_FILE = 128L << 20;

    /** So much a record book of thousands of projects has; more is no record book of ours. */
    private static final long LARGEST_WHOLE = 4L << 30;

    /** Below this nothing harms; above it text packs thirtyfold, and only what was made for harm two hundredfold. */
    private static final long HARMLESS = 64L << 20;

    private static final long PACKED_AT_MOST = 200;

    private static final int MOST_FILES = 200_000;

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._-]*(/[a-z0-9][a-z0-9._-]*){0,3}");

    private final ZipFile zip;
    private final Map<String, String> sums = new HashMap<>();

    private ArchiveZip(ZipFile zip) {
        this.zip = zip;
    }

    static ArchiveZip open(Path file) {
        try {
            ZipFile zip = new ZipFile(file.toFile());
            try {
                ArchiveZip archive = new ArchiveZip(zip);
                archive.check(file.toFile().length());
                return archive;
            } catch (RuntimeException e) {
                zip.close();
                throw e;
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new ArchiveException(file.getFileName() + " is no whole zip file");
        }
    }

    private void check(long packed) {
        Set<String> there = names();
        if (!there.contains(MANIFEST)) {
            throw new ArchiveException("it has no " + MANIFEST);
        }
        JsonNode manifest = ArchiveText.json(MANIFEST, bytes(MANIFEST, LARGEST_FILE));
        if (!manifest.path("format").asText().equals(FORMAT)) {
            throw new ArchiveException("it is no archive of a record book");
        }
        if (manifest.path("version").asInt() != VERSION) {
            throw new ArchiveException("it was made by another version of Trueseam");
        }
        long whole = 0;
        for (JsonNode one : manifest.path("files")) {
            String name = one.path("name").asText();
            if (!there.remove(name)) {
                throw new ArchiveException("the file " + shown(name) + " is missing, or named twice");
            }
            long size = one.path("bytes").asLong(-1);
            byte[] content = bytes(name, Math.min(LARGEST_FILE, Math.max(0, size)));
            whole += content.length;
            if (whole > LARGEST_WHOLE || (whole > HARMLESS && whole / PACKED_AT_MOST > packed)) {
                throw new ArchiveException("it unpacks to far more than a record book has");
            }
            String sum = FileRows.mark(content);
            if (content.length != size || !one.path("sha256").asText().equals(sum)) {
                throw new ArchiveException("the file " + name + " is not as it was written");
            }
            sums.put(name, sum);
        }
        there.remove(MANIFEST);
        if (!there.isEmpty()) {
            throw new ArchiveException("the file " + shown(there.iterator().next()) + " is not in its list");
        }
    }

    private Set<String> names() {
        Set<String> names = new HashSet<>();
        for (var each = zip.entries(); each.hasMoreElements(); ) {
            String name = each.nextElement().getName();
            if (!NAME.matcher(name).matches() || name.contains("..")) {
                throw new ArchiveException("a file in it is called " + shown(name) + ", and none of ours is");
            }
            if (!names.add(name)) {
                throw new ArchiveException("the file " + name + " is in it twice");
            }
            if (names.size() > MOST_FILES) {
                throw new ArchiveException("it has more files than a record book");
            }
        }
        return names;
    }

    /** A hostile name is shown, but not as it likes. */
    private static String shown(String name) {
        String plain = name.replaceAll("[^\\x20-\\x7e]", "?");
        return "\"" + (plain.length() > 60 ? plain.substring(0, 60) + "..." : plain) + "\"";
    }

    boolean has(String name) {
        return sums.containsKey(name);
    }

    /** The names below a folder, in order. */
    Set<String> in(String folder) {
        Set<String> names = new TreeSet<>(sums.keySet());
        names.removeIf(name -> !name.startsWith(folder + "/"));
        return names;
    }

    String sum(String name) {
        return sums.getOrDefault(name, "");
    }

    /** A file that was checked; it is checked again, as the disk may have changed under us. */
    byte[] bytes(String name) {
        if (!has(name)) {
            throw new ArchiveException("the file " + shown(name) + " is missing");
        }
        byte[] content = bytes(name, LARGEST_FILE);
        if (!FileRows.mark(content).equals(sum(name))) {
            throw new ArchiveException("the file " + name + " changed while it was read");
        }
        return content;
    }

    /** What the archive says of sizes is not believed: no more is unpacked than was allowed. */
    private byte[] bytes(String name, long atMost) {
        ZipEntry entry = zip.getEntry(name);
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] content = in.readNBytes((int) atMost + 1);
            if (content.length > atMost) {
                throw new ArchiveException("the file " + name + " unpacks to more than it may");
            }
            return content;
        } catch (IOException e) {
            throw new ArchiveException("the file " + name + " is damaged");
        }
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new ArchiveException("it could not be read to its end");
        }
    }
}
