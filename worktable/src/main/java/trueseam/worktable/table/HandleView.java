package trueseam.worktable.table;

import java.util.Locale;
import trueseam.fitting.compare.Need;
import trueseam.fitting.handle.Handle;
import trueseam.fitting.plan.FitResult;
import trueseam.garment.length.LengthFormat;
import trueseam.output.words.MeasureWords;

/**
 * A handle on the page.
 *
 * @param id its mark
 * @param piece the piece
 * @param term the measure's standard term
 * @param label what is dragged and where
 * @param x where it is, in the piece's coordinates, y downwards
 * @param y where it is
 * @param outX the direction in which the measure grows
 * @param outY the direction in which the measure grows
 * @param perMm mm of the measure for each mm of the drag
 * @param amountMm by how much the measure is altered now
 * @param says the same in words
 */
public record HandleView(
        String id,
        String piece,
        String term,
        String label,
        double x,
        double y,
        double outX,
        double outY,
        double perMm,
        double amountMm,
        String says) {

    static HandleView of(Handle handle, FitResult fit) {
        LengthFormat show = fit.choices().show();
        double amount = fit.needs().stream()
                .filter(need -> need.measure() == handle.measure())
                .findFirst()
                .map(Need::decision)
                .orElseThrow()
                .amountMm();
        return new HandleView(
                handle.id(),
                handle.piece(),
                handle.measure().term(),
                MeasureWords.label(handle.measure()) + ", " + handle.piece() + ", "
                        + handle.word().toLowerCase(Locale.ROOT),
                Numbers.rounded(handle.at().x()),
                Numbers.rounded(-handle.at().y()),
                Numbers.rounded(handle.out().x()),
                Numbers.rounded(-handle.out().y()),
                Numbers.rounded(handle.perMm()),
                Numbers.rounded(amount),
                amount == 0 ? "left as it is" : show.showSigned(amount));
    }
}
