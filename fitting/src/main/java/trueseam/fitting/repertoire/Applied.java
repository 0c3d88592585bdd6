package trueseam.fitting.repertoire;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.PieceWork;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;

/**
 * An entry of the repertoire with its amount.
 *
 * @param entry the entry
 * @param variant the way of doing it
 * @param mm the amount, mm
 */
public record Applied(Entry entry, Variant variant, double mm) implements Alteration {

    /**
     * The usual way.
     *
     * @param entry the entry
     * @param mm the amount, mm
     * @return the alteration
     */
    public static Applied usual(Entry entry, double mm) {
        return new Applied(entry, entry.variants().get(0), mm);
    }

    @Override
    public String title() {
        String name =
                Character.toUpperCase(entry.name().charAt(0)) + entry.name().substring(1);
        String way = entry.variants().size() > 1 ? " (" + variant.name() + ")" : "";
        return name + way + ": " + (mm > 0 || !entry.isBothWays() ? entry.plus() : entry.minus());
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        return mm == 0 ? List.of() : variant.maker().work(pattern, mm);
    }

    @Override
    public Set<EdgeRole> lengthens() {
        Set<EdgeRole> all = new HashSet<>(entry.lengthens());
        all.addAll(variant.lengthens());
        return all;
    }

    @Override
    public boolean changesCapEase() {
        return lengthens().contains(EdgeRole.CAP);
    }
}
