package trueseam.worktable.table;

import java.util.List;
import trueseam.fitting.handle.Handles;
import trueseam.fitting.plan.FitResult;

/**
 * What the table shows for one position of a drag.
 *
 * @param amountMm by how much the measure is altered, mm in all
 * @param says the same in words
 * @param refused why the pattern cannot follow so far, and how far it can; empty where it can
 * @param pieces the altered pieces
 * @param handles where the handles are now
 * @param rows the numbers
 * @param proofs what the proofs say
 */
public record DragAnswer(
        double amountMm,
        String says,
        String refused,
        List<PieceLines> pieces,
        List<HandleView> handles,
        List<NumberRow> rows,
        ProofsView proofs) {

    /** Does not change. */
    public DragAnswer {
        pieces = List.copyOf(pieces);
        handles = List.copyOf(handles);
        rows = List.copyOf(rows);
    }

    static DragAnswer of(double amountMm, FitResult fit) {
        return new DragAnswer(
                amountMm,
                fit.choices().show().showSigned(amountMm),
                "",
                fit.worked().altered().pieces().stream().map(PieceLines::of).toList(),
                Handles.of(fit).stream()
                        .map(handle -> HandleView.of(handle, fit))
                        .toList(),
                NumberRow.of(fit),
                ProofsView.of(fit.report()));
    }

    static DragAnswer refused(double farthestMm, String says, String why) {
        return new DragAnswer(farthestMm, says, why, List.of(), List.of(), List.of(), ProofsView.NONE);
    }
}
