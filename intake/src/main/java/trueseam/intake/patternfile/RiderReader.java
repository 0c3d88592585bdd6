package trueseam.intake.patternfile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;

/**
 * Reads what rides on a piece: darts, notches, landmarks, levels, inner lines, grain. What cannot be used is left out with a
 * finding, so that one bad notch does not lose the pattern.
 *
 * <p>A dart or notch has its place along the edge in numbers and is drawn there too. While the two agree, the numbers are
 * taken to the last bit; when somebody moved the drawing, or the edge under it, the drawing is right.
 */
final class RiderReader {

    /** Drawn this near to where the numbers say, nobody moved it. */
    private static final double SAME_PLACE_MM = 0.01;

    /** Farther beside its edge, something is wrong with a mark. */
    private static final double BESIDE_MM = 2;

    /** A level drawn this much out of level was not meant to be. */
    private static final double LEVEL_MM = 0.01;

    private final PieceBuilder piece;
    private final List<Edge> edges;
    private final Reading reading;
    private final List<LevelName> levels = new ArrayList<>();
    private final List<String> darts = new ArrayList<>();
    private Optional<Grain> grain = Optional.empty();

    RiderReader(PieceBuilder piece, List<Edge> edges, Reading reading) {
        this.piece = piece;
        this.edges = edges;
        this.reading = reading;
    }

    Optional<Grain> grain() {
        return grain;
    }

    void read(Drawn drawn) {
        SvgNode node = drawn.node();
        try {
            if (node.has(Words.DART)) {
                dart(drawn);
            } else if (node.has(Words.NOTCH)) {
                notch(drawn);
            } else if (node.has(Words.LANDMARK)) {
                landmark(drawn);
            } else if (node.has(Words.LEVEL)) {
                level(drawn);
            } else if (node.attributes().get(Words.LINE).equals(Words.GRAIN)) {
                grain(drawn);
            } else {
                marking(drawn);
            }
        } catch (PatternFileException e) {
            reading.fail(node, drawn.what(), e.what() + " It was left out.");
        } catch (IllegalArgumentException e) {
            reading.fail(node, drawn.what(), e.getMessage() + " It was left out.");
        }
    }

    private PatternFileException unusable(Drawn drawn, String sentence) {
        return reading.refused(drawn.node(), drawn.what(), sentence);
    }

    private void dart(Drawn drawn) {
        String name = drawn.node().attributes().get(Words.DART);
        if (darts.contains(name)) {
            throw unusable(drawn, "The piece has a dart of this name already; expected names that differ; rename it.");
        }
        List<Point> corners = corners(drawn.path(reading));
        if (corners.size() == 4) {
            piece.dart(new Dart.DiamondDart(name, corners.get(0), corners.get(2), corners.get(1), corners.get(3)));
        } else if (corners.size() == 3) {
            Edge edge = edge(drawn);
            double one = place(drawn, edge, Words.FROM, Optional.of(corners.get(0)));
            double other = place(drawn, edge, Words.TO, Optional.of(corners.get(2)));
            piece.dart(
                    new Dart.EdgeDart(name, edge.name(), Math.min(one, other), Math.max(one, other), corners.get(1)));
        } else {
            throw unusable(
                    drawn,
                    "Its line has " + corners.size()
                            + " points; expected leg, apex, leg, or the four points of a dart inside the piece.");
        }
        darts.add(name);
    }

    private static List<Point> corners(Path path) {
        List<Point> all = new ArrayList<>(List.of(path.start()));
        for (Segment s : path.segments()) {
            all.add(s.end());
        }
        if (path.isClosed()) {
            all.remove(all.size() - 1);
        }
        return all;
    }

    private Edge edge(Drawn drawn) {
        String name = drawn.node().attribute(Words.EDGE).orElse("");
        for (Edge edge : edges) {
            if (edge.name().equals(name)) {
                return edge;
            }
        }
        throw unusable(
                drawn,
                Words.EDGE + " is \"" + NumberText.shortened(name) + "\"; expected one of the edges of the piece: "
                        + String.join(", ", edges.stream().map(Edge::name).toList()) + ".");
    }

