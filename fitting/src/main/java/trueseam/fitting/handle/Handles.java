package trueseam.fitting.handle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.fitting.alteration.CrotchLength;
import trueseam.fitting.alteration.PanelGirth;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.TwoPieceSleeveGirth;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.compare.Need;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Finds the handles of a fit: where the level of a measure meets the side edge, and the corners and points that a length or a width
 * ends at.
 *
 * <p>Shares are those of the trade (common practice): a girth at the side seams over all their cut edges, a sleeve's over its two, a
 * width of a half piece twice, a length in full; how a crotch seam lengthens is tried. A crotch point goes out no farther than the
 * alteration lets it: the rest is taken at the waist, and the handle stays behind the pointer. A measure has handles where the catalogue alters it and the chart has a line for it;
 * schematic pieces, which only show the steps of a paper pattern, have none.
 */
public final class Handles {

    private static final Vec DOWN = new Vec(0, -1);

    private static final double CROTCH_TRIAL_MM = 5;

    /** The girth of one leg: inseam and outseam of front and back. */
    private static final double LEG_EDGES = 4;

    private final Pattern altered;
    private final double bodyEdges;
    private final double sleeveEdges;
    private final List<Handle> found = new ArrayList<>();

    private Handles(FitResult fit) {
        this.altered = fit.worked().altered();
        this.bodyEdges = PanelGirth.isPanelled(altered)
                ? PanelGirth.cutEdges(altered, fit.choices().panels())
                : SideGirth.cutEdges(altered);
        this.sleeveEdges = Repertoire.inParts(altered).contains(PieceKind.UNDER_SLEEVE)
                ? TwoPieceSleeveGirth.cutEdges(fit.choices().sleeveSeams())
                : 2;
    }

    /**
     * The handles of a fit.
     *
     * @param fit the fit
     * @return on the altered pieces, in the order of the pieces and of the chart
     */
    public static List<Handle> of(FitResult fit) {
        if (fit.schematic()) {
            return List.of();
        }
        Handles handles = new Handles(fit);
        for (Piece piece : handles.altered.pieces()) {
            for (Need need : fit.needs()) {
                boolean altered = Coverage.isAltered(fit.kind(), Repertoire.inParts(handles.altered), need.measure());
                if (altered && need.flatMm().isPresent()) {
                    handles.on(piece, need.measure());
                }
            }
        }
        return List.copyOf(handles.found);
    }

    private void on(Piece piece, Measure measure) {
        PieceKind kind = piece.kind();
        switch (measure) {
            case BUST_GIRTH -> side(kind.isUpper(), piece, measure, piece.level(LevelName.BUST), "bust level");
            case WAIST_GIRTH -> side(hasSide(piece), piece, measure, sideWaist(piece), "waist");
            case HIP_GIRTH -> side(hasSide(piece), piece, measure, piece.level(LevelName.HIP), "hip level");
            case THIGH_GIRTH -> side(kind.isTrouser(), piece, measure, piece.level(LevelName.CROTCH), "crotch level");
            case KNEE_GIRTH -> side(kind.isTrouser(), piece, measure, piece.level(LevelName.KNEE), "knee level");
            case UPPER_ARM_GIRTH -> sleeveEnds(piece, measure, EdgeRole.CAP, "underarm point");
            case WRIST_GIRTH -> sleeveEnds(piece, measure, EdgeRole.WRIST, "wrist");
            case ARM_LENGTH -> middle(kind.isSleeve(), piece, measure, EdgeRole.WRIST, "wrist");
            case BACK_WAIST_LENGTH -> centreWaist(kind.isUpper() && kind.isBack(), piece, measure);
            case SKIRT_LENGTH -> middle(kind.isSkirt(), piece, measure, EdgeRole.HEM, "hem");
            case DRESS_LENGTH -> middle(kind.isDress(), piece, measure, EdgeRole.HEM, "hem");
            case TROUSER_LENGTH -> middle(kind.isTrouser(), piece, measure, EdgeRole.HEM, "hem");
            case INSIDE_LEG_LENGTH -> hemOfInseam(piece, measure);
            case BODY_RISE -> crotchLine(kind.isTrouser(), piece, measure);
            case FRONT_CROTCH_LENGTH -> crotchPoint(kind == PieceKind.TROUSER_FRONT, piece, measure);
            case BACK_CROTCH_LENGTH -> crotchPoint(kind == PieceKind.TROUSER_BACK, piece, measure);
            case BUST_POINT_HEIGHT -> bustPoint(piece, measure, DOWN, 1);
            case BUST_POINT_WIDTH -> bustPoint(piece, measure, outwards(piece), piece.timesAround());
            case SHOULDER_LENGTH -> shoulderPoint(piece, measure);
            case ACROSS_FRONT_WIDTH -> armhole(kind.isUpper() && kind.isFront(), piece, measure);
            case ACROSS_BACK_WIDTH -> armhole(kind.isUpper() && kind.isBack(), piece, measure);
            default -> {
                // Lengths and girths that no single place of a piece shows are set in the chart.
            }
        }
    }

