package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
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
import trueseam.intake.bring.BroughtPiece.BroughtEdge;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.Stroke;
import trueseam.intake.naming.Naming;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.naming.Proposal.NamedEdge;
import trueseam.intake.outline.RawPiece;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.PieceCorrection;

/** Makes one named piece of one piece of a drawing. One piece, one thread. */
final class PieceMaking {

    private static final double ON_MM = 1.5;

    /** What lies straight across farther off is another part of the outer line. */
    private static final double WIDEST_MM = 150;

    /** An odd number of places of an edge, at which its allowance is measured. */
    private static final int ALLOWANCE_PLACES = 7;

    private static final java.util.regex.Pattern CUT = java.util.regex.Pattern.compile("(?i)\\bcut\\s*(\\d)\\b");

    /** How sure it is that a straight centre lies on the fold or is a seam, and that pieces are cut so often (our own scale). */
    private static final double TOLD = 0.97;

    private static final double WRITTEN = 0.95;
    private static final double NO_STRAIGHT_CENTRE = 0.9;
    private static final double ON_FOLD_CUT_ONCE = 0.8;
    private static final double EVEN = 0.5;

    private final Naming naming;
    private final RawPiece raw;
    private final Optional<ApparelPiece> told;
    private final Named named;
    private final Stitching sewn;
    private final PieceCorrection said;
    private final Frame frame;
    private final List<Finding> findings;
    private String name = "";
    private Upright upright = Upright.AS_DRAWN;

    PieceMaking(
            Naming naming,
            RawPiece raw,
            Optional<ApparelPiece> told,
            Named named,
            Stitching sewn,
            PieceCorrection said,
            List<Finding> findings) {
        this.naming = naming;
        this.raw = raw;
        this.told = told;
        this.named = named;
        this.sewn = sewn;
        this.said = said;
        this.frame = Frame.of(raw.outer().path());
        this.findings = findings;
    }

    /**
     * Makes the piece.
     *
     * @param number its place in the drawing, from 1
     * @param pieceName its name
     * @param outline its stitching line as drawn
     * @param marked stretches of its line that the drawing marks
     */
    BroughtPiece make(int number, String pieceName, Outline outline, List<Path> marked) {
        name = pieceName;
        PieceKind kind = named.kind().value();
        PieceBuilder builder = new PieceBuilder(pieceName, kind);
        NamedChain chain = edges(kind, outline, marked);
        Sure<String> fold = fold(chain.edges());
        List<Edge> lying = new ArrayList<>();
        for (NamedEdge edge : chain.edges()) {
            boolean isFold = fold.value().equals(edge.name());
            lying.add(new Edge(edge.name(), edge.role(), edge.path(), isFold ? 0 : allowance(edge)));
        }
        builder.edges(lying);
        InnerLines lines = new InnerLines(raw.inside(), upright, told.isPresent());
        SaidMarks marks = new SaidMarks(said.marks(), upright, frame);
        DartMaking.of(lines, lying, this::reach, marks).forEach(builder::dart);
        NotchMaking notches = new NotchMaking(lying);
        told.ifPresentOrElse(
                piece -> ToldMarks.notches(piece, upright, notches, builder, pieceName, findings),
                () -> notches.drawn(lines, this::reach, marks));
        builder.notches(notches.notches());
        builder.grain(told.isPresent() ? toldGrain() : grain(lines, lying));
        if (!fold.value().isEmpty()) {
            builder.onFold(fold.value());
        }
        Sure<Integer> cut = cut(!fold.value().isEmpty());
        builder.cut(cut.value());
        Levels.of(kind, lying, builder.build().darts()).forEach(l -> builder.level(l.name(), l.y()));
        landmarks(kind, builder.build()).forEach(l -> builder.landmark(l.name(), l.at()));
        told.ifPresent(piece -> ToldMarks.drillHoles(piece, upright, builder));
        lines.rest().forEach(builder::marking);
        marks.lost()
                .forEach(m -> misfit(place(m.at()) + " is said to be " + (m.is() ? "a " : "no ")
                        + m.what().name().toLowerCase(Locale.ROOT) + ", and nothing like one is drawn there"));
        return new BroughtPiece(
                number,
                frame,
                raw.outer().path(),
                Optional.of(builder.build()),
                named.kind(),
                named.others(),
                named.ask(),
                sewn.taken(),
                raw.inner().isPresent(),
                sewn.allowanceMm(),
                chain.edges().stream().map(e -> brought(e, chain)).toList(),
                fold,
                cut,
                marks.found(),
                upright);
    }

    private BroughtEdge brought(NamedEdge edge, NamedChain chain) {
        boolean isSaid = chain.said().contains(edge.name());
        return new BroughtEdge(
                isSaid ? Sure.said(edge.name()) : Sure.proposed(edge.name(), edge.confidence()),
                edge.role(),
                frame.told(upright.undone(edge.path().start())),
                frame.told(upright.undone(edge.path().end())),
                edge.path().length(),
                frame.told(upright.undone(edge.path())));
    }

    private static String place(Point told) {
        return String.format(Locale.ROOT, "the place %.1f right, %.1f up", told.x(), told.y());
    }

    private void misfit(String what) {
        warn("Something said about it does not fit the drawing any more and is not used: " + what + ".");
    }

    private void misfit(EdgeSaid drawn) {
        misfit("no edge \"" + drawn.name() + "\" runs from " + place(frame.told(drawn.from())) + " to "
                + place(frame.told(drawn.to())));
    }

    /** What is said of its edges, in the drawing. */
    private List<EdgeSaid> drawn() {
        return NamedChain.moved(said.edges(), frame::drawn);
    }