    /** The place along an edge, from the number and the drawing. */
    private double place(Drawn drawn, Edge edge, String attribute, Optional<Point> at) {
        Optional<Double> number = reading.number(drawn.node(), attribute, drawn.what());
        if (at.isEmpty()) {
            return number.orElseThrow(() -> unusable(
                    drawn, "It has neither " + attribute + " nor a line; expected its place along the edge, in mm."));
        }
        Point point = at.get();
        boolean onEdge = number.filter(mm -> 0 <= mm && mm <= edge.length() + Path.CHAIN_MM)
                .filter(mm -> edge.path().pointAt(mm).isNear(point, SAME_PLACE_MM))
                .isPresent();
        if (onEdge) {
            return number.get();
        }
        PathPlace nearest = edge.path().nearest(point);
        double beside = nearest.point().distanceTo(point);
        if (beside > BESIDE_MM) {
            reading.warn(
                    drawn.node(),
                    drawn.what(),
                    "It is drawn " + beside + " mm beside edge \"" + edge.name()
                            + "\", and was put at the nearest place of it; move it there in a vector editor.");
        } else if (number.isPresent()) {
            reading.note(
                    drawn.node(),
                    drawn.what(),
                    "It was moved in the drawing: " + nearest.alongMm() + " mm along edge \"" + edge.name()
                            + "\" instead of " + number.get() + " mm.");
        }
        return nearest.alongMm();
    }

    private void notch(Drawn drawn) {
        String word = drawn.node().attributes().get(Words.NOTCH);
        Notch.Kind kind = Notch.Kind.ofWord(word)
                .orElseThrow(() -> unusable(
                        drawn,
                        "A notch of kind \"" + NumberText.shortened(word)
                                + "\" is not known; expected single, double or triple."));
        Edge edge = edge(drawn);
        piece.notch(edge.name(), place(drawn, edge, Words.AT, middle(drawn)), kind);
    }

    /** A notch is drawn as one to three cuts; it is in the middle of them. */
    private Optional<Point> middle(Drawn drawn) {
        if (drawn.node().attribute("d").isEmpty()) {
            return drawn.point(reading);
        }
        List<Path> cuts = drawn.parts(reading);
        if (cuts.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(cuts.get(0).start().towards(cuts.get(cuts.size() - 1).start(), 0.5));
    }

    private void landmark(Drawn drawn) {
        Point at = drawn.point(reading)
                .orElseThrow(() -> unusable(
                        drawn,
                        "It is drawn as " + drawn.node().name()
                                + "; expected a use with x and y, a circle, or a path that begins there."));
        piece.landmark(drawn.node().attributes().get(Words.LANDMARK), at);
    }

    private void level(Drawn drawn) {
        String word = drawn.node().attributes().get(Words.LEVEL);
        LevelName name = LevelName.ofWord(word)
                .orElseThrow(() -> unusable(
                        drawn,
                        "This level is not known; expected one of "
                                + String.join(
                                        ", ",
                                        Arrays.stream(LevelName.values())
                                                .map(LevelName::word)
                                                .toList())
                                + "."));
        if (levels.contains(name)) {
            throw unusable(drawn, "The piece has this level already; expected one of a name; delete one of them.");
        }
        Path path = drawn.path(reading);
        double tilt = Math.abs(path.end().y() - path.start().y());
        if (tilt > LEVEL_MM) {
            throw unusable(
                    drawn, "One end is " + tilt + " mm higher than the other; a level lies straight across; level it.");
        }
        levels.add(name);
        piece.level(name, path.start().y());
    }

    private void grain(Drawn drawn) {
        if (grain.isPresent()) {
            throw unusable(drawn, "The piece has a grainline already; expected one; delete one of them.");
        }
        Path path = drawn.path(reading);
        grain = Optional.of(new Grain(path.start(), path.end()));
    }

    private void marking(Drawn drawn) {
        piece.marking(new Marking(drawn.node().attribute(Words.NAME).orElse(""), drawn.path(reading)));
    }
}
