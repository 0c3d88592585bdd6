package trueseam.intake.tiles;

import java.util.List;
import java.util.Map;

/**
 * How pages lie.
 *
 * @param blocks pages that hang together, each by its place in the block's grid
 * @param steps from page to page
 * @param met how well their lines go on
 * @param how in words, how it was known
 */
record Arrangement(List<Map<Integer, Cell>> blocks, Steps steps, Met met, String how) {

    static Arrangement of(Grid grid, Steps steps, Met met) {
        return new Arrangement(List.of(grid.cells()), steps, met, grid.how());
    }

    /** Whether hardly any line contradicts it. */
    boolean holds(double share) {
        return met.share() >= share;
    }

    boolean beats(Arrangement other) {
        return met.worth() > other.met.worth();
    }
}
