package trueseam.intake.scale;

import java.util.Locale;

/**
 * Something drawn whose size is printed at it.
 *
 * @param text what is printed; empty for a square without a size
 * @param acrossMm how wide it is drawn, mm; 0 for an upright line
 * @param upMm how high, mm; 0 for a level line
 * @param saidAcrossMm how wide it is said to be, mm; 0 if that is not said
 * @param saidUpMm how high, mm
 * @param slackMm how far the two may lie apart because of the digits that are printed, mm
 */
record ScaleMark(String text, double acrossMm, double upMm, double saidAcrossMm, double saidUpMm, double slackMm) {

    /** A difference that is told: a printer that shrinks to fit takes 2 to 6 % (common practice); drawings are exact. */
    static final double TOLD = 0.002;

    boolean isSquare() {
        return acrossMm > 0 && upMm > 0;
    }

    boolean isSaid() {
        return saidAcrossMm > 0 || saidUpMm > 0;
    }

    /** By how much it is to be made larger across; 0 if nothing tells. */
    double right() {
        return acrossMm > 0 && saidAcrossMm > 0 ? saidAcrossMm / acrossMm : 0;
    }

    /** By how much it is to be made larger upwards; 0 if nothing tells. */
    double up() {
        return upMm > 0 && saidUpMm > 0 ? saidUpMm / upMm : 0;
    }

    boolean agrees() {
        return isNear(acrossMm, saidAcrossMm) && isNear(upMm, saidUpMm);
    }

    private boolean isNear(double drawn, double said) {
        return drawn == 0 || said == 0 || Math.abs(drawn - said) <= Math.max(TOLD * said, slackMm);
    }

    /** As it is drawn, in words. */
    String drawn() {
        String mm = acrossMm == 0
                ? String.format(Locale.ROOT, "%.2f mm", upMm)
                : upMm == 0
                        ? String.format(Locale.ROOT, "%.2f mm", acrossMm)
                        : String.format(Locale.ROOT, "%.2f by %.2f mm", acrossMm, upMm);
        return mm + String.format(Locale.ROOT, " (%.3f in)", Math.max(acrossMm, upMm) / 25.4);
    }
}
