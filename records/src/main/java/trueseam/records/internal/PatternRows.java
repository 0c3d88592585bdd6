package trueseam.records.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.pattern.KeptPattern.InFile;
import trueseam.records.pattern.Patterns;

/** Patterns as rows. */
public final class PatternRows implements Patterns {

    private final Rows rows;

    /**
     * Patterns as rows.
     *
     * @param rows the owner's rows
     */
    public PatternRows(Rows rows) {
        this.rows = rows;
    }

    @Override
    public List<KeptPattern> list(String text, boolean archivedToo) {
        return rows
                .all(
                        "select * from pattern where owner_id = :owner and sought like :text escape '!'"
                                + (archivedToo ? "" : " and archived = 0")
                                + " order by changed_at desc, id",
                        Bound.none().part("text", text),
                        (row, context) -> pattern(row))
                .stream()
                .map(this::withFiles)
                .toList();
    }

    @Override
    public Optional<KeptPattern> find(String id) {
        return rows.first(
                        "select * from pattern where owner_id = :owner and id = :id",
                        Bound.id(id),
                        (row, context) -> pattern(row))
                .map(this::withFiles);
    }

    @Override
    public KeptPattern keep(KeptPattern pattern) {
        return rows.together(one -> {
            one.put(
                    "insert into pattern (id, owner_id, made_of, name, garment, source, size_table, note, archived,"
                            + " sought, created_at, changed_at, version) values (:id, :owner, :made, :name, :garment,"
                            + " :source, :table, :note, 0, :sought, :now, :now, 1)"
                            + " on conflict (owner_id, made_of) do nothing",
                    values(pattern, Rows.fresh())
                            .text("made", pattern.madeOf())
                            .text("garment", pattern.garment())
                            .text("table", pattern.sizeTable()));
            PatternRows mine = new PatternRows(one);
            KeptPattern kept = one.first(
                            "select * from pattern where owner_id = :owner and made_of = :made",
                            Bound.none().text("made", pattern.madeOf()),
                            (row, context) -> pattern(row))
                    .orElseThrow();
            for (InFile file : pattern.files()) {
                one.put(
                        "insert into pattern_file (owner_id, pattern_id, mark, name) values (:owner, :id, :mark, :name)"
                                + " on conflict (pattern_id, mark) do nothing",
                        Bound.id(kept.id()).text("mark", file.mark()).text("name", file.name()));
            }
            return mine.withFiles(kept);
        });
    }

    @Override
    public KeptPattern change(KeptPattern pattern) {
        return rows.together(one -> {
            one.putOne(
                    "pattern",
                    "update pattern set name = :name, source = :source, note = :note, archived = :archived,"
                            + " sought = :sought, changed_at = :now, version = version + 1"
                            + " where owner_id = :owner and id = :id and version = :version",
                    values(pattern, pattern.id())
                            .flag("archived", pattern.archived())
                            .whole("version", pattern.version()));
            return new PatternRows(one).find(pattern.id()).orElseThrow();
        });
    }

    @Override
    public boolean delete(String id) {
        return rows.put(
                        "delete from pattern where owner_id = :owner and id = :id and not exists"
                                + " (select 1 from project p where p.owner_id = :owner and p.pattern_id = pattern.id)",
                        Bound.id(id))
                == 1;
    }

    private Bound values(KeptPattern pattern, String id) {
        return Bound.id(id)
                .text("name", pattern.name())
                .text("source", pattern.source())
                .text("note", pattern.note())
                .text(
                        "sought",
                        Rows.small(
                                String.join("\n", pattern.name(), pattern.garment(), pattern.source(), pattern.note())))
                .whole("now", rows.now());
    }

    private KeptPattern withFiles(KeptPattern bare) {
        List<InFile> files = rows.all(
                "select mark, name from pattern_file where owner_id = :owner and pattern_id = :id order by name, mark",
                Bound.id(bare.id()),
                (row, context) -> new InFile(row.getString("mark"), row.getString("name")));
        return new KeptPattern(
                bare.id(),
                bare.madeOf(),
                bare.name(),
                bare.garment(),
                bare.source(),
                bare.sizeTable(),
                files,
                bare.note(),
                bare.archived(),
                bare.changedAt(),
                bare.version());
    }

    private static KeptPattern pattern(ResultSet row) throws SQLException {
        return new KeptPattern(
                row.getString("id"),
                row.getString("made_of"),
                row.getString("name"),
                row.getString("garment"),
                row.getString("source"),
                row.getString("size_table"),
                List.of(),
                row.getString("note"),
                row.getInt("archived") == 1,
                row.getLong("changed_at"),
                row.getLong("version"));
    }
}
