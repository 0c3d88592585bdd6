package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Path;
import trueseam.geometry.Segment;

/**
 * Reads the edges of one piece and sees that they close.
 *
 * <p>Edges that meet in the order and direction in which they are drawn are taken so, to the last bit. Otherwise they are
 * put in order end to end, and turned so that the outline runs anticlockwise. Ends that rounding drew apart are joined.
 */
final class OutlineReader {

    private record Raw(Drawn drawn, String name, Path path) {

        Raw reversed() {
            return new Raw(drawn, name, path.reversed());
        }

        Raw endingAt(Raw next) {
            return new Raw(drawn, name, Drawn.endingAt(path, next.path.start()));
        }
    }

    private final SvgNode pieceNode;
    private final String piece;
    private final Reading reading;

    OutlineReader(SvgNode pieceNode, String piece, Reading reading) {
        this.pieceNode = pieceNode;
        this.piece = piece;
        this.reading = reading;
    }

    /** The edges in order, anticlockwise, closed within {@link Path#CHAIN_MM}. */
    List<Edge> read(List<Drawn> drawn) {
        if (drawn.size() < 2) {
            throw reading.refused(
                    pieceNode,
                    piece,
                    "Its outline is missing: it has " + drawn.size() + " lines with " + Words.EDGE
                            + "; expected at least two that close; name its stitching lines.");
        }
        List<Raw> raw = new ArrayList<>();
        for (Drawn d : drawn) {
            raw.add(new Raw(d, d.node().attributes().get(Words.EDGE), d.path(reading)));
        }
        List<Edge> edges = new ArrayList<>();
        for (Raw edge : joined(anticlockwise(inOrder(raw)))) {
            edges.add(edge(edge));
        }
        return edges;
    }

    /** The edge that lies on the fold, if one says so. */
    Optional<String> fold(List<Drawn> drawn) {
        Optional<String> fold = Optional.empty();
        for (Drawn d : drawn) {
            if (d.node().attribute(Words.LINE).filter(Words.FOLD::equals).isPresent()) {
                if (fold.isPresent()) {
                    throw reading.refused(
                            d.node(),
                            d.what(),
                            "The piece has a second fold besides \"" + fold.get()
                                    + "\"; a piece lies on one fold at most; make one of them a stitching line.");
                }
                fold = d.node().attribute(Words.EDGE);
            }
        }
        return fold;
    }

    private static double gap(Raw before, Raw after) {
        return before.path.end().distanceTo(after.path.start());
    }

    private static boolean closes(List<Raw> edges) {
        Raw last = edges.get(edges.size() - 1);
        for (Raw edge : edges) {
            if (gap(last, edge) > Drawn.JOIN_MM) {
                return false;
            }
            last = edge;
        }
        return true;
    }

    private List<Raw> inOrder(List<Raw> asDrawn) {
        if (closes(asDrawn)) {
            return asDrawn;
        }
        List<Raw> left = new ArrayList<>(asDrawn);
        List<Raw> chain = new ArrayList<>(List.of(left.remove(0)));
        while (!left.isEmpty()) {
            Optional<Raw> next = next(chain.get(chain.size() - 1), left);
            if (next.isEmpty()) {
                throw open(asDrawn, chain, left);
            }
            chain.add(next.get());
        }
        if (!closes(chain)) {
            throw open(asDrawn, chain, left);
        }
        reading.note(
                pieceNode, piece, "Its edges were drawn out of order or direction, and were put in order end to end.");
        return chain;
    }

    /** Takes out of those left the edge that begins, or failing that ends, where the last one ends. */
    private static Optional<Raw> next(Raw last, List<Raw> left) {
        for (int i = 0; i < left.size(); i++) {
            if (gap(last, left.get(i)) <= Drawn.JOIN_MM) {
                return Optional.of(left.remove(i));
            }
        }
        for (int i = 0; i < left.size(); i++) {
            if (gap(last, left.get(i).reversed()) <= Drawn.JOIN_MM) {
                return Optional.of(left.remove(i).reversed());
            }
        }
        return Optional.empty();
    }

