package trueseam.cloth.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.packing.DoesNotFitException;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.StripSearch;
import trueseam.cloth.packing.Way;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Pattern;

/** Lays the pieces of a pattern on a cloth. */
public final class Laying {

    private final Cloth cloth;
    private final Stuff stuff;
    private final LayWishes wishes;
    private final List<ClothPart> parts;
    private final ClothStrip onCloth;
    private final Strip strip;
    private final Placing placing;
    private final List<Finding> findings;

    private Laying(
            Cloth cloth,
            Stuff stuff,
            LayWishes wishes,
            List<ClothPart> parts,
            List<Finding> findings,
            ClothStrip onCloth) {
        this.cloth = cloth;
        this.stuff = stuff;
        this.wishes = wishes;
        this.parts = List.copyOf(parts);
        this.findings = List.copyOf(findings);
        this.onCloth = onCloth;
        this.strip = onCloth.with(wishes.byHand());
        this.placing = new Placing(cloth, wishes.gapMm(), this.parts);
    }

    /**
     * What is to be laid.
     *
     * @param pattern the pattern, altered or not
     * @param cloth the cloth
     * @param stuff which pieces: those that are cut from it
     * @param wishes what is wanted
     * @return the task
     * @throws LayException if no piece is cut from that stuff, or a piece does not fit across the cloth
     */
    public static Laying of(Pattern pattern, Cloth cloth, Stuff stuff, LayWishes wishes) {
        List<Finding> findings = new ArrayList<>();
        List<ClothPart> parts = ClothParts.of(pattern, cloth, stuff, wishes, findings);
        Laying laying = new Laying(cloth, stuff, wishes, parts, findings, new ClothStrip(cloth, wishes.gapMm(), parts));
        laying.strip.parts().stream()
                .filter(p -> !laying.goesAcross(p))
                .findFirst()
                .ifPresent(p -> {
                    throw laying.tooWide(p.name());
                });
        return laying;
    }

    /**
     * The same where it was not said how the cloth lies: folded lengthwise, or in a single layer where a piece is wider than one half.
     *
     * @param pattern the pattern, altered or not
     * @param cloth the cloth, however it lies
     * @param stuff which pieces: those that are cut from it
     * @param wishes what is wanted
     * @return the task; a single layer is said in the layout's findings
     * @throws LayException if no piece is cut from that stuff, or a piece is wider than the whole cloth
     */
    public static Laying asItFits(Pattern pattern, Cloth cloth, Stuff stuff, LayWishes wishes) {
        try {
            return of(pattern, cloth.laid(Layers.LENGTHWISE), stuff, wishes);
        } catch (LayException e) {
            if (!e.tooWide()) {
                throw e;
            }
            Laying single = of(pattern, cloth.laid(Layers.SINGLE), stuff, wishes);
            List<Finding> said = new ArrayList<>(single.findings);
            said.add(Finding.note(
                    e.place(), "Half of the cloth is too narrow for it; the cloth is laid in a single layer."));
            return new Laying(single.cloth, stuff, wishes, single.parts, said, single.onCloth);
        }
    }

    private boolean goesAcross(StripPart part) {
        return part.ways().stream().anyMatch(way -> {
            double[] y = part.outline().stream()
                    .mapToDouble(p -> Placing.laid(p, way).y())
                    .sorted()
                    .toArray();
            // A millionth: rounding of a piece that is as wide as the cloth.
            return y[y.length - 1] - y[0] <= strip.width() * (1 + 1e-6);
        });
    }

    /**
     * The cloth.
     *
     * @return the cloth as it lies
     */
    public Cloth cloth() {
        return cloth;
    }

    /**
     * What is wanted.
     *
     * @return the wishes, with what lies there by hand
     */
    public LayWishes wishes() {
        return wishes;
    }

    /**
     * What is laid, in the order that {@link Placed#part} counts.
     *
     * @return the parts
     */
    public List<ClothPart> parts() {
        return parts;
    }

    /**
     * Searches for a short layout.
     *
     * @param seed where chance begins: the same seed after the same rounds gives the same layout
     * @param patience how long
     * @param better told each layout that is shorter than the one before, the first at once
     * @return the shortest found
     * @throws LayException if a piece does not fit
     */
    public Lay search(long seed, Patience patience, Consumer<Found> better) {
        try {
            Consumer<StripSearch.Progress> told =
                    p -> better.accept(new Found(p.rounds(), lay(p.layout().placed())));
            return lay(StripSearch.run(strip, seed, SEEKERS, patience, told).placed());
        } catch (DoesNotFitException e) {
            throw tooWide(e.part());
        }
    }

    /** Both cores of a small machine; the same on every machine, so that a seed gives the same layout everywhere. */
    private static final int SEEKERS = 2;

