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
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Sides;
import trueseam.geometry.Bounds;
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
            throw new RequestException("\"" + entry.name() + "\" is written for "
                    + Repertoire.otherwise(Repertoire.inParts(pattern)) + ".");
        }
        List<PieceWork> both = variant.maker().work(pattern, mm);
        if (Math.abs(mm) > entry.mostMm()) {
            requireSound(pattern, both);
        }
        return side.isEmpty()
                ? both
                : both.stream()
                        .filter(work -> Sides.of(work.piece()).equals(side))
                        .toList();
    }

    /** An amount beyond what the alteration is trusted with may spoil a piece: then it says what to do instead. */
    private void requireSound(Pattern pattern, List<PieceWork> work) {
        for (Piece piece : pattern.pieces()) {
            Piece now = piece;
            for (PieceWork one : work) {
                now = one.piece().equals(piece.name())
                        ? Tissue.work(now, one.steps()).piece()
                        : now;
            }
            Optional<String> spoilt = now.equals(piece) ? Optional.empty() : spoilt(piece, now);
            if (spoilt.isPresent()) {
                throw new AlterationException(
                        piece.name(),
                        entry.name(),
                        mm,
                        "with so much " + spoilt.get() + "; take the next size there, or open the piece inside.");
            }
        }
    }

    /** What is wrong with a piece that every seam of it may still walk on. */
    private static Optional<String> spoilt(Piece before, Piece now) {
        if (Region.faultOf(now.outline(), OUTLINE_MM).isPresent()) {
            return Optional.of("its lines would cross");
        }
        if (now.fold().isPresent() && overFoldMm(before, now) > OUTLINE_MM) {
            return Optional.of("it would stand over its fold");
        }
        Region paper = Region.within(now.outline(), OUTLINE_MM);
        for (Dart dart : now.darts()) {
            if (dart instanceof Dart.EdgeDart d && !paper.contains(d.apex())) {
                return Optional.of("the " + d.name() + " would point out of the piece");
            }
        }
        return Optional.empty();
    }

    /** How far a piece stands over the line where its upright fold lay. */
    private static double overFoldMm(Piece before, Piece now) {
        double fold = before.edge(before.fold().orElseThrow()).path().start().x();
        Bounds was = before.outline().bounds();
        Bounds is = now.outline().bounds();
        return was.centre().x() > fold ? fold - is.minX() : is.maxX() - fold;
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
