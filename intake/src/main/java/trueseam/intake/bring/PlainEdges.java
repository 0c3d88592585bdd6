package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import trueseam.garment.pattern.EdgeRole;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal.NamedEdge;

/** The edges of a piece that is not known: between its corners and the ends of what is marked, numbered. */
record PlainEdges(Path line, List<Double> ends) {

    /** Ends nearer than this are one. */
    private static final double ONE_MM = 2;

    /** An outline with more corners is kept in two edges: nobody reads so many numbers. */
    private static final int MOST_EDGES = 200;

    PlainEdges {
        ends = List.copyOf(ends);
    }

    PlainEdges(Outline outline, List<Path> marked) {
        this(outline.line(), ends(outline, marked));
    }

    private static List<Double> ends(Outline outline, List<Path> marked) {
        Path line = outline.line();
        TreeSet<Double> ends = new TreeSet<>(outline.corners());
        for (Path mark : marked) {
            for (Point end : List.of(mark.start(), mark.end())) {
                double at = line.nearest(end).alongMm();
                if (ends.stream()
                        .noneMatch(e ->
                                Math.abs(e - at) < ONE_MM || Math.abs(Math.abs(e - at) - line.length()) < ONE_MM)) {
                    ends.add(at);
                }
            }
        }
        return ends.size() < 2 || ends.size() > MOST_EDGES ? List.of(0.0, line.length() / 2) : List.copyOf(ends);
    }

    Point lowerLeft(Upright upright) {
        Bounds bounds = upright.apply(line).bounds();
        return new Point(bounds.minX(), bounds.minY());
    }

    List<NamedEdge> lying(Upright upright) {
        Path lying = upright.apply(line);
        List<NamedEdge> edges = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            Path part = i + 1 < ends.size()
                    ? lying.part(ends.get(i), ends.get(i + 1))
                    : ends.get(0) <= 1e-9
                            ? lying.part(ends.get(i), lying.length())
                            : lying.part(ends.get(i), lying.length()).then(lying.part(0, ends.get(0)));
            edges.add(new NamedEdge("edge " + (i + 1), EdgeRole.OTHER, part, 0));
        }
        return edges;
    }
}
