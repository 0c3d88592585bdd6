package trueseam.output.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.proof.Proof;
import trueseam.fitting.truing.LevelShift;
import trueseam.garment.length.LengthUnit;

/** What the alterations did to the ends of seams that meet when sewn, in words. */
public final class LevelWords {

    /** Ends nearer to each other than this were never apart: a pencil line. */
    private static final double TOGETHER_MM = 0.1;

    private LevelWords() {}

    /**
     * The ends that came apart before they were trued.
     *
     * @param fit the fit
     * @return a sentence for each; none where all stayed level
     */
    public static List<String> of(FitResult fit) {
        List<String> said = new ArrayList<>();
        for (LevelShift shift : fit.worked().levels()) {
            if (Math.abs(shift.apartMm()) > TOGETHER_MM) {
                said.add(sentence(shift, fit));
            }
        }
        return List.copyOf(said);
    }

    private static String sentence(LevelShift shift, FitResult fit) {
        RulerLength ruler = new RulerLength(fit.choices().show());
        String where = shift.seam() + ", " + shift.end();
        boolean level = fit.report().proofs().stream()
                .filter(proof ->
                        proof.kind() == Proof.Kind.LEVEL && proof.where().equals(where))
                .allMatch(Proof::holds);
        return "At the " + shift.end() + " the alterations "
                + moved(shift.firstMm(), shift.first().piece(), ruler) + " and "
                + moved(shift.secondMm(), shift.second().piece(), ruler) + ", "
                + amount(shift.apartMm(), ruler) + " apart; "
                + (level ? "trued to one level." : "they are NOT level after truing.");
    }

    private static String moved(double upMm, String piece, RulerLength ruler) {
        return (upMm >= 0 ? "lifted" : "lowered") + " the " + piece + " by " + amount(upMm, ruler);
    }

    /** The differences are small: tenths of a millimetre stand beside the fraction. */
    private static String amount(double mm, RulerLength ruler) {
        String exact = String.format(Locale.ROOT, "%.1f mm", Math.abs(mm));
        return ruler.show().unit() == LengthUnit.INCH ? ruler.show(mm) + " (" + exact + ")" : exact;
    }
}