    /**
     * A first layout, found at once; not short yet.
     *
     * @param seed where chance begins
     * @return the layout
     * @throws LayException if a piece does not fit
     */
    public Lay first(long seed) {
        return search(seed, rounds -> 1, found -> {});
    }

    /**
     * The same task around what lies there by hand.
     *
     * @param spots where pieces lie; only those by hand stay, and those of no piece of this task are left out
     * @return the task
     */
    public Laying around(List<Spot> spots) {
        List<Optional<Placed>> placed = placing.placed(spots);
        List<Placed> held = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            if (spots.get(i).byHand()) {
                placed.get(i).ifPresent(held::add);
            }
        }
        return new Laying(cloth, stuff, wishes.withByHand(held), parts, findings, onCloth);
    }

    /**
     * The layout with every piece where it is said to lie, whether or not that is possible.
     *
     * @param spots where the pieces lie
     * @return the layout; nothing where not every copy has its spot, or a spot is no piece's
     */
    public Optional<Lay> laid(List<Spot> spots) {
        List<Optional<Placed>> placed = placing.placed(spots);
        int copies = parts.stream().mapToInt(ClothPart::copies).sum();
        if (placed.size() != copies || placed.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        List<Placed> all = placed.stream().flatMap(Optional::stream).toList();
        return Optional.of(around(spots).lay(all));
    }

    /**
     * Where the pieces of a layout of this task lie, to be kept.
     *
     * @param lay the layout
     * @return a spot for each piece, in the layout's order
     */
    public List<Spot> spots(Lay lay) {
        return lay.pieces().stream().map(p -> Placing.spot(p, lay.byHand(p))).toList();
    }

    /**
     * A piece moved by hand; on cloth with a repeat it goes to the nearest place where its stripes match.
     *
     * @param piece the piece
     * @param dxMm along the cloth, mm
     * @param dyMm across it, mm; of a piece at the fold it says nothing
     * @return its spot, by hand
     */
    public Spot moved(LaidPiece piece, double dxMm, double dyMm) {
        return placing.moved(piece, dxMm, dyMm);
    }

    /**
     * A piece turned by hand about the middle of its outline.
     *
     * @param piece the piece
     * @param way how it is to lie
     * @return its spot, by hand
     */
    public Spot turned(LaidPiece piece, Way way) {
        return placing.turned(piece, way);
    }

    /**
     * A mark of the task: the same for the same shapes that may lie in the same ways on the same cloth, whatever was laid by hand.
     *
     * @return letters and digits
     */
    public String mark() {
        return onCloth.mark();
    }

    /**
     * A layout on the way.
     *
     * @param rounds after how many rounds of the search
     * @param lay the layout
     */
    public record Found(int rounds, Lay lay) {}

    private LayException tooWide(String part) {
        return new LayException(
                part,
                String.format(
                        Locale.ROOT,
                        "It does not fit across the cloth, of which %.0f mm are free%s%s; %s.",
                        cloth.usableMm(),
                        cloth.layers() == Layers.LENGTHWISE ? " from the fold to the selvage" : "",
                        cloth.stripeAcrossMm() > 0 ? ", with its grainline on a stripe" : "",
                        cloth.layers() == Layers.LENGTHWISE
                                ? "lay the cloth in a single layer, or take a wider cloth"
                                : "take a wider cloth"),
                true);
    }

    private Lay lay(List<Placed> placed) {
        List<LaidPiece> laid = new ArrayList<>();
        double area = 0;
        double used = 0;
        List<Placed> pieces = placed.stream()
                .filter(p -> p.part() < parts.size())
                .sorted(Comparator.comparingInt(Placed::part))
                .toList();
        for (Placed p : pieces) {
            LaidPiece piece = placing.piece(p);
            laid.add(piece);
            used = Math.max(used, piece.cutting().bounds().maxX());
            area += Math.abs(piece.cutting().signedArea()) * (piece.part().spare() ? 0.5 : 1);
        }
        List<Finding> all = new ArrayList<>(findings);
        Lay lay = new Lay(cloth, stuff, wishes, laid, used, area / (cloth.usableMm() * used), List.of());
        cloth.haveMm().ifPresent(have -> {
            if (lay.missingMm() > 0) {
                all.add(Finding.warning(
                        "cloth",
                        String.format(
                                Locale.ROOT,
                                "It takes %.0f mm and there are %.0f mm: %.0f mm are missing. Search longer, allow a smaller gap, or"
                                        + " cut facings from something else.",
                                lay.neededMm(),
                                have,
                                lay.missingMm())));
            }
        });
        return new Lay(cloth, stuff, wishes, laid, used, lay.density(), all);
    }
}
