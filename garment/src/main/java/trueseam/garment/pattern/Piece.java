package trueseam.garment.pattern;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * One piece of a pattern: the closed chain of its stitching edges, anticlockwise, and what rides on it.
 *
 * <p>Laws: (1) every edge begins where the one before ended, within {@link Path#CHAIN_MM}, and the last closes the
 * chain; (2) names of edges, of darts and of levels are unique; (3) darts and notches lie on edges that are there.
 *
 * @param name unique in its pattern
 * @param kind what it is
 * @param cutCount how many of it are cut in all; a piece on a fold counts as one whole
 * @param fold name of the edge that lies on the fold of the cloth, if there is one
 * @param edges in order, anticlockwise
 * @param darts darts
 * @param notches notches
 * @param landmarks named points inside
 * @param levels lines across the grain, at most one of a name
 * @param markings other lines inside
 * @param grain the grainline
 */
public record Piece(
        String name,
        PieceKind kind,
        int cutCount,
        Optional<String> fold,
        List<Edge> edges,
        List<Dart> darts,
        List<Notch> notches,
        List<Landmark> landmarks,
        List<Level> levels,
        List<Marking> markings,
        Grain grain) {

    // Checks the laws; the outline itself may still cross, which is a finding and not an error.
    public Piece {
        edges = List.copyOf(edges);
        darts = List.copyOf(darts);
        notches = List.copyOf(notches);
        landmarks = List.copyOf(landmarks);
        levels = List.copyOf(levels);
        markings = List.copyOf(markings);
        if (name.isBlank()) {
            throw new PatternException(name, "a piece needs a name.");
        }
        if (cutCount < 1) {
            throw new PatternException(name, "a cut count of " + cutCount + " is not possible; give 1 or more.");
        }
        if (edges.size() < 2) {
            throw new PatternException(
                    name, "an outline needs at least two edges, and there are " + edges.size() + ".");
        }
        checkChain(name, edges);
        checkRiders(name, edges, fold, darts, notches);
        checkNames(name, "darts", darts.stream().map(Dart::name).toList());
        checkNames(
                name,
                "levels",
                levels.stream().map(level -> level.name().word()).toList());
    }

    private static void checkNames(String name, String what, List<String> all) {
        Set<String> seen = new HashSet<>();
        for (String one : all) {
            if (!seen.add(one)) {
                throw new PatternException(name, "two " + what + " are named \"" + one + "\"; names must differ.");
            }
        }
    }

    private static void checkChain(String name, List<Edge> edges) {
        Edge last = edges.get(edges.size() - 1);
        for (Edge edge : edges) {
            double gap = last.path().end().distanceTo(edge.path().start());
            if (!(gap <= Path.CHAIN_MM)) {
                throw new PatternException(
                        name,
                        "edge \"" + last.name() + "\" ends " + gap + " mm from where edge \"" + edge.name()
                                + "\" begins; the outline must be closed.");
            }
            last = edge;
        }
    }

    private static void checkRiders(
            String name, List<Edge> edges, Optional<String> fold, List<Dart> darts, List<Notch> notches) {
        List<String> names = edges.stream().map(Edge::name).toList();
        checkNames(name, "edges", names);
        if (fold.isPresent() && !names.contains(fold.get())) {
            throw new PatternException(name, "the fold \"" + fold.get() + "\" is not one of its edges " + names + ".");
        }
        for (Dart dart : darts) {
            if (dart instanceof Dart.EdgeDart d) {
                checkPlace(name, edges, "dart \"" + d.name() + "\"", d.edge(), d.toMm());
            }
        }
        for (Notch notch : notches) {
            checkPlace(name, edges, "a notch", notch.edge(), notch.atMm());
        }
    }

    private static void checkPlace(String name, List<Edge> edges, String what, String on, double atMm) {
        for (Edge edge : edges) {
            if (edge.name().equals(on)) {
                if (!(atMm <= edge.length() + Path.CHAIN_MM)) {
                    throw new PatternException(
                            name,
                            what + " at " + atMm + " mm is beyond the end of edge \"" + on + "\", which is "
                                    + edge.length() + " mm long.");
                }
                return;
            }
        }
        throw new PatternException(name, what + " is on edge \"" + on + "\", which the piece does not have.");
    }

    /**
     * The edge of a name.
     *
     * @param edgeName its name
     * @return the edge
     * @throws PatternException if the piece has none of that name
     */
    public Edge edge(String edgeName) {
        for (Edge edge : edges) {
            if (edge.name().equals(edgeName)) {
                return edge;
            }
        }
        throw new PatternException(
                name,
                "there is no edge \"" + edgeName + "\"; it has "
                        + edges.stream().map(Edge::name).toList() + ".");
    }

    /**
     * The edges of a role, in the order of the outline.
     *
     * @param role what they are
     * @return none, one or more
     */
    public List<Edge> edgesOf(EdgeRole role) {
        List<Edge> found = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.role() == role) {
                found.add(edge);
            }
        }
        return found;
    }

    /**
     * The first edge of a role.
     *
     * @param role what it is
     * @return the edge, or nothing if the piece has none
     */
    public Optional<Edge> firstOf(EdgeRole role) {
        for (Edge edge : edges) {
            if (edge.role() == role) {
                return Optional.of(edge);
            }
        }
        return Optional.empty();
    }

    /**
     * The only edge of a role, for alterations that need one.
     *
     * @param role what it is
     * @return the edge
     * @throws PatternException if there is none, or more than one
     */
    public Edge only(EdgeRole role) {
        List<Edge> found = edgesOf(role);
        if (found.size() != 1) {
            throw new PatternException(
                    name,
                    "one edge in the role of " + role.word() + " was expected and " + found.size()
                            + " were found; name the edges of the piece.");
        }
        return found.get(0);
    }

    /**
     * The place of an edge in the order of the outline.
     *
     * @param edgeName its name
     * @return its index in {@link #edges}
     */
    public int indexOf(String edgeName) {
        return edges.indexOf(edge(edgeName));
    }

    /**
     * How often the outline goes round the wearer: a piece cut on the fold or cut twice is half of what it makes, a whole piece
     * cut once is all of it.
     *
     * @return 2 for a half piece, 1 for a whole one
     */
    public int timesAround() {
        return fold.isPresent() || cutCount > 1 ? 2 : 1;
    }

    /**
     * The outline as one closed path, anticlockwise from the start of the first edge.
     *
     * @return the stitching line
     */
    public Path outline() {
        List<Segment> all = new ArrayList<>();
        for (Edge edge : edges) {
            all.addAll(edge.path().segments());
        }
        return Path.of(all);
    }

    /**
     * The level of a name.
     *
     * @param levelName which line
     * @return its height, mm, or nothing if the piece has none
     */
    public OptionalDouble level(LevelName levelName) {
        for (Level level : levels) {
            if (level.name() == levelName) {
                return OptionalDouble.of(level.y());
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * The landmark of a name.
     *
     * @param landmarkName for example {@link Landmark#BUST_POINT}
     * @return where it is, or nothing if the piece has none
     */
    public Optional<Point> landmark(String landmarkName) {
        for (Landmark landmark : landmarks) {
            if (landmark.name().equals(landmarkName)) {
                return Optional.of(landmark.at());
            }
        }
        return Optional.empty();
    }

    /**
     * The darts sewn into an edge, in the order of the edge.
     *
     * @param edgeName the edge
     * @return its darts
     */
    public List<Dart.EdgeDart> dartsOn(String edgeName) {
        List<Dart.EdgeDart> found = new ArrayList<>();
        for (Dart dart : darts) {
            if (dart instanceof Dart.EdgeDart d && d.edge().equals(edgeName)) {
                found.add(d);
            }
        }
        found.sort((a, b) -> Double.compare(a.fromMm(), b.fromMm()));
        return found;
    }

    /**
     * The length of an edge as sewn: along the stitching line, without dart mouths.
     *
     * @param edgeName the edge
     * @return mm
     */
    public double sewnLength(String edgeName) {
        double mm = edge(edgeName).length();
        for (Dart.EdgeDart dart : dartsOn(edgeName)) {
            mm -= dart.mouthMm();
        }
        return mm;
    }

    /**
     * A copy to change.
     *
     * @return a builder that holds everything of this piece
     */
    public PieceBuilder toBuilder() {
        return new PieceBuilder(this);
    }
}
