package trueseam.records.archive;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One owner's part of the record book as one file of open formats. The trail of access goes out, for reading, but does not come back: a
 * trail that a file can add to proves nothing. Safe for use by several threads.
 */
public interface Archive {

    /**
     * Writes everything, or all of one person, as it is at one moment, and notes in the trail of each person in it who took it.
     *
     * @param out where the archive goes; not closed
     * @param person the mark of the person; empty: everything
     * @param by the account that takes it
     * @param made what is worked out of a project, by its mark, one project after another
     * @return how many projects are in it
     * @throws java.io.UncheckedIOException if it cannot be written
     */
    int write(OutputStream out, Optional<String> person, long by, Function<String, List<Made>> made);

    /**
     * Brings an archive back: people, projects, patterns and size tables that are not there are added with all that hangs on them, and
     * what is there already is left as it is.
     *
     * @param archive the file
     * @return what came
     * @throws ArchiveException if anything in it is wrong; nothing of it is taken then
     */
    Brought bringBack(Path archive);
}
