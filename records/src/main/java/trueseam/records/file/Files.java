package trueseam.records.file;

import java.util.Optional;

/** The files of one owner. Safe for use by several threads. */
public interface Files {

    /**
     * Keeps a file.
     *
     * @param content what is in it; not changed and not kept by reference
     * @return its mark, the same for the same content: its SHA-256 in hexadecimal
     */
    String keep(byte[] content);

    /**
     * A file.
     *
     * @param mark its mark
     * @return what is in it, if the owner has it
     */
    Optional<byte[]> read(String mark);

    /**
     * Whether a file is there.
     *
     * @param mark its mark
     * @return whether the owner has it
     */
    boolean has(String mark);

    /**
     * Deletes the files that nothing refers to any more: no state of a project, pattern, table, fit or person.
     *
     * @return how many
     */
    int sweep();
}
