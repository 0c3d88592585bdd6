package trueseam.output.handbook;

import java.util.List;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.garment.handbook.Answer;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.handbook.LeastEase;
import trueseam.garment.handbook.Question;
import trueseam.garment.handbook.TrouserHem;

/**
 * A matter about which handbooks disagree.
 *
 * @param title what it is about
 * @param matters what depends on it
 * @param answers what may be chosen; the first is the usual one
 * @param command how it is chosen on the command line, {@code WORD} standing for an answer's word
 * @param screen where it is chosen on the worktable
 */
public record Disagreement(String title, String matters, List<Answer> answers, String command, String screen) {

    private static final String EASE_SCREENS = "Chart (Where handbooks disagree) and Ease";

    // Immutable.
    public Disagreement {
        answers = List.copyOf(answers);
    }

    /**
     * Every matter, numbered from 1 in the order of this list.
     *
     * @return the matters
     */
    public static List<Disagreement> all() {
        return List.of(
                leastEase("The least ease at the bust", LeastEase.Place.BUST),
                leastEase("The least ease at the waist", LeastEase.Place.WAIST),
                leastEase("The least ease at the hip", LeastEase.Place.HIP),
                of(
                        "Between two sizes",
                        BetweenSizes.question(),
                        "size, fit, compare --between-sizes WORD",
                        "Pattern (The size)"),
                capEase(),
                seamsOrEdges(),
                of(
                        "The hem of trousers",
                        TrouserHem.question(),
                        "fit, draft, print --trouser-hem WORD",
                        "Print, and Chart (Where handbooks disagree)"),
                of(
                        "The hip line",
                        HipLine.question(),
                        "fit, compare --hip-line WORD",
                        "Chart (Where handbooks disagree)"),
                swayBack(),
                ways("A broad back", "across back", "What becomes of the shoulder seam of a back that is slashed."),
                ways("Square shoulders", "square shoulder", "At which end of the seam the shoulder is changed."),
                sleeve());
    }

    private static Disagreement of(String title, Question question, String command, String screen) {
        return new Disagreement(title, question.matters(), question.answers(), command, screen);
    }

    private static Disagreement leastEase(String title, LeastEase.Place place) {
        return of(
                title,
                LeastEase.question(place),
                "fit, compare, draft --least-ease " + place.word() + "=WORD",
                EASE_SCREENS);
    }

    private static Disagreement ways(String title, String entry, String matters) {
        Entry told = Repertoire.named(entry).orElseThrow();
        return new Disagreement(
                title,
                matters,
                told.variants().stream()
                        .map(way -> new Answer(way.name(), entry + ", " + way.name(), way.reason(), told.source()))
                        .toList(),
                "fit --alter \"" + entry + "/WORD=AMOUNT\"",
                "Chart (Alterations by name, Way)");
    }

    private static Disagreement capEase() {
        return new Disagreement(
                "How much longer the sleeve cap is than the armhole",
                "The fulness that is eased in over the top of the arm.",
                List.of(
                        new Answer(
                                "1 in",
                                "half an inch on either side",
                                "better than the least; our drafts have it",
                                "web:cap35"),
                        new Answer("3/4 in", "3/8 in on either side", "firm cloth that eases badly", "web:capnote"),
                        new Answer("1 1/2 in", "3/4 in on either side", "soft wool, a rounded cap", "web:capdraft"),
                        new Answer("0 in", "none to 1/2 in", "knits and shirts", "common practice")),
                "draft --cap-ease WORD; of a pattern that is there fit --alter \"cap ease=MORE OR LESS\"",
                "Chart (Alterations by name)");
    }

    private static Disagreement seamsOrEdges() {
        return new Disagreement(
                "Dividing by seams or by edges",
                "CWU17 divides by the seams that are there, which gives the amount of a seam; a seam has two cut edges, so each edge"
                        + " gets half of that. The chart always shows the edges.",
                List.of(
                        new Answer("all", "all seams from top to bottom", "each changes least", "CWU17"),
                        new Answer(
                                "side_panels",
                                "both edges of the side panels",
                                "the panels at the centres keep their looks",
                                "common practice"),
                        new Answer("side", "the side seams alone", "the seams of the style stay", "common practice")),
                "fit --seams WORD",
                "Chart (How it is done)");
    }

    private static Disagreement swayBack() {
        return new Disagreement(
                "Sway-back, or tight at the seat",
                "The same folds at the back waist have two cures. The test: pull the skirt down at the centre back.",
                List.of(
                        new Answer(
                                "sway-back",
                                "take up the centre back",
                                "the folds stay when the skirt is pulled down, and stop before the sides",
                                "web:sway1"),
                        new Answer(
                                "large seat",
                                "widen at hip and seat",
                                "the folds go when the skirt is pulled down, and come back when she walks",
                                "web:sway2")),
                "trial asks; fit --alter \"WORD=AMOUNT\"",
                "Trial asks; Chart (Alterations by name)");
    }

    private static Disagreement sleeve() {
        return new Disagreement(
                "What the sleeve cap keeps when the upper arm changes",
                "The chart shows what either way costs.",
                List.of(
                        new Answer(
                                "keep_seam",
                                "the length of its seam",
                                "the sleeve still fits its armhole; the cap gets lower",
                                "common practice"),
                        new Answer(
                                "keep_height",
                                "its height",
                                "the sleeve hangs as it did; there is more to ease in",
                                "common practice")),
                "fit --cap WORD",
                "Chart (How it is done)");
    }
}