    /** Names the gap where a person would look for it: the widest in the order drawn if most of it closes, else the first. */
    private PatternFileException open(List<Raw> asDrawn, List<Raw> chain, List<Raw> left) {
        Raw before = chain.get(chain.size() - 1);
        Raw after = left.isEmpty() ? chain.get(0) : left.get(0);
        long gaps = 0;
        Raw last = asDrawn.get(asDrawn.size() - 1);
        double widest = 0;
        for (Raw edge : asDrawn) {
            double mm = gap(last, edge);
            gaps += mm > Drawn.JOIN_MM ? 1 : 0;
            if (mm > widest && 2 * gaps <= asDrawn.size()) {
                widest = mm;
                before = last;
                after = edge;
            }
            last = edge;
        }
        return reading.refused(
                before.drawn.node(),
                before.drawn.what(),
                "The outline is open: edge \"" + before.name + "\" ends " + gap(before, after)
                        + " mm from where edge \"" + after.name
                        + "\" begins; expected edges that meet; move their ends together in a vector editor.");
    }

    private List<Raw> anticlockwise(List<Raw> edges) {
        List<Segment> strokes = new ArrayList<>();
        for (Raw edge : joined(edges)) {
            strokes.addAll(edge.path.segments());
        }
        if (Path.of(strokes).signedArea() >= 0) {
            return edges;
        }
        List<Raw> back = new ArrayList<>();
        for (Raw edge : edges) {
            back.add(edge.reversed());
        }
        Collections.reverse(back);
        reading.note(pieceNode, piece, "Its outline was drawn clockwise, and was turned to run anticlockwise.");
        return back;
    }

    /** Moves ends that editors rounded onto the start of the next edge. */
    private List<Raw> joined(List<Raw> edges) {
        Raw[] all = edges.toArray(new Raw[0]);
        for (int i = 0; i < all.length; i++) {
            Raw next = all[(i + 1) % all.length];
            if (gap(all[i], next) > Path.CHAIN_MM) {
                all[i] = all[i].endingAt(next);
            }
        }
        return Arrays.asList(all);
    }

    private Edge edge(Raw raw) {
        SvgNode node = raw.drawn.node();
        String what = raw.drawn.what();
        Optional<Double> allowance = reading.number(node, Words.ALLOWANCE, what);
        if (allowance.isEmpty()) {
            reading.warn(
                    node,
                    what,
                    "It has no " + Words.ALLOWANCE + "; 0 mm is taken, and the edge would be cut on the stitching line;"
                            + " write the seam allowance in mm.");
        }
        EdgeRole role = role(node, what, raw.name);
        try {
            return new Edge(raw.name, role, raw.path, allowance.orElse(0.0));
        } catch (IllegalArgumentException e) {
            throw reading.refused(node, what, e.getMessage());
        }
    }

    private EdgeRole role(SvgNode node, String what, String name) {
        Optional<String> word = node.attribute(Words.ROLE);
        if (word.isPresent()) {
            return EdgeRole.ofWord(word.get())
                    .orElseThrow(() -> reading.refused(
                            node,
                            what,
                            Words.ROLE + " \"" + NumberText.shortened(word.get()) + "\" is not known; expected one of "
                                    + roles() + "; correct it, or write other."));
        }
        Optional<EdgeRole> told = RoleOfName.of(name);
        if (told.isEmpty()) {
            reading.warn(
                    node,
                    what,
                    "It has no " + Words.ROLE + " and its name tells none, so it is kept as it is and not altered;"
                            + " write one of " + roles() + ".");
        }
        return told.orElse(EdgeRole.OTHER);
    }

    private static String roles() {
        return String.join(
                ", ", Arrays.stream(EdgeRole.values()).map(EdgeRole::word).toList());
    }
}
