package trueseam.fitting.repertoire;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.alteration.Alteration;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.body.Side;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Sides;
import trueseam.geometry.polygon.Region;

/**
 * An entry of the repertoire with its amount.
 *
 * @param entry the entry
 * @param variant the way of doing it
 * @param mm the amount, mm
 * @param side one side of the body only; nothing for both
 */
public record Applied(Entry entry, Variant variant, double mm, Optional<Side> side) implements Alteration {

    /** An outline is looked at for crossings in chords no farther from the curve than this, as the proof does. */
    private static final double OUTLINE_MM = 0.1;

    /**
     * The usual way.
     *
     * @param entry the entry
     * @param mm the amount, mm
     * @return the alteration
     */
    public static Applied usual(Entry entry, double mm) {
        return new Applied(entry, entry.variants().get(0), mm, Optional.empty());
    }

    @Override
    public String title() {
        String name =
                Character.toUpperCase(entry.name().charAt(0)) + entry.name().substring(1);
        String way = entry.variants().size() > 1 ? " (" + variant.name() + ")" : "";
        String where = side.map(s -> ", " + s.name().toLowerCase(Locale.ROOT)).orElse("");
        return name + way + where + ": " + (mm > 0 || !entry.isBothWays() ? entry.plus() : entry.minus());
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        if (mm == 0) {
            return List.of();
        }
        if (!Repertoire.isForWhole(entry, Repertoire.inParts(pattern))) {
            throw new RequestException(
                    "\"" + entry.name() + "\" is written for a piece that this pattern has in parts: tape the parts"
                            + " together along the seam, alter them as one piece, and cut them apart again along the seam.");
        }
        List<PieceWork> both = variant.maker().work(pattern, mm);
        if (Math.abs(mm) > entry.mostMm()) {
            requireNoCrossing(pattern, both);
        }
        return side.isEmpty()
                ? both
                : both.stream()
                        .filter(work -> Sides.of(work.piece()).equals(side))
                        .toList();
    }

    /** An amount beyond what the alteration is trusted with may turn a piece inside out: then it says what to do instead. */
    private void requireNoCrossing(Pattern pattern, List<PieceWork> work) {
        for (Piece piece : pattern.pieces()) {
            Piece now = piece;
            for (PieceWork one : work) {
                now = one.piece().equals(piece.name())
                        ? Tissue.work(now, one.steps()).piece()
                        : now;
            }
            if (now != piece && Region.faultOf(now.outline(), OUTLINE_MM).isPresent()) {
                throw new AlterationException(
                        piece.name(),
                        entry.name(),
                        mm,
                        "with so much its lines would cross; take the next size there, or open the piece inside.");
            }
        }
    }

    @Override
    public Set<EdgeRole> lengthens() {
        Set<EdgeRole> all = new HashSet<>(entry.lengthens());
        all.addAll(variant.lengthens());
        return all;
    }

    @Override
    public boolean changesCapEase() {
        return mm != 0 && lengthens().contains(EdgeRole.CAP);
    }
}
