package trueseam.worktable.cloth;

import java.util.Optional;
import trueseam.cloth.need.ClothNeed;
import trueseam.garment.length.LengthFormat;
import trueseam.worktable.page.Step;
import trueseam.worktable.page.Visit;

/**
 * How far the search is.
 *
 * @param running whether one runs
 * @param percent how much of her patience is spent
 * @param says what it does, in a sentence; empty where there was none
 * @param problem why it failed; else empty
 * @param on the number of the layout that is shown: 0 the project's own, else one that was found
 */
public record ProgressView(boolean running, int percent, String says, String problem, int on) {

    static ProgressView of(Visit visit, Optional<Search> of) {
        Optional<Search> search = of.filter(s -> s.order().plan().choices().stuff()
                == ClothChoices.of(visit.project()).stuff());
        if (search.isEmpty()) {
            return new ProgressView(false, 0, "", "", 0);
        }
        Search s = search.get();
        int rounds = s.order().plan().choices().rounds();
        // What was kept while this was asked is not in this answer: the page asks once more.
        boolean more = s.isRunning()
                || s.order().keeping().version() > visit.frame(Step.CLOTH).version();
        return new ProgressView(
                more,
                s.stage() == Search.Stage.SEARCHING ? Math.min(100, 100 * s.done() / rounds) : 100,
                says(s, rounds, visit.project().person().format()),
                s.problem(),
                more ? s.layouts() : 0);
    }

    private static String says(Search s, int rounds, LengthFormat show) {
        if (s.isRunning() && s.isStopped()) {
            return "Stopping; the best is kept.";
        }
        return switch (s.stage()) {
            case WAITING -> "Waiting until another search on this machine has ended.";
            case SEARCHING ->
                "Searching: round " + s.done() + " of " + rounds
                        + s.layout(s.layouts())
                                .map(lay -> ", " + LaidView.length(lay, show).toLowerCase(java.util.Locale.ROOT))
                                .orElse("")
                        + ".";
            case WIDTHS ->
                "The layout is kept. Now other widths: " + s.done() + " of " + ClothNeed.USUAL_WIDTHS_MM.size() + ".";
            case ORIGINAL -> "The layout is kept. Now the original pieces beside the altered ones.";
            case ENDED -> "";
        };
    }
}
