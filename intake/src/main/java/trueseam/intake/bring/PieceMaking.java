package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.naming.Proposal.NamedEdge;
import trueseam.intake.outline.RawPiece;

/** Makes one named piece of one piece of a drawing. One piece, one thread. */
final class PieceMaking {

    /** A notch is drawn as a short line on the stitching or the cutting line. */
    private static final double LONGEST_NOTCH_MM = 16;

    /** Notches side by side within this are one double or triple notch: they are cut 1/4 in apart (common practice). */
    private static final double ONE_NOTCH_MM = 12;

    private static final double ON_MM = 1.5;

    private final RawPiece raw;
    private final Optional<Proposal> proposal;
    private final List<Path> inside;
    private final BringChoices choices;
    private final List<Finding> findings;
    private final Set<Path> used = new HashSet<>();
    private String name = "";
    private Upright upright;

    PieceMaking(RawPiece raw, Optional<Proposal> proposal, BringChoices choices, List<Finding> findings) {
        this.raw = raw;
        this.proposal = proposal;
        this.inside = raw.inside().stream().map(Stroke::path).toList();
        this.choices = choices;
        this.findings = findings;
    }

    /**
     * Makes the piece.
     *
     * @param pieceName its name
     * @param kind what it is
     * @param stitching its stitching line as drawn
     * @param marked stretches of its line that the drawing marks
     */
    Piece make(String pieceName, PieceKind kind, Path stitching, List<Path> marked) {
        name = pieceName;
        PieceBuilder builder = new PieceBuilder(pieceName, kind);
        List<NamedEdge> edges = edges(kind, stitching, marked);
        List<Edge> lying = new ArrayList<>();
        for (NamedEdge edge : edges) {
            lying.add(new Edge(edge.name(), edge.role(), edge.path(), allowance(edge)));
        }
        builder.edges(lying);
        darts(lying).forEach(builder::dart);
        builder.notches(notches(lying));
        builder.grain(grain(lying));
        Optional<String> fold = fold(lying);
        fold.ifPresent(builder::onFold);
        builder.cut(cut(fold));
        Levels.of(kind, lying, builder.build().darts()).forEach(l -> builder.level(l.name(), l.y()));
        landmarks(kind, builder.build()).forEach(l -> builder.landmark(l.name(), l.at()));
        rest().forEach(builder::marking);
        return builder.build();
    }

    private void note(String sentence) {
        findings.add(Finding.note(name, sentence));
    }

    private void warn(String sentence) {
        findings.add(Finding.warning(name, sentence));
    }

    /** The edges as they lie upright, the origin where pieces of the kind have it. */
    private List<NamedEdge> edges(PieceKind kind, Path stitching, List<Path> marked) {
        if (proposal.isEmpty() || kind == PieceKind.OTHER) {
            return plain(stitching, marked);
        }
        Proposal p = proposal.get();
        Upright rough = Upright.of(p, inside);
        var correct = p.turn().inverse().then(rough.motion());
        List<NamedEdge> turned = p.edges().stream()
                .map(e -> new NamedEdge(e.name(), e.role(), e.path().moved(correct), e.confidence()))
                .toList();
        Point origin = Levels.origin(kind, turned);
        upright = rough.withOrigin(origin);
        var shift = trueseam.geometry.Motion.slide(Point.ORIGIN.minus(origin));
        if (p.mirrored()) {
            note("It was drawn as the other hand of the pair and is laid on its other face.");
        }
        for (NamedEdge edge : turned) {
            if (edge.confidence() < 0.6) {
                warn(String.format(
                        Locale.ROOT,
                        "The edge taken for the %s is unusual (%.0f in 100 sure); look whether it is.",
                        edge.name(),
                        100 * edge.confidence()));
            }
        }
        return turned.stream()
                .map(e -> new NamedEdge(e.name(), e.role(), e.path().moved(shift), e.confidence()))
                .toList();
    }

