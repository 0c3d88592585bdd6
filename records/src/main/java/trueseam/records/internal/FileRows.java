package trueseam.records.internal;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import trueseam.records.file.Files;

/** Files as rows. */
public final class FileRows implements Files {

    private static final Pattern MARK = Pattern.compile("[0-9a-f]{64}");

    private final Rows rows;

    /**
     * Files as rows.
     *
     * @param rows the owner's rows
     */
    public FileRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public String keep(byte[] content) {
        String mark = mark(content);
        rows.put(
                "insert into file (owner_id, mark, size, content, kept_at) values (:owner, :mark, :size, :content, :now)"
                        + " on conflict (owner_id, mark) do nothing",
                Bound.none()
                        .text("mark", mark)
                        .whole("size", content.length)
                        .bytes("content", content)
                        .whole("now", rows.now()));
        return mark;
    }

    @Override
    public Optional<byte[]> read(String mark) {
        return rows.first(
                "select content from file where owner_id = :owner and mark = :mark",
                Bound.none().text("mark", mark),
                (row, context) -> row.getBytes("content"));
    }

    @Override
    public boolean has(String mark) {
        return rows.first(
                        "select size from file where owner_id = :owner and mark = :mark",
                        Bound.none().text("mark", mark),
                        (row, context) -> row.getLong("size"))
                .isPresent();
    }

    /** A state of a project is text with the marks of its files in it, whatever the screens call them; so nothing goes too early. */
    @Override
    public int sweep() {
        return rows.together(one -> {
            Set<String> unused = new HashSet<>(one.all(
                    "select mark from file where owner_id = :owner"
                            + " and not exists (select 1 from pattern_file p where p.owner_id = :owner and p.mark = file.mark)"
                            + " and not exists (select 1 from size_table t where t.owner_id = :owner and t.mark = file.mark)"
                            + " and not exists (select 1 from person h where h.owner_id = :owner and h.photo = file.mark)"
                            + " and not exists (select 1 from fit f where f.owner_id = :owner"
                            + "   and (f.report = file.mark or f.altered = file.mark))",
                    Bound.none(),
                    (row, context) -> row.getString("mark")));
            if (unused.isEmpty()) {
                return 0;
            }
            one.all(
                            "select content from project_state where owner_id = :owner",
                            Bound.none(),
                            (row, context) -> marksIn(row.getString("content")))
                    .forEach(unused::removeAll);
            one.putAll(
                    "delete from file where owner_id = :owner and mark = :mark",
                    unused.stream().map(mark -> Bound.none().text("mark", mark)).toList());
            return unused.size();
        });
    }

    /** The mark of a content. */
    static String mark(byte[] content) {
        return HexFormat.of().formatHex(sha256(content));
    }

    /** The marks of files that a state of a project may name. */
    static Set<String> marksIn(String content) {
        return MARK.matcher(content).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    private static byte[] sha256(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
