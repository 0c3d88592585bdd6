package trueseam.records.pattern;

import java.util.List;
import java.util.Optional;
import trueseam.records.trouble.OutdatedException;

/** The size tables of one owner. Safe for use by several threads. */
public interface Tables {

    /**
     * All tables.
     *
     * @param archivedToo whether those put away are among them
     * @return by name
     */
    List<KeptTable> list(boolean archivedToo);

    /**
     * One table.
     *
     * @param id its mark
     * @return the table, if the owner has it
     */
    Optional<KeptTable> find(String id);

    /**
     * Keeps a table that is not kept yet.
     *
     * @param table the table; mark and version are given here, its file is kept already
     * @return the table as kept
     */
    KeptTable add(KeptTable table);

    /**
     * Changes a table.
     *
     * @param table the table, with the version that was changed
     * @return the table as kept now
     * @throws OutdatedException if it has another version or is gone
     */
    KeptTable change(KeptTable table);

    /**
     * Deletes a table for good.
     *
     * @param id its mark
     * @return whether there was such a table
     */
    boolean delete(String id);
}
