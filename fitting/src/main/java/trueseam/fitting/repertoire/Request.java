package trueseam.fitting.repertoire;

import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.body.Side;

/**
 * An alteration that the dressmaker asks for by its name.
 *
 * @param entry the alteration
 * @param variant the way of doing it
 * @param mm the amount, mm; nothing where it is to be found from the measure
 * @param side one side of the body only; nothing for both
 */
public record Request(Entry entry, Variant variant, OptionalDouble mm, Optional<Side> side) {

    // An amount that nobody can find must be given.
    public Request {
        if (mm.isEmpty() && (!entry.solved() || side.isPresent())) {
            throw new RequestException("Say how much for \"" + entry.name()
                    + "\": its amount is not found from a measure; write \"" + entry.name() + "=1/2 in\".");
        }
        if (mm.isPresent() && mm.getAsDouble() < 0 && !entry.isBothWays()) {
            throw new RequestException("\"" + entry.name() + "\" takes no minus; it " + entry.plus() + ".");
        }
    }
}