    private static boolean hasSide(Piece piece) {
        return piece.kind().isFront() || piece.kind().isBack();
    }

    private void add(Piece piece, Measure measure, String word, Point at, Vec out, double perMm) {
        String id = (piece.name() + " " + measure.name() + " " + word)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        found.add(new Handle(id, piece.name(), measure, word, at, out, perMm));
    }

    /** Away from the centre of a half piece; of a whole piece each side away from the other. */
    private static Vec outwards(Piece piece) {
        Optional<Edge> centre = piece.firstOf(EdgeRole.CENTRE);
        double middle = piece.outline().bounds().centre().x();
        return centre.isPresent()
                        && middle < centre.get().path().bounds().centre().x()
                ? new Vec(-1, 0)
                : new Vec(1, 0);
    }

    private static Vec awayFromMiddle(Piece piece, Point at) {
        return new Vec(at.x() < piece.outline().bounds().centre().x() ? -1 : 1, 0);
    }

    private void side(boolean on, Piece piece, Measure measure, OptionalDouble level, String word) {
        if (!on || level.isEmpty()) {
            return;
        }
        for (Edge side : piece.edgesOf(EdgeRole.SIDE)) {
            nearestTo(side.path(), level.getAsDouble())
                    .ifPresent(at -> add(
                            piece,
                            measure,
                            side.name() + " at the " + word,
                            at,
                            awayFromMiddle(piece, at),
                            isOfALeg(measure) ? LEG_EDGES : bodyEdges));
        }
    }

    private static boolean isOfALeg(Measure measure) {
        return measure == Measure.THIGH_GIRTH || measure == Measure.KNEE_GIRTH;
    }

    private static Optional<Point> nearestTo(Path side, double y) {
        Optional<Point> at = side.atLevel(y).map(PathPlace::point);
        double lower = Math.min(side.start().y(), side.end().y());
        // Truing may leave a corner a hair's breadth from its level.
        return at.isPresent() || Math.abs(y - lower) > 5
                ? at
                : Optional.of(lower == side.start().y() ? side.start() : side.end());
    }

    private static OptionalDouble sideWaist(Piece piece) {
        if (piece.firstOf(EdgeRole.WAIST).isEmpty()) {
            return piece.level(LevelName.WAIST);
        }
        Path waist = piece.firstOf(EdgeRole.WAIST).orElseThrow().path();
        for (Edge side : piece.edgesOf(EdgeRole.SIDE)) {
            for (Point corner : List.of(side.path().start(), side.path().end())) {
                if (corner.isNear(waist.start(), Path.CHAIN_MM) || corner.isNear(waist.end(), Path.CHAIN_MM)) {
                    return OptionalDouble.of(corner.y());
                }
            }
        }
        return OptionalDouble.empty();
    }

    /** The two lower ends of a cap, or the two ends of a wrist: the corners at the seam under the arm. */
    private void sleeveEnds(Piece piece, Measure measure, EdgeRole role, String word) {
        if (!piece.kind().isSleeve()) {
            return;
        }
        for (Edge seam : piece.edgesOf(EdgeRole.UNDERARM)) {
            for (Edge edge : piece.edgesOf(role)) {
                Path path = edge.path();
                for (Point corner : List.of(path.start(), path.end())) {
                    if (corner.isNear(seam.path().start(), Path.CHAIN_MM)
                            || corner.isNear(seam.path().end(), Path.CHAIN_MM)) {
                        add(
                                piece,
                                measure,
                                seam.name() + " at the " + word,
                                corner,
                                awayFromMiddle(piece, corner),
                                sleeveEdges);
                    }
                }
            }
        }
    }

    private void middle(boolean on, Piece piece, Measure measure, EdgeRole role, String word) {
        if (on) {
            piece.firstOf(role).ifPresent(edge -> {
                Path path = edge.path();
                add(piece, measure, "middle of the " + word, path.pointAt(path.length() / 2), DOWN, 1);
            });
        }
    }

