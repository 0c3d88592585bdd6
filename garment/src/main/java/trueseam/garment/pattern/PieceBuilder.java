package trueseam.garment.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** Collects the parts of a piece. Used by one thread, for one piece; {@link #build} checks the piece's laws. */
public final class PieceBuilder {

    private String name;
    private PieceKind kind;
    private int cutCount = 1;
    private Optional<String> fold = Optional.empty();
    private final List<Edge> edges = new ArrayList<>();
    private final List<Dart> darts = new ArrayList<>();
    private final List<Notch> notches = new ArrayList<>();
    private final List<Landmark> landmarks = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();
    private final List<Marking> markings = new ArrayList<>();
    private Optional<Grain> grain = Optional.empty();

    /**
     * Begins a piece.
     *
     * @param name unique in its pattern
     * @param kind what it is
     */
    public PieceBuilder(String name, PieceKind kind) {
        this.name = name;
        this.kind = kind;
    }

    PieceBuilder(Piece piece) {
        this.name = piece.name();
        this.kind = piece.kind();
        this.cutCount = piece.cutCount();
        this.fold = piece.fold();
        edges.addAll(piece.edges());
        darts.addAll(piece.darts());
        notches.addAll(piece.notches());
        landmarks.addAll(piece.landmarks());
        levels.addAll(piece.levels());
        markings.addAll(piece.markings());
        grain = Optional.of(piece.grain());
    }

    /**
     * Calls it otherwise.
     *
     * @param pieceName unique in its pattern
     * @return this builder
     */
    public PieceBuilder called(String pieceName) {
        name = pieceName;
        return this;
    }

    /**
     * Says how many are cut.
     *
     * @param count how many of it in all
     * @return this builder
     */
    public PieceBuilder cut(int count) {
        cutCount = count;
        return this;
    }

    /**
     * Lays an edge on the fold of the cloth.
     *
     * @param edgeName the edge; it is cut once, on the fold
     * @return this builder
     */
    public PieceBuilder onFold(String edgeName) {
        fold = Optional.of(edgeName);
        return this;
    }

    /**
     * Adds the next edge of the outline, anticlockwise.
     *
     * @param edgeName unique in the piece
     * @param role what it is
     * @param path its stitching line
     * @param allowanceMm seam allowance, mm
     * @return this builder
     */
    public PieceBuilder edge(String edgeName, EdgeRole role, Path path, double allowanceMm) {
        edges.add(new Edge(edgeName, role, path, allowanceMm));
        return this;
    }

    /**
     * Replaces all edges.
     *
     * @param all in order, anticlockwise
     * @return this builder
     */
    public PieceBuilder edges(List<Edge> all) {
        edges.clear();
        edges.addAll(all);
        return this;
    }

    /**
     * Adds a dart.
     *
     * @param dart the dart
     * @return this builder
     */
    public PieceBuilder dart(Dart dart) {
        darts.add(dart);
        return this;
    }

    /**
     * Replaces all darts.
     *
     * @param all the darts
     * @return this builder
     */
    public PieceBuilder darts(List<Dart> all) {
        darts.clear();
        darts.addAll(all);
        return this;
    }

    /**
     * Adds a notch.
     *
     * @param edgeName the edge it is on
     * @param atMm place along the edge, mm
     * @param notchKind how many cuts
     * @return this builder
     */
    public PieceBuilder notch(String edgeName, double atMm, Notch.Kind notchKind) {
        notches.add(new Notch(edgeName, atMm, notchKind));
        return this;
    }

    /**
     * Replaces all notches.
     *
     * @param all the notches
     * @return this builder
     */
    public PieceBuilder notches(List<Notch> all) {
        notches.clear();
        notches.addAll(all);
        return this;
    }

    /**
     * Adds a landmark.
     *
     * @param landmarkName its name
     * @param at where it is
     * @return this builder
     */
    public PieceBuilder landmark(String landmarkName, Point at) {
        landmarks.add(new Landmark(landmarkName, at));
        return this;
    }

    /**
     * Replaces all landmarks.
     *
     * @param all the landmarks
     * @return this builder
     */
    public PieceBuilder landmarks(List<Landmark> all) {
        landmarks.clear();
        landmarks.addAll(all);
        return this;
    }

    /**
     * Adds a level.
     *
     * @param levelName which line
     * @param y its height, mm
     * @return this builder
     */
    public PieceBuilder level(LevelName levelName, double y) {
        levels.add(new Level(levelName, y));
        return this;
    }

    /**
     * Replaces all levels.
     *
     * @param all the levels
     * @return this builder
     */
    public PieceBuilder levels(List<Level> all) {
        levels.clear();
        levels.addAll(all);
        return this;
    }

    /**
     * Adds another line inside.
     *
     * @param marking the line
     * @return this builder
     */
    public PieceBuilder marking(Marking marking) {
        markings.add(marking);
        return this;
    }

    /**
     * Replaces all other lines inside.
     *
     * @param all the lines
     * @return this builder
     */
    public PieceBuilder markings(List<Marking> all) {
        markings.clear();
        markings.addAll(all);
        return this;
    }

    /**
     * Sets the grainline.
     *
     * @param line the grainline
     * @return this builder
     */
    public PieceBuilder grain(Grain line) {
        grain = Optional.of(line);
        return this;
    }

    /**
     * The piece.
     *
     * @return a checked piece
     * @throws PatternException if a law of a piece is broken or the grainline is missing
     */
    public Piece build() {
        Grain line = grain.orElseThrow(
                () -> new PatternException(name, "the grainline is missing; a piece cannot be laid without it."));
        return new Piece(name, kind, cutCount, fold, edges, darts, notches, landmarks, levels, markings, line);
    }
}
