package trueseam.fitting.compare;

/**
 * What is done about a difference, and why.
 *
 * @param verdict what is done
 * @param amountMm by how much the garment changes in all, mm; 0 unless altered
 * @param reason one sentence
 * @param overruled whether the dressmaker decided herself
 */
public record Decision(Verdict verdict, double amountMm, String reason, boolean overruled) {

    /**
     * Whether the pattern is to change.
     *
     * @return true if altered by more than nothing
     */
    public boolean isAltered() {
        return verdict == Verdict.ALTER && amountMm != 0;
    }
}
