package trueseam.records.pattern;

import java.util.List;
import java.util.Objects;

/**
 * A pattern that is fitted, perhaps several times.
 *
 * @param id its mark; empty before it is kept
 * @param madeOf what it is the same by, such as {@code file/MARK} or {@code draft/bodice/misses}; one pattern of an owner each
 * @param name what it is called
 * @param garment what it makes, or empty
 * @param source where it comes from, or empty
 * @param sizeTable its size table by name, or empty
 * @param files the files it is in
 * @param note anything else
 * @param archived whether it is put away
 * @param changedAt when it was changed last, milliseconds since 1970; 0 before it is kept
 * @param version goes up with every change; 0 before it is kept
 */
public record KeptPattern(
        String id,
        String madeOf,
        String name,
        String garment,
        String source,
        String sizeTable,
        List<InFile> files,
        String note,
        boolean archived,
        long changedAt,
        long version) {

    /**
     * A file that the pattern is in.
     *
     * @param mark the file's mark
     * @param name what the file was called
     */
    public record InFile(String mark, String name) {}

    /** Nothing is null. */
    public KeptPattern {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(madeOf, "madeOf");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(garment, "garment");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(sizeTable, "sizeTable");
        Objects.requireNonNull(note, "note");
        files = List.copyOf(files);
    }

    /**
     * A pattern that is not kept yet.
     *
     * @param madeOf as of the record
     * @param name as of the record
     * @param garment as of the record
     * @param sizeTable as of the record
     * @param files as of the record
     * @return the pattern
     */
    public static KeptPattern of(String madeOf, String name, String garment, String sizeTable, List<InFile> files) {
        return new KeptPattern("", madeOf, name, garment, "", sizeTable, files, "", false, 0, 0);
    }

    /**
     * The same with what the owner writes about it.
     *
     * @param otherName what it is called
     * @param otherSource where it comes from
     * @param otherNote anything else
     * @return the pattern
     */
    public KeptPattern described(String otherName, String otherSource, String otherNote) {
        return new KeptPattern(
                id, madeOf, otherName, garment, otherSource, sizeTable, files, otherNote, archived, changedAt, version);
    }

    /**
     * The same put away, or taken out again.
     *
     * @param other whether it is put away
     * @return the pattern
     */
    public KeptPattern withArchived(boolean other) {
        return new KeptPattern(id, madeOf, name, garment, source, sizeTable, files, note, other, changedAt, version);
    }
}
