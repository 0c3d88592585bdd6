package trueseam.garment.earlier;

import trueseam.garment.body.Side;

/**
 * An alteration that was asked for by its name on an earlier pattern, with its amount.
 *
 * @param name the alteration, as the repertoire calls it
 * @param way the way of doing it; may be empty
 * @param mm the amount, mm
 * @param side one side of the body, or {@link Side#BOTH}
 * @param standing whether it was taken from still earlier patterns
 */
public record NamedThen(String name, String way, double mm, Side side, boolean standing) {

    /**
     * This and what was asked for on top of it, such as a pin on the trial garment.
     *
     * @param more the same alteration on the same side
     * @return both amounts together; taken from earlier patterns only if both were
     */
    public NamedThen plus(NamedThen more) {
        return new NamedThen(name, way, mm + more.mm, side, standing && more.standing);
    }
}
