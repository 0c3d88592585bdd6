package trueseam.garment.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.body.Body;
import trueseam.garment.ease.EaseRow;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;

/**
 * What was answered where handbooks disagree.
 *
 * @param least whose least ease counts
 * @param between which size between two
 * @param hipLine where the hip is measured and altered
 * @param trouserHem how deep the hem of trousers is
 */
public record Handbooks(LeastEase least, BetweenSizes between, HipLine hipLine, TrouserHem trouserHem) {

    /** What is done when nothing is said. */
    public static final Handbooks USUAL =
            new Handbooks(LeastEase.USUAL, BetweenSizes.NEAREST, HipLine.AS_DRAWN, TrouserHem.AS_DRAWN);

    /**
     * Every question.
     *
     * @return in the order of work
     */
    public static List<Question> questions() {
        List<Question> all = new ArrayList<>();
        for (LeastEase.Place place : LeastEase.Place.values()) {
            all.add(LeastEase.question(place));
        }
        all.add(BetweenSizes.question());
        all.add(HipLine.question());
        all.add(TrouserHem.question());
        return List.copyOf(all);
    }

    /**
     * Takes a pattern up as it was answered: its hip line and the hem of its trousers.
     *
     * @param pattern the pattern as it was drafted or read
     * @param body the person
     * @param show how lengths are written
     * @return the pattern to fit, with what is to be said of it
     */
    public HipLine.Placed takeUp(Pattern pattern, Body body, LengthFormat show) {
        return hipLine.on(trouserHem.on(pattern), body, show);
    }

    /**
     * What was chosen otherwise than usual and concerns a garment, for the chart and the report.
     *
     * @param kind the garment
     * @param show how lengths are written
     * @return a sentence for each
     */
    public List<Finding> said(GarmentKind kind, LengthFormat show) {
        List<Finding> said = new ArrayList<>();
        for (LeastEase.Place place : least.words().keySet()) {
            Answer answer = least.answer(place);
            Optional<EaseRow> row = least.chosen(place, kind);
            said.add(Finding.note(
                    "least ease at the " + place.word(),
                    row.isPresent()
                            ? show.show(row.get().minimumMm()) + ", usually "
                                    + show.show(row.get().usualMm()) + ", as you chose: " + answer.whole() + "."
                            : "The source that you chose (" + answer.label()
                                    + ") says nothing of this garment; the table of wearing ease counts."));
        }
        if (trouserHem != TrouserHem.AS_DRAWN && kind == GarmentKind.TROUSERS) {
            said.add(Finding.note("trouser hem", trouserHem.answer().whole() + "."));
        }
        return List.copyOf(said);
    }
}