    /** A piece that is not known is kept with the edges between its corners and the ends of what is marked. */
    private List<NamedEdge> plain(Path stitching, List<Path> marked) {
        Outline outline = new Outline(stitching, inside, List.of());
        Path line = outline.line();
        Bounds bounds = line.bounds();
        upright = new Upright(
                false, trueseam.geometry.Motion.slide(Point.ORIGIN.minus(new Point(bounds.minX(), bounds.minY()))));
        TreeSet<Double> ends = new TreeSet<>(outline.corners());
        for (Path mark : marked) {
            for (Point end : List.of(mark.start(), mark.end())) {
                double at = line.nearest(end).alongMm();
                if (ends.stream()
                        .noneMatch(e -> Math.abs(e - at) < 2 || Math.abs(Math.abs(e - at) - line.length()) < 2)) {
                    ends.add(at);
                }
            }
        }
        if (ends.size() < 2) {
            ends.clear();
            ends.addAll(List.of(0.0, line.length() / 2));
        }
        Path lying = upright.apply(line);
        List<Double> at = new ArrayList<>(ends);
        List<NamedEdge> edges = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            Path part = i + 1 < at.size()
                    ? lying.part(at.get(i), at.get(i + 1))
                    : at.get(0) <= 1e-9
                            ? lying.part(at.get(i), lying.length())
                            : lying.part(at.get(i), lying.length()).then(lying.part(0, at.get(0)));
            edges.add(new NamedEdge("edge " + (i + 1), EdgeRole.OTHER, part, 1));
        }
        return edges;
    }

    /** Where a second line was drawn, what lies between the two; else what was said. */
    private double allowance(NamedEdge edge) {
        if (raw.inner().isEmpty()) {
            return choices.cutAllowanceMm().orElse(choices.allowanceMm());
        }
        Path outer = upright.apply(raw.outer().path());
        double sum = 0;
        int n = 7;
        for (int i = 1; i <= n; i++) {
            Point p = edge.path().pointAt(edge.path().length() * i / (n + 1));
            sum += outer.nearest(p).point().distanceTo(p);
        }
        return Math.round(10 * sum / n) / 10.0;
    }

    private List<Dart.EdgeDart> darts(List<Edge> edges) {
        List<Dart.EdgeDart> darts = new ArrayList<>();
        for (Legs legs : Legs.of(inside.stream().map(upright::apply).toList())) {
            for (Edge edge : edges) {
                PathPlace a = edge.path().nearest(legs.from());
                PathPlace b = edge.path().nearest(legs.to());
                boolean on = a.point().isNear(legs.from(), ON_MM + reach(edge))
                        && b.point().isNear(legs.to(), ON_MM + reach(edge));
                double from = Math.min(a.alongMm(), b.alongMm());
                double to = Math.max(a.alongMm(), b.alongMm());
                boolean inward = edge.path().nearest(legs.apex()).point().distanceTo(legs.apex()) > 25;
                if (on && to - from > 3 && to - from < edge.length() && inward && free(darts, edge, from, to)) {
                    String dart = edge.role().word() + " dart"
                            + (numbered(darts, edge) == 0 ? "" : " " + (numbered(darts, edge) + 1));
                    darts.add(new Dart.EdgeDart(dart, edge.name(), from, to, legs.apex()));
                    legs.lines().forEach(i -> used.add(inside.get(i)));
                    break;
                }
            }
        }
        return darts;
    }

    /** Legs are often drawn on to the cutting line. */
    private double reach(Edge edge) {
        return raw.inner().isPresent() ? edge.allowanceMm() + ON_MM : 0;
    }

    private static boolean free(List<Dart.EdgeDart> darts, Edge edge, double from, double to) {
        return darts.stream()
                .filter(d -> d.edge().equals(edge.name()))
                .noneMatch(d -> from < d.toMm() && d.fromMm() < to);
    }

    private static long numbered(List<Dart.EdgeDart> darts, Edge edge) {
        return darts.stream().filter(d -> d.edge().equals(edge.name())).count();
    }

    private record Tick(Edge edge, double alongMm) {}

    private List<Notch> notches(List<Edge> edges) {
        List<Tick> ticks = new ArrayList<>();
        for (Path line : inside) {
            if (used.contains(line) || line.length() > LONGEST_NOTCH_MM || line.isClosed()) {
                continue;
            }
            Path lying = upright.apply(line);
            Edge on = null;
            PathPlace at = null;
            double nearest = Double.POSITIVE_INFINITY;
            for (Edge edge : edges) {
                for (Point end : List.of(lying.start(), lying.end(), lying.pointAt(lying.length() / 2))) {
                    PathPlace place = edge.path().nearest(end);
                    double apart = place.point().distanceTo(end);
                    if (apart < nearest) {
                        nearest = apart;
                        on = edge;
                        at = place;
                    }
                }
            }
            if (on != null && nearest <= ON_MM + reach(on) && at.alongMm() > 1 && at.alongMm() < on.length() - 1) {
                ticks.add(new Tick(on, at.alongMm()));
                used.add(line);
            }
        }
        ticks.sort(Comparator.comparing((Tick t) -> t.edge().name()).thenComparingDouble(Tick::alongMm));
        List<Notch> notches = new ArrayList<>();
        int i = 0;
        while (i < ticks.size()) {
            int j = i + 1;
            while (j < ticks.size()
                    && j - i < 3
                    && ticks.get(j).edge().equals(ticks.get(i).edge())
                    && ticks.get(j).alongMm() - ticks.get(i).alongMm() <= ONE_NOTCH_MM) {
                j++;
            }
            double middle = (ticks.get(i).alongMm() + ticks.get(j - 1).alongMm()) / 2;
            notches.add(new Notch(ticks.get(i).edge().name(), middle, kind(j - i)));
            i = j;
        }
        return notches;
    }

    private static Notch.Kind kind(int cuts) {
        return switch (cuts) {
            case 1 -> Notch.Kind.SINGLE;
            case 2 -> Notch.Kind.DOUBLE;
            default -> Notch.Kind.TRIPLE;
        };
    }

    private Optional<String> fold(List<Edge> edges) {
        boolean said = raw.captions().stream()
                .anyMatch(c -> c.text().toLowerCase(Locale.ROOT).contains("fold"));
        Optional<Edge> centre = edges.stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .filter(e -> e.length()
                        < 1.001 * e.path().start().distanceTo(e.path().end()))
                .findFirst();
        if (centre.isPresent() && said) {
            return centre.map(Edge::name);
        }
        if (centre.isPresent()) {
            note("Nothing says whether the " + centre.get().name()
                    + " lies on the fold; it is taken for a seam. Write \"fold\" in the piece, or data-line=\"fold\" at that"
                    + " edge of the result.");
        }
        return Optional.empty();
    }

    private int cut(Optional<String> fold) {
        for (var caption : raw.captions()) {
            var said = java.util.regex.Pattern.compile("(?i)\\bcut\\s*(\\d)\\b").matcher(caption.text());
            if (said.find()) {
                return Math.max(1, Integer.parseInt(said.group(1)));
            }
        }
        return fold.isPresent() ? 1 : 2;
    }

    private Grain grain(List<Edge> edges) {
        Optional<Path> line =
                upright.grain(inside.stream().filter(l -> !used.contains(l)).toList());
        if (line.isPresent()) {
            inside.stream().filter(l -> upright.apply(l).equals(line.get())).forEach(used::add);
            Point a = line.get().start();
            Point b = line.get().end();
            return a.y() < b.y() ? new Grain(a, b) : new Grain(b, a);
        }
        if (proposal.isPresent()) {
            note("No grainline was found; the piece is taken to hang upright as it lies.");
        }
        Bounds bounds = edges.get(0).path().bounds();
        for (Edge edge : edges) {
            bounds = bounds.with(edge.path().bounds());
        }
        Point middle = bounds.centre();
        double half = Math.max(10, bounds.height() / 4);
        return new Grain(new Point(middle.x(), middle.y() - half), new Point(middle.x(), middle.y() + half));
    }

    private List<Landmark> landmarks(PieceKind kind, Piece piece) {
        if (!kind.isUpper() || !kind.isFront()) {
            return List.of();
        }
        return piece.darts().stream()
                .filter(d -> d instanceof Dart.EdgeDart)
                .map(d -> (Dart.EdgeDart) d)
                .filter(d -> piece.edge(d.edge()).role() == EdgeRole.SIDE
                        || piece.edge(d.edge()).role() == EdgeRole.SHOULDER)
                .findFirst()
                .map(d -> {
                    note("The bust point is taken 1 in beyond the tip of the " + d.name()
                            + " (common practice: darts end 1/2 to 1 in short of it).");
                    Point mouth = piece.edge(d.edge()).path().pointAt((d.fromMm() + d.toMm()) / 2);
                    return new Landmark(
                            Landmark.BUST_POINT,
                            d.apex().plus(d.apex().minus(mouth).unit().times(25.4)));
                })
                .map(List::of)
                .orElse(List.of());
    }

    private List<Marking> rest() {
        List<Marking> rest = new ArrayList<>();
        for (Path line : inside) {
            if (!used.contains(line)) {
                rest.add(new Marking("line " + (rest.size() + 1), upright.apply(line)));
            }
        }
        return rest;
    }
}
