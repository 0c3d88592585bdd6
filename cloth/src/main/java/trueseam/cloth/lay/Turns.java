package trueseam.cloth.lay;

import java.util.Optional;
import trueseam.cloth.packing.Way;

/** How a piece that lies on the cloth may be turned by hand: only as the search may turn it too. */
public final class Turns {

    private static final double HALF = 180;

    private Turns() {}

    /**
     * Turned round by half a turn, head to tail.
     *
     * @param part the piece
     * @param now how it lies
     * @return how it lies then; nothing where the cloth has one way up
     */
    public static Optional<Way> headToTail(ClothPart part, Way now) {
        double half = half(now);
        Optional<Way> same = allowed(part, HALF - half, now.mirrored());
        return same.or(() -> allowed(part, HALF - half, !now.mirrored()))
                .map(w -> new Way(w.turnDegrees() + tilt(now), w.mirrored()));
    }

    /**
     * Turned over onto its other face.
     *
     * @param part the piece
     * @param now how it lies
     * @return how it lies then; nothing where it is cut so that only this face gives the right piece
     */
    public static Optional<Way> turnedOver(ClothPart part, Way now) {
        return allowed(part, half(now), !now.mirrored()).map(w -> new Way(now.turnDegrees(), w.mirrored()));
    }

    /**
     * Turned a little off the grain, or back.
     *
     * @param part the piece
     * @param now how it lies
     * @param byDegrees by how much, counter-clockwise
     * @param mostDegrees how far off the grain it may come to lie, {@link LayWishes#tiltDegrees}
     * @return how it lies then; nothing where it lies at the fold, or would be turned farther than it may be
     */
    public static Optional<Way> tilted(ClothPart part, Way now, double byDegrees, double mostDegrees) {
        double tilt = tilt(now) + byDegrees;
        return part.form() == CutForm.AT_FOLD || Math.abs(tilt) > mostDegrees
                ? Optional.empty()
                : Optional.of(new Way(half(now) + tilt, now.mirrored()));
    }

    private static Optional<Way> allowed(ClothPart part, double turn, boolean mirrored) {
        return part.ways().stream()
                .filter(w -> w.turnDegrees() == turn && w.mirrored() == mirrored)
                .findFirst();
    }

    /** 0 upright or 180 head to tail, whatever the tilt. */
    private static double half(Way way) {
        return Math.abs(Math.IEEEremainder(way.turnDegrees(), 2 * HALF)) > HALF / 2 ? HALF : 0;
    }

    private static double tilt(Way way) {
        return Math.IEEEremainder(way.turnDegrees(), HALF);
    }
}