    private void note(String sentence) {
        findings.add(Finding.note(name, sentence));
    }

    private void warn(String sentence) {
        findings.add(Finding.warning(name, sentence));
    }

    /** The edges as they lie upright, the origin where pieces of the kind have it. */
    private NamedChain edges(PieceKind kind, Outline outline, List<Path> marked) {
        if (named.proposal().isEmpty() || kind == PieceKind.OTHER) {
            upright =
                    told.map(piece -> Upright.hanging(ToldPieces.grain(piece))).orElse(Upright.AS_DRAWN);
            PlainEdges plain = new PlainEdges(outline, marked);
            upright = upright.withOrigin(plain.lowerLeft(upright));
            return NamedChain.of(
                    plain.lying(upright),
                    NamedChain.moved(drawn(), upright::apply),
                    sewn.saidWithinMm(),
                    e -> misfit(NamedChain.moved(List.of(e), upright::undone).get(0)));
        }
        Renamed renamed =
                Renamed.of(naming, outline, named.proposal().get(), drawn(), sewn.saidWithinMm(), this::misfit);
        Proposal p = renamed.proposal();
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
                        "The edge taken for the %s may be another one (%.0f in 100 sure); look whether it is.",
                        edge.name(),
                        100 * edge.confidence()));
            }
        }
        return new NamedChain(moved(turned, Motion.slide(Point.ORIGIN.minus(origin))), renamed.said());
    }

    private static List<NamedEdge> moved(List<NamedEdge> edges, Motion motion) {
        return edges.stream()
                .map(e -> new NamedEdge(e.name(), e.role(), e.path().moved(motion), e.confidence()))
                .toList();
    }

    /** Where a second line was drawn, what lies between the two; else what was said. */
    private double allowance(NamedEdge edge) {
        if (sewn.taken().value() != LineTaken.INNER) {
            return sewn.allowanceMm();
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
                .filter(mm -> mm <= WIDEST_MM)
                .min()
                .orElseGet(() -> outer.nearest(p).point().distanceTo(p));
    }

    /** Legs and notches are often drawn on to the cutting line. */
    private double reach(Edge edge) {
        return sewn.taken().value() == LineTaken.STITCHING ? ON_MM : edge.allowanceMm() + ON_MM;
    }

    private Sure<String> fold(List<NamedEdge> edges) {
        if (said.fold().isPresent()) {
            return saidFold(edges, said.fold().get());
        }
        if (told.flatMap(ApparelPiece::mirrorLine).isPresent()) {
            return toldFold(edges).map(f -> Sure.proposed(f, TOLD)).orElseGet(() -> Sure.proposed("", EVEN));
        }
        boolean written = raw.captions().stream()
                .anyMatch(c -> c.text().toLowerCase(Locale.ROOT).contains("fold"));
        Optional<NamedEdge> centre = edges.stream()
                .filter(e -> e.role() == EdgeRole.CENTRE)
                .filter(PieceMaking::isStraight)
                .findFirst();
        if (centre.isPresent() && written) {
            return Sure.proposed(centre.get().name(), WRITTEN);
        }
        if (centre.isPresent()) {
            note("Nothing says whether the " + centre.get().name()
                    + " lies on the fold; it is taken for a seam. Write \"fold\" in the piece, or data-line=\"fold\" at that"
                    + " edge of the result.");
            return Sure.proposed("", EVEN);
        }
        return Sure.proposed("", NO_STRAIGHT_CENTRE);
    }

    private static boolean isStraight(NamedEdge edge) {
        Path path = edge.path();
        return path.length() < 1.001 * path.start().distanceTo(path.end());
    }

    private Sure<String> saidFold(List<NamedEdge> edges, String edge) {
        if (edge.isEmpty()) {
            return Sure.said("");
        }
        Optional<NamedEdge> fold =
                edges.stream().filter(e -> e.name().equals(edge)).findFirst();
        if (fold.filter(PieceMaking::isStraight).isPresent()) {
            return Sure.said(edge);
        }
        misfit("the edge \"" + edge + "\" is said to lie on the fold, and "
                + (fold.isPresent()
                        ? "it is not straight"
                        : "its edges are " + edges.stream().map(NamedEdge::name).collect(Collectors.joining(", "))));
        return Sure.proposed("", EVEN);
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

    /** Pieces that lie on the fold are usually cut once, others in pairs (common practice). */
    private Sure<Integer> cut(boolean onFold) {
        if (said.cut().isPresent()) {
            return Sure.said(said.cut().getAsInt());
        }
        if (told.isPresent()) {
            return Sure.proposed(told.get().cutCount(), TOLD);
        }
        for (Caption caption : raw.captions()) {
            var written = CUT.matcher(caption.text());
            if (written.find()) {
                return Sure.proposed(Math.max(1, Integer.parseInt(written.group(1))), WRITTEN);
            }
        }
        return onFold ? Sure.proposed(1, ON_FOLD_CUT_ONCE) : Sure.proposed(2, EVEN);
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
        if (named.proposal().isPresent()) {
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
        if (kind == PieceKind.RAGLAN_SLEEVE) {
            return piece.darts().stream()
                    .filter(d ->
                            d instanceof Dart.EdgeDart e && piece.edge(e.edge()).role() == EdgeRole.NECK)
                    .findFirst()
                    .map(d -> {
                        note("The shoulder point is taken at the tip of the dart in the neck (common practice).");
                        return new Landmark(Landmark.SHOULDER_POINT, ((Dart.EdgeDart) d).apex());
                    })
                    .map(List::of)
                    .orElse(List.of());
        }
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