    private void hemOfInseam(Piece piece, Measure measure) {
        corner(piece, EdgeRole.INSEAM, EdgeRole.HEM)
                .ifPresent(at -> add(piece, measure, "inseam at the hem", at, DOWN, 1));
    }

    private void centreWaist(boolean on, Piece piece, Measure measure) {
        Optional<Edge> centre = piece.firstOf(EdgeRole.CENTRE);
        OptionalDouble waist = piece.level(LevelName.WAIST);
        if (on && centre.isPresent() && waist.isPresent()) {
            nearestTo(centre.get().path(), waist.getAsDouble())
                    .ifPresent(at -> add(piece, measure, "centre at the waist", at, DOWN, 1));
        }
    }

    /** In the middle of the crotch level, for its ends have other handles. */
    private void crotchLine(boolean on, Piece piece, Measure measure) {
        OptionalDouble level = piece.level(LevelName.CROTCH);
        if (on && level.isPresent()) {
            double x = piece.outline().bounds().centre().x();
            add(piece, measure, "middle of the crotch level", new Point(x, level.getAsDouble()), DOWN, 1);
        }
    }

    private void crotchPoint(boolean on, Piece piece, Measure measure) {
        double perMm = on ? crotchLengthPerMm(piece) : 0;
        if (perMm > 0) {
            corner(piece, EdgeRole.CROTCH, EdgeRole.INSEAM)
                    .ifPresent(at -> add(piece, measure, "crotch point", at, awayFromMiddle(piece, at), perMm));
        }
    }

    /**
     * The crotch seam is a curve that is drawn new into the moved point: how much longer it gets is tried, outwards and inwards, for
     * drawing it new alone may take or give a little.
     */
    private double crotchLengthPerMm(Piece piece) {
        return (crotchMm(piece, CROTCH_TRIAL_MM) - crotchMm(piece, -CROTCH_TRIAL_MM)) / (2 * CROTCH_TRIAL_MM);
    }

    private double crotchMm(Piece piece, double outMm) {
        CrotchLength trial = new CrotchLength(outMm, 0, outMm, 0);
        for (PieceWork work : trial.work(altered)) {
            if (work.piece().equals(piece.name())) {
                return crotchMm(Tissue.work(piece, work.steps()).piece());
            }
        }
        return crotchMm(piece);
    }

    private static double crotchMm(Piece piece) {
        return piece.edgesOf(EdgeRole.CROTCH).stream()
                .mapToDouble(edge -> piece.sewnLength(edge.name()))
                .sum();
    }

    private void bustPoint(Piece piece, Measure measure, Vec out, double perMm) {
        piece.landmark(Landmark.BUST_POINT)
                .ifPresent(at -> add(
                        piece,
                        measure,
                        measure == Measure.BUST_POINT_HEIGHT ? "bust point, down" : "bust point, out",
                        at,
                        out,
                        perMm));
    }

    private void shoulderPoint(Piece piece, Measure measure) {
        if (!piece.kind().isUpper()) {
            return;
        }
        corner(piece, EdgeRole.SHOULDER, EdgeRole.ARMHOLE).ifPresent(at -> {
            Path shoulder = piece.firstOf(EdgeRole.SHOULDER).orElseThrow().path();
            Vec out = at.isNear(shoulder.end(), Path.CHAIN_MM)
                    ? shoulder.endTangent()
                    : shoulder.startTangent().reversed();
            add(piece, measure, "shoulder point", at, out, 1);
        });
    }

    private void armhole(boolean on, Piece piece, Measure measure) {
        OptionalDouble level = piece.level(LevelName.ACROSS);
        if (!on || level.isEmpty()) {
            return;
        }
        for (Edge edge : piece.edgesOf(EdgeRole.ARMHOLE)) {
            edge.path()
                    .atLevel(level.getAsDouble())
                    .ifPresent(place -> add(
                            piece,
                            measure,
                            edge.name() + " half way down",
                            place.point(),
                            awayFromMiddle(piece, place.point()),
                            piece.timesAround()));
        }
    }

    private static Optional<Point> corner(Piece piece, EdgeRole one, EdgeRole other) {
        for (Edge a : piece.edgesOf(one)) {
            for (Edge b : piece.edgesOf(other)) {
                if (a.path().end().isNear(b.path().start(), Path.CHAIN_MM)) {
                    return Optional.of(a.path().end());
                }
                if (b.path().end().isNear(a.path().start(), Path.CHAIN_MM)) {
                    return Optional.of(a.path().start());
                }
            }
        }
        return Optional.empty();
    }
}
