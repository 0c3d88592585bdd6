package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.garment.pattern.EdgeRole;

/**
 * One way of doing an alteration, where handbooks differ.
 *
 * @param name how the user asks for it, for example {@code neck end}
 * @param reason when to choose it, and who says so
 * @param maker its steps
 * @param lengthens edges that this way means to lengthen or shorten, besides those of the entry
 */
public record Variant(String name, String reason, Maker maker, Set<EdgeRole> lengthens) {

    // Immutable.
    public Variant {
        lengthens = Set.copyOf(lengthens);
    }
}
