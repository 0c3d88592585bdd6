package trueseam.records.pattern;

import java.util.List;
import java.util.Optional;
import trueseam.records.trouble.OutdatedException;

/** The patterns of one owner. Safe for use by several threads. */
public interface Patterns {

    /**
     * Patterns by what is looked for.
     *
     * @param text a part of name, garment, source or note, in any case; empty: all
     * @param archivedToo whether those put away are among them
     * @return the last changed first
     */
    List<KeptPattern> list(String text, boolean archivedToo);

    /**
     * One pattern.
     *
     * @param id its mark
     * @return the pattern, if the owner has it
     */
    Optional<KeptPattern> find(String id);

    /**
     * Keeps a pattern once: one that is made of the same is the same pattern and stays as it is.
     *
     * @param pattern the pattern; its files are kept already
     * @return the pattern as kept
     */
    KeptPattern keep(KeptPattern pattern);

    /**
     * Changes what is written about a pattern.
     *
     * @param pattern the pattern, with the version that was changed
     * @return the pattern as kept now
     * @throws OutdatedException if it has another version or is gone
     */
    KeptPattern change(KeptPattern pattern);

    /**
     * Deletes a pattern that no project uses.
     *
     * @param id its mark
     * @return whether it was deleted; not if a project uses it
     */
    boolean delete(String id);
}
