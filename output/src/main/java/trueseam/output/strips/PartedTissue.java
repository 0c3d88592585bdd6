package trueseam.output.strips;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.polygon.Region;
import trueseam.output.drawing.Shapes;
import trueseam.output.words.RulerLength;

/**
 * A tissue cut apart or folded at lines across the grain, before anything is done to its edges.
 *
 * <pre>{@code
 *      |    \        |    \         The insert is as wide as the piece at the line and as high as
 *   ---+-----\--     +-----\        the amount; the step at the side is taken by the slivers.
 *      |      \  =>  |_____|
 *      +-------\     |      \       A tuck of N is N/2 deep: the paper between the line and N
 *                    +-------\      below it goes.
 * }</pre>
 *
 * Source: common practice; the depth of the tuck from a costume construction text, ch. 17 ([CWU17], trade facts, section 4.1).
 *
 * @param region the paper, inserts included
 * @param guides the inserts and the guides for folding
 */
record PartedTissue(Region region, List<Sliver> guides) {

    /** Parts that are taped together overlap so little, so that they are one area whatever the rounding, mm. */
    private static final double OVERLAP_MM = 0.001;

    private static final double ON_LEVEL_MM = 1e-6;
    private static final double FAR_MM = 10_000;

    /** A guide for folding need not be as wide as a wide piece, mm. */
    private static final double GUIDE_MM = 70;

    /** From the end of a strip to what is written there, mm. */
    private static final double NOTE_MM = 4;

    // Immutable.
    PartedTissue {
        guides = List.copyOf(guides);
    }

    /** The tissue of a piece after its changes of length. */
    static PartedTissue of(Path cutting, List<LengthChange> changes, RulerLength ruler) {
        Region tissue = Region.within(cutting, Sliver.TOLERANCE_MM);
        List<Sliver> guides = new ArrayList<>();
        for (LengthChange change : changes) {
            double y = change.levelY();
            double longer = change.longerMm();
            Region sleeve = sleeveBelow(tissue, change);
            Region above = tissue.intersection(band(y - OVERLAP_MM, FAR_MM)).union(sleeve);
            Region below =
                    tissue.intersection(band(-FAR_MM, y + Math.min(longer, 0))).difference(sleeve);
            Region parted = above.union(lowered(below, longer));
            for (Bounds span : spans(below, y + Math.min(longer, 0))) {
                if (longer > 0) {
                    Bounds gap = new Bounds(span.minX(), y - longer, span.maxX(), y);
                    parted = parted.union(Region.within(
                            Shapes.rectangle(new Bounds(
                                    gap.minX(), gap.minY() - OVERLAP_MM, gap.maxX(), gap.maxY() + OVERLAP_MM)),
                            OVERLAP_MM));
                    guides.add(insert(change, gap, ruler));
                } else {
                    guides.add(tuck(change, new Bounds(span.minX(), y + longer, span.maxX(), y), ruler));
                }
            }
            tissue = parted;
        }
        return new PartedTissue(tissue, guides);
    }

    /** What hangs below the line of a kimono's sleeve, beside the body: it is not parted from the tissue. */
    private static Region sleeveBelow(Region tissue, LengthChange change) {
        Region low = tissue.intersection(band(-FAR_MM, change.levelY()));
        Optional<Edge> waist = change.before().firstOf(EdgeRole.WAIST);
        if (!change.before().kind().isKimono() || waist.isEmpty()) {
            return low.difference(low);
        }
        Point onBody = waist.get().path().pointAt(waist.get().length() / 2);
        return Sliver.parts(low).stream()
                .filter(part -> !part.contains(onBody))
                .reduce(low.difference(low), Region::union);
    }

    private static Region band(double low, double high) {
        return Region.within(Shapes.rectangle(new Bounds(-FAR_MM, low, FAR_MM, high)), OVERLAP_MM);
    }

    private static Region lowered(Region region, double mm) {
        Motion down = Motion.slide(new Vec(0, -mm));
        return Region.withinAny(
                region.outlines().stream().map(p -> p.moved(down)).toList(), OVERLAP_MM);
    }

