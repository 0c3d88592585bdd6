package trueseam.fitting.standing;

import trueseam.fitting.repertoire.Entry;
import trueseam.garment.body.Side;
import trueseam.garment.measure.ErrorGroup;
import trueseam.garment.measure.Measure;

/** What a standing alteration is about. */
public sealed interface Subject {

    /**
     * What it is called.
     *
     * @return the measure's term or the alteration's name, with its side
     */
    String label();

    /**
     * How far two earlier patterns may differ and still say the same.
     *
     * @return mm: what two careful readings of the tape may differ by
     */
    double errorMm();

    /**
     * A measure of the body.
     *
     * @param measure the measure
     */
    record OfMeasure(Measure measure) implements Subject {
        @Override
        public String label() {
            return measure.term();
        }

        @Override
        public double errorMm() {
            return measure.allowableErrorMm();
        }
    }

    /**
     * An alteration by its name, for which the chart had no line.
     *
     * @param entry the alteration
     * @param way the way of doing it
     * @param side one side of the body, or both
     */
    record OfName(Entry entry, String way, Side side) implements Subject {
        @Override
        public String label() {
            String how = entry.variants().size() > 1 ? entry.name() + "/" + way : entry.name();
            return switch (side) {
                case BOTH -> how;
                case LEFT -> how + ", left";
                case RIGHT -> how + ", right";
            };
        }

        /** That of the measure that calls for it; a fold pinned on a trial garment is read like a short length along the body. */
        @Override
        public double errorMm() {
            return entry.measures().isEmpty()
                    ? ErrorGroup.SEGMENT_LENGTH.allowedMm()
                    : entry.measures().get(0).allowableErrorMm();
        }
    }
}
