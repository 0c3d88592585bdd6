package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.garment.finding.Finding;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Bounds;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.naming.Proposal.NamedEdge;
import trueseam.intake.outline.RawPiece;

/** Makes one named piece of one piece of a drawing. One piece, one thread. */
final class PieceMaking {

    private static final double ON_MM = 1.5;

    /** An odd number of places of an edge, at which its allowance is measured. */
    private static final int ALLOWANCE_PLACES = 7;

    private static final java.util.regex.Pattern CUT = java.util.regex.Pattern.compile("(?i)\\bcut\\s*(\\d)\\b");

    private final RawPiece raw;
    private final Optional<ApparelPiece> told;
    private final Optional<Proposal> proposal;
    private final BringChoices choices;
    private final List<Finding> findings;
    private String name = "";
    private Upright upright = Upright.AS_DRAWN;

    PieceMaking(
            RawPiece raw,
            Optional<ApparelPiece> told,
            Optional<Proposal> proposal,
            BringChoices choices,
            List<Finding> findings) {
        this.raw = raw;
        this.told = told;
        this.proposal = proposal;
        this.choices = choices;
        this.findings = findings;
    }

    /**
     * Makes the piece.
     *
     * @param pieceName its name
     * @param kind what it is
     * @param outline its stitching line as drawn
     * @param marked stretches of its line that the drawing marks
     */
    Piece make(String pieceName, PieceKind kind, Outline outline, List<Path> marked) {
        name = pieceName;
        PieceBuilder builder = new PieceBuilder(pieceName, kind);
        List<NamedEdge> edges = edges(kind, outline, marked);
        Optional<String> fold = told.flatMap(ApparelPiece::mirrorLine).isPresent() ? toldFold(edges) : fold(edges);
        List<Edge> lying = new ArrayList<>();
        for (NamedEdge edge : edges) {
            boolean sewn = fold.filter(edge.name()::equals).isEmpty();
            lying.add(new Edge(edge.name(), edge.role(), edge.path(), sewn ? allowance(edge) : 0));
        }
        builder.edges(lying);
        InnerLines lines = new InnerLines(raw.inside(), upright, told.isPresent());
        DartMaking.of(lines, lying, this::reach).forEach(builder::dart);
        NotchMaking notches = new NotchMaking(lying);
        told.ifPresentOrElse(
                piece -> ToldMarks.notches(piece, upright, notches, builder, pieceName, findings),
                () -> notches.drawn(lines, this::reach));
        builder.notches(notches.notches());
        builder.grain(told.isPresent() ? toldGrain() : grain(lines, lying));
        fold.ifPresent(builder::onFold);
        builder.cut(told.map(ApparelPiece::cutCount).orElseGet(() -> cut(fold)));
        Levels.of(kind, lying, builder.build().darts()).forEach(l -> builder.level(l.name(), l.y()));
        landmarks(kind, builder.build()).forEach(l -> builder.landmark(l.name(), l.at()));
        told.ifPresent(piece -> ToldMarks.drillHoles(piece, upright, builder));
        lines.rest().forEach(builder::marking);
        return builder.build();
    }

    private void note(String sentence) {
        findings.add(Finding.note(name, sentence));
    }

    private void warn(String sentence) {
        findings.add(Finding.warning(name, sentence));
    }

    /** The edges as they lie upright, the origin where pieces of the kind have it. */
    private List<NamedEdge> edges(PieceKind kind, Outline outline, List<Path> marked) {
        if (proposal.isEmpty() || kind == PieceKind.OTHER) {
            upright =
                    told.map(piece -> Upright.hanging(ToldPieces.grain(piece))).orElse(Upright.AS_DRAWN);
            PlainEdges plain = new PlainEdges(outline, marked);
            upright = upright.withOrigin(plain.lowerLeft(upright));
            return plain.lying(upright);
        }
        Proposal p = proposal.get();
        Upright rough = Upright.of(
                p,
                told.map(piece -> List.of(ToldPieces.grainLine(piece)))
                        .orElseGet(() -> raw.inside().stream().map(Stroke::path).toList()));
        Motion correct = p.turn().inverse().then(rough.motion());
        List<NamedEdge> turned = moved(p.edges(), correct);
        Point origin = Levels.origin(kind, turned);
        upright = rough.withOrigin(origin);
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
        return moved(turned, Motion.slide(Point.ORIGIN.minus(origin)));
    }

