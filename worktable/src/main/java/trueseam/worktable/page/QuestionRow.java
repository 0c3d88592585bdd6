package trueseam.worktable.page;

import java.util.List;
import java.util.Optional;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.handbook.Answer;
import trueseam.garment.handbook.BetweenSizes;
import trueseam.garment.handbook.HipLine;
import trueseam.garment.handbook.LeastEase;
import trueseam.garment.handbook.Question;
import trueseam.garment.handbook.TrouserHem;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.EaseWords;
import trueseam.output.words.MeasureWords;
import trueseam.worktable.project.Project;

/**
 * What handbooks answer differently, to be answered on a screen.
 *
 * @param question the question
 * @param chosen the answer that counts
 * @param show how lengths are written
 */
public record QuestionRow(Question question, Answer chosen, LengthFormat show) {

    /**
     * Whose least ease counts.
     *
     * @param project what was typed
     * @param kind the garment, if it is known
     * @return those of bust, waist and hip that the garment goes round
     */
    public static List<QuestionRow> leastEase(Project project, Optional<GarmentKind> kind) {
        return List.of(LeastEase.Place.values()).stream()
                .filter(place -> kind.map(place::isRound).orElse(true))
                .map(place -> of(project, LeastEase.question(place)))
                .toList();
    }

    /**
     * Which size between two.
     *
     * @param project what was typed
     * @return the question
     */
    public static QuestionRow betweenSizes(Project project) {
        return of(project, BetweenSizes.question());
    }

    /**
     * Where the hip line lies.
     *
     * @param project what was typed
     * @return the question
     */
    public static QuestionRow hipLine(Project project) {
        return of(project, HipLine.question());
    }

    /**
     * How deep the hem of trousers is.
     *
     * @param project what was typed
     * @return the question
     */
    public static QuestionRow trouserHem(Project project) {
        return of(project, TrouserHem.question());
    }

    private static QuestionRow of(Project project, Question question) {
        String word = project.chart().choices().getOrDefault(question.name(), "");
        Answer chosen = question.answers().stream()
                .filter(answer -> answer.word().equals(word))
                .findFirst()
                .orElse(question.answers().get(0));
        return new QuestionRow(question, chosen, project.person().format());
    }

    /**
     * Keeps an answer that was given on any screen.
     *
     * @param visit the request, with the fields {@code choice} and {@code word}
     */
    public static void keep(Visit visit) {
        String name = visit.field("choice");
        String word = visit.field("word");
        visit.change(
                "Choice: " + name, "", project -> project.with(project.chart().withChoice(name, word)));
    }

    /**
     * What its field is called.
     *
     * @return without blanks
     */
    public String id() {
        return question.name().replace(' ', '-');
    }

    /**
     * What is kept for an answer.
     *
     * @param answer the answer
     * @return its word; empty for the usual one
     */
    public String word(Answer answer) {
        return answer.equals(question.answers().get(0)) ? "" : answer.word();
    }

    /**
     * Why the answer that counts is given.
     *
     * @return reason and source
     */
    public String because() {
        if (chosen.word().equals(LeastEase.TABLE)) {
            return MeasureWords.capital(chosen.reason()) + ".";
        }
        return MeasureWords.capital(chosen.reason()) + ". Source: " + new EaseWords(show).full(chosen.source()) + ".";
    }
}
