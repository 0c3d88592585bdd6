package trueseam.records.internal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where the files lie in an archive: in a folder by what they are. Used by one thread. */
final class ArchiveFiles {

    /** Every column of {@code files.csv}. */
    static final List<String> COLUMNS = List.of("mark", "size", "kept_at", "file");

    private static final Map<ArchiveTable, Map<String, String>> FOLDERS = Map.of(
            ArchiveTable.PERSON, Map.of("photo", "photos"),
            ArchiveTable.PATTERN_FILE, Map.of("mark", "patterns"),
            ArchiveTable.SIZE_TABLE, Map.of("mark", "tables"),
            ArchiveTable.FIT, Map.of("report", "reports", "altered", "altered"));

    private final Map<String, String> folders = new HashMap<>();
    private final Set<String> named = new HashSet<>();

    /** What was typed names files by their marks. */
    void named(String content) {
        named.addAll(FileRows.marksIn(content));
    }

    /** Whether what was typed names the file of a line. */
    boolean isNamed(Map<String, String> line) {
        return named.contains(line.get("mark"));
    }

    void of(ArchiveTable table, Map<String, String> line) {
        FOLDERS.getOrDefault(table, Map.of()).forEach((column, folder) -> {
            if (!line.get(column).isEmpty()) {
                folders.putIfAbsent(line.get(column), folder);
            }
        });
    }

    /** Writes the files that are wanted, and gives the list of them. */
    byte[] written(Rows rows, ArchiveSheets sheets, boolean all) {
        List<Map<String, String>> lines = new ArrayList<>();
        for (Map<String, String> line : ArchiveTable.FILE.rows(rows, Optional.empty())) {
            String mark = line.get("mark");
            if (all || named.contains(mark) || folders.containsKey(mark)) {
                byte[] content = new FileRows(rows).read(mark).orElseThrow();
                String name = folders.getOrDefault(mark, "files") + "/" + mark + ending(content);
                sheets.add(name, content);
                line.put("file", name);
                lines.add(line);
            }
        }
        return ArchiveText.csv(COLUMNS, lines);
    }

    /** By what it begins with, so that it opens in the right program. */
    private static String ending(byte[] content) {
        String head = new String(content, 0, Math.min(content.length, 1000), StandardCharsets.ISO_8859_1);
        if (head.startsWith("%PDF")) {
            return ".pdf";
        }
        if (head.startsWith("\u0089PNG")) {
            return ".png";
        }
        if (head.startsWith("\u00ff\u00d8\u00ff")) {
            return ".jpg";
        }
        if (head.contains("<svg")) {
            return ".svg";
        }
        if (head.stripLeading().startsWith("{")) {
            return ".json";
        }
        return head.stripLeading().startsWith("0\r\nSECTION")
                        || head.stripLeading().startsWith("0\nSECTION")
                ? ".dxf"
                : ".txt";
    }
}