    private static List<NamedEdge> moved(List<NamedEdge> edges, Motion motion) {
        return edges.stream()
                .map(e -> new NamedEdge(e.name(), e.role(), e.path().moved(motion), e.confidence()))
                .toList();
    }

    /** Where a second line was drawn, what lies between the two; else what was said. */
    private double allowance(NamedEdge edge) {
        if (raw.inner().isEmpty()) {
            return choices.cutAllowanceMm().orElse(choices.allowanceMm());
        }
        Path outer = upright.apply(raw.outer().path());
        double[] across = new double[ALLOWANCE_PLACES];
        for (int i = 0; i < across.length; i++) {
            across[i] = across(edge.path(), edge.path().length() * (i + 1) / (across.length + 1), outer);
        }
        Arrays.sort(across); // a corner near one of the places is not the allowance: the middle value counts
        return Math.round(10 * across[across.length / 2]) / 10.0;
    }

    /** From a place of an edge straight outwards to the outer line; to the nearest place of that where it is not met. */
    private static double across(Path edge, double alongMm, Path outer) {
        Point p = edge.pointAt(alongMm);
        Vec outwards = edge.tangentAt(alongMm).right();
        return outer.crossings(p, outwards).stream()
                .mapToDouble(place -> place.point().minus(p).dot(outwards))
                .filter(mm -> mm >= -ON_MM)
                .map(Math::abs)
                .min()
                .orElseGet(() -> outer.nearest(p).point().distanceTo(p));
    }

    /** Legs and notches are often drawn on to the cutting line. */
    private double reach(Edge edge) {
        return raw.inner().isPresent() ? edge.allowanceMm() + ON_MM : ON_MM;
    }

    private Optional<String> fold(List<NamedEdge> edges) {
        boolean said = raw.captions().stream()
                .anyMatch(c -> c.text().toLowerCase(Locale.ROOT).contains("fold"));
        Optional<NamedEdge> centre = edges.stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .filter(e -> e.path().length()
                        < 1.001 * e.path().start().distanceTo(e.path().end()))
                .findFirst();
        if (centre.isPresent() && said) {
            return centre.map(NamedEdge::name);
        }
        if (centre.isPresent()) {
            note("Nothing says whether the " + centre.get().name()
                    + " lies on the fold; it is taken for a seam. Write \"fold\" in the piece, or data-line=\"fold\" at that"
                    + " edge of the result.");
        }
        return Optional.empty();
    }

    /** The edge that lies on the mirror line of the file. */
    private Optional<String> toldFold(List<NamedEdge> edges) {
        Optional<Path> mirror = told.flatMap(ApparelPiece::mirrorLine).map(upright::apply);
        if (mirror.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> fold = ToldMarks.onLine(edges, mirror.get());
        if (fold.isEmpty()) {
            warn(
                    "No edge lies on the mirror line of the file; the piece is taken as it is drawn. Say data-line=\"fold\" at"
                            + " that edge of the result.");
        }
        return fold;
    }

    private int cut(Optional<String> fold) {
        for (Caption caption : raw.captions()) {
            var said = CUT.matcher(caption.text());
            if (said.find()) {
                return Math.max(1, Integer.parseInt(said.group(1)));
            }
        }
        return fold.isPresent() ? 1 : 2;
    }

    private Grain toldGrain() {
        Path line = upright.apply(ToldPieces.grainLine(told.orElseThrow()));
        return upwards(line.start(), line.end());
    }

    private static Grain upwards(Point a, Point b) {
        return a.y() <= b.y() ? new Grain(a, b) : new Grain(b, a);
    }

    private Grain grain(InnerLines lines, List<Edge> edges) {
        Optional<Integer> line = upright.grain(lines);
        if (line.isPresent()) {
            lines.use(line.get());
            Path path = lines.all().get(line.get());
            return upwards(path.start(), path.end());
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
}