    /** From where to where an area reaches along its level edge. */
    private static List<Bounds> spans(Region region, double y) {
        List<Bounds> level = new ArrayList<>();
        for (Path outline : region.outlines()) {
            for (Segment s : outline.segments()) {
                if (Math.abs(s.start().y() - y) < ON_LEVEL_MM
                        && Math.abs(s.end().y() - y) < ON_LEVEL_MM) {
                    level.add(Bounds.of(s.start(), s.end()));
                }
            }
        }
        level.sort(Comparator.comparingDouble(Bounds::minX));
        List<Bounds> spans = new ArrayList<>();
        for (Bounds b : level) {
            int last = spans.size() - 1;
            if (last >= 0 && spans.get(last).meets(b, ON_LEVEL_MM)) {
                spans.set(last, spans.get(last).with(b));
            } else {
                spans.add(b);
            }
        }
        return spans;
    }

    private static Sliver insert(LengthChange change, Bounds gap, RulerLength ruler) {
        Path upper = Path.through(new Point(gap.minX(), gap.maxY()), new Point(gap.maxX(), gap.maxY()));
        Path lower = Path.through(new Point(gap.minX(), gap.minY()), new Point(gap.maxX(), gap.minY()));
        Bounds paper = new Bounds(gap.minX(), gap.minY() - Sliver.MARGIN_MM, gap.maxX(), gap.maxY() + Sliver.MARGIN_MM);
        String place = change.before().name() + ", insert at the " + change.line() + ": "
                + ruler.show(change.longerMm()) + " longer";
        return new Sliver(
                StripKind.INSERT,
                change.before().name(),
                place,
                List.of(upper, lower),
                rectangle(gap),
                rectangle(paper),
                List.of(),
                List.of(note(change, gap, true), note(change, gap, false)));
    }

    /** What is folded out: as much below the line as the piece becomes shorter. */
    private static Sliver tuck(LengthChange change, Bounds out, RulerLength ruler) {
        Bounds guide = new Bounds(out.minX(), out.minY(), Math.min(out.maxX(), out.minX() + GUIDE_MM), out.maxY());
        Bounds paper = guide.grown(Sliver.MARGIN_MM);
        List<Path> lines = new ArrayList<>();
        for (double y : List.of(guide.maxY(), guide.minY())) {
            lines.add(Path.through(new Point(guide.minX(), y), new Point(guide.maxX(), y)));
        }
        String shorter = ruler.show(change.longerMm());
        String place = change.before().name() + ", fold out at the " + change.line() + ": " + shorter
                + " shorter, a tuck " + ruler.show(change.longerMm() / 2) + " deep";
        double high = Sliver.MARGIN_MM - NOTE_MM;
        return new Sliver(
                StripKind.FOLD_OUT,
                change.before().name(),
                place,
                lines,
                rectangle(guide),
                rectangle(paper),
                List.of(),
                List.of(
                        new Sliver.Note(
                                "the " + change.line(),
                                new Point(guide.centre().x(), guide.maxY() + high / 2),
                                Vec.ZERO),
                        new Sliver.Note(
                                shorter + " below it", new Point(guide.centre().x(), guide.minY() - high), Vec.ZERO)));
    }

    /** Names the edge at an end, so that the strip cannot be taped in the wrong way round. */
    private static Sliver.Note note(LengthChange change, Bounds gap, boolean left) {
        Point end = new Point(left ? gap.minX() : gap.maxX(), change.levelY());
        Edge nearest = change.before().edges().stream()
                .min(Comparator.comparingDouble(
                        e -> e.path().nearest(end).point().distanceTo(end)))
                .orElseThrow();
        return new Sliver.Note(
                nearest.name(),
                new Point(end.x() + (left ? NOTE_MM : -NOTE_MM), gap.centre().y()),
                new Vec(left ? 1 : -1, 0));
    }

    private static Region rectangle(Bounds area) {
        return Region.within(Shapes.rectangle(area), OVERLAP_MM);
    }
}
