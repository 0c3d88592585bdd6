package trueseam.records;

import java.util.function.Function;
import trueseam.records.access.AccessTrail;
import trueseam.records.archive.Archive;
import trueseam.records.file.Files;
import trueseam.records.group.Classes;
import trueseam.records.group.Sharing;
import trueseam.records.internal.AccessRows;
import trueseam.records.internal.ArchiveRows;
import trueseam.records.internal.ClassRows;
import trueseam.records.internal.DayRows;
import trueseam.records.internal.FileRows;
import trueseam.records.internal.FitRows;
import trueseam.records.internal.PatternRows;
import trueseam.records.internal.PersonRows;
import trueseam.records.internal.ProjectRows;
import trueseam.records.internal.RemindingRows;
import trueseam.records.internal.Rows;
import trueseam.records.internal.SharingRows;
import trueseam.records.internal.SittingRows;
import trueseam.records.internal.TableRows;
import trueseam.records.pattern.Patterns;
import trueseam.records.pattern.Tables;
import trueseam.records.person.Days;
import trueseam.records.person.People;
import trueseam.records.person.Reminding;
import trueseam.records.project.Fits;
import trueseam.records.project.Projects;
import trueseam.records.sitting.Sittings;

/** What one owner has in the record book. Safe for use by several threads, but for one inside {@link #together}. */
public final class Drawer {

    private final Rows rows;

    Drawer(Rows rows) {
        this.rows = rows;
    }

    /**
     * Does several things as one: either all of them are kept, or none.
     *
     * @param <T> what comes of it
     * @param work what is done, with a drawer of its own that is used by the calling thread alone and not after
     * @return what comes of it
     */
    public <T> T together(Function<Drawer, T> work) {
        return rows.together(one -> work.apply(new Drawer(one)));
    }

    /**
     * Whose drawer it is.
     *
     * @return the owner's account
     */
    public long owner() {
        return rows.owner();
    }

    /**
     * The people.
     *
     * @return people
     */
    public People people() {
        return new PersonRows(rows);
    }

    /**
     * When to measure them again.
     *
     * @return what the owner wants
     */
    public Reminding reminding() {
        return new RemindingRows(rows);
    }

    /**
     * Their measuring days.
     *
     * @return days
     */
    public Days days() {
        return new DayRows(rows);
    }

    /**
     * The patterns.
     *
     * @return patterns
     */
    public Patterns patterns() {
        return new PatternRows(rows);
    }

    /**
     * The size tables of the owner's own.
     *
     * @return tables
     */
    public Tables tables() {
        return new TableRows(rows);
    }

    /**
     * The files.
     *
     * @return files
     */
    public Files files() {
        return new FileRows(rows);
    }

    /**
     * The projects.
     *
     * @return projects
     */
    public Projects projects() {
        return new ProjectRows(rows);
    }

    /**
     * What projects came to.
     *
     * @return fits and prints
     */
    public Fits fits() {
        return new FitRows(rows);
    }

    /**
     * The sittings with trial garments.
     *
     * @return sittings
     */
    public Sittings sittings() {
        return new SittingRows(rows);
    }

    /**
     * All of it as one file of open formats, out and back.
     *
     * @return the archive
     */
    public Archive archive() {
        return new ArchiveRows(rows);
    }

    /**
     * Who looked at or changed whose measures.
     *
     * @return the trail
     */
    public AccessTrail trail() {
        return new AccessRows(rows);
    }

    /**
     * The classes that she leads.
     *
     * @return classes
     */
    public Classes classes() {
        return new ClassRows(rows);
    }

    /**
     * What is shared: with a teacher by the students of her classes, or by a student with hers.
     *
     * @return what is shared
     */
    public Sharing sharing() {
        return new SharingRows(rows);
    }
}
