package trueseam.worktable.cloth;

import java.util.function.UnaryOperator;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.Laying;
import trueseam.worktable.page.Desk;
import trueseam.worktable.project.ChangedElsewhereException;
import trueseam.worktable.project.ClothPart.Lengths;
import trueseam.worktable.project.ClothPart.OneCloth;
import trueseam.worktable.project.Kept;
import trueseam.worktable.project.NoSuchProjectException;

/**
 * Keeps what a search found, in the name of the tab that began it; only while the cloth and what lies on it are what was searched for. Used by
 * the search's thread.
 */
final class Keeper implements Search.Keeping {

    private static final int TRIES = 3;

    private final Desk desk;
    private final String id;
    private final String tab;
    private final String stuff;
    private final Laying laying;
    /** Its own for each search, so that two are two steps back. */
    private final String field = "search " + System.nanoTime();

    private OneCloth searched;
    private volatile long version;

    Keeper(Desk desk, String id, String tab, Plan plan) {
        this.desk = desk;
        this.id = id;
        this.tab = tab;
        this.stuff = plan.choices().stuff().word();
        this.laying = plan.laying();
        this.searched = plan.choices().one();
    }

    @Override
    public boolean layout(Lay lay, int rounds) {
        return keep(
                "Layout found on " + stuff + " cloth",
                one -> one.laid(Plan.places(laying.spots(lay)), laying.mark(), rounds));
    }

    @Override
    public void lengths(Lengths lengths) {
        keep("Lengths of other widths", one -> one.with(lengths));
    }

    @Override
    public boolean isWanted() {
        try {
            return desk.shelf().kept(id).project().cloth().of(stuff).equals(searched);
        } catch (NoSuchProjectException e) {
            return false;
        }
    }

    @Override
    public long version() {
        return version;
    }

    private boolean keep(String label, UnaryOperator<OneCloth> how) {
        for (int i = 0; i < TRIES; i++) {
            try {
                Kept before = desk.shelf().kept(id);
                if (!before.project().cloth().of(stuff).equals(searched)) {
                    return false;
                }
                OneCloth changed = how.apply(searched);
                // What was found and how much it takes elsewhere are one thing to take back.
                Kept changedNow = desk.change(
                        id,
                        before.version(),
                        tab,
                        kept -> kept.changed(
                                label,
                                field,
                                kept.project().with(kept.project().cloth().with(stuff, changed))));
                searched = changed;
                version = changedNow.version();
                return true;
            } catch (ChangedElsewhereException e) {
                // Somebody was quicker; whether the cloth is still the same is looked at again.
            } catch (NoSuchProjectException e) {
                return false;
            }
        }
        return false;
    }
}
