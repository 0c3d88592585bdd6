package trueseam.records.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** An archive that is written, file after file, and at last its manifest. Used by one thread. */
final class ArchiveSheets {

    private final ZipOutputStream zip;
    private final ObjectNode manifest = ArchiveText.object();
    private final ArrayNode files;

    ArchiveSheets(OutputStream out) {
        this.zip = new ZipOutputStream(out);
        manifest.put("format", ArchiveZip.FORMAT);
        manifest.put("version", ArchiveZip.VERSION);
        this.files = manifest.putArray("files");
    }

    void add(String name, byte[] content) {
        put(name, content);
        files.addObject().put("name", name).put("bytes", content.length).put("sha256", FileRows.mark(content));
    }

    void end(String holds, long now) {
        manifest.put("holds", holds);
        manifest.put("made", Instant.ofEpochMilli(now).toString());
        put(ArchiveZip.MANIFEST, ArchiveText.json(manifest));
        try {
            zip.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void put(String name, byte[] content) {
        try {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
