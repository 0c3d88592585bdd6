package trueseam.intake.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import trueseam.garment.pattern.Grain;
import trueseam.geometry.Path;
import trueseam.geometry.PathPlace;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.intake.apparel.ApparelNotch;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.apparel.GradePoint;
import trueseam.intake.apparel.Opposite;
import trueseam.intake.apparel.OtherLine;
import trueseam.intake.dxf.RuleTable;

/** Grades one piece. One piece, one thread. */
final class GradedPiece {

    /** A rule is written at its point; so near is meant. */
    private static final double AT_MM = 1;

    /** Lines inside are drawn to the edge by hand or by a machine. */
    private static final double ON_EDGE_MM = 1.5;

    private final ApparelPiece piece;
    private final RuleTable table;
    private final String size;
    private final double xAxisRad;
    private final RuledLine boundary;
    private int unmoved;

    GradedPiece(ApparelPiece piece, RuleTable table, String size) {
        this.piece = piece;
        this.table = table;
        this.size = size;
        this.xAxisRad = piece.gradeLine()
                .filter(line -> !line.start().isNear(line.end(), AT_MM))
                .map(line -> line.end().minus(line.start()).angle())
                .orElse(0.0);
        TreeMap<Double, Vec> moves = new TreeMap<>();
        for (GradePoint point : piece.gradePoints()) {
            PathPlace on = piece.boundary().nearest(point.at());
            if (on.point().isNear(point.at(), AT_MM)) {
                moves.putIfAbsent(on.alongMm(), move(point));
            }
        }
        this.boundary = new RuledLine(piece.boundary(), moves);
    }

    /** Whether a point of its boundary has a rule. */
    boolean isRuled() {
        return !boundary.moves().isEmpty();
    }

    /** How many lines and holes inside have no rule, once it is graded. */
    int unmoved() {
        return unmoved;
    }

    private Vec move(GradePoint point) {
        return table.move(point.rule(), size).turned(xAxisRad);
    }

    ApparelPiece graded() {
        Path moved = boundary.moved();
        return new ApparelPiece(
                piece.block(),
                piece.name(),
                size,
                piece.cutCount(),
                piece.material(),
                piece.category(),
                moved,
                piece.corners().stream().map(this::withEdge).toList(),
                piece.cornersMarked(),
                piece.sewing().map(this::sewing),
                piece.sewLines().stream().map(this::inside).toList(),
                piece.notches().stream().map(notch -> notch(notch, moved)).toList(),
                piece.grain().map(grain -> new Grain(inside(grain.from()), inside(grain.to()))),
                piece.mirrorLine().map(this::inside),
                piece.internalLines().stream().map(this::inside).toList(),
                piece.cutOuts().stream().map(this::inside).toList(),
                piece.drillHoles().stream().map(this::hole).toList(),
                piece.otherLines().stream()
                        .map(other -> new OtherLine(other.layer(), inside(other.path())))
                        .toList(),
                piece.gradeLine(),
                List.of(),
                piece.texts());
    }

    private Point withEdge(Point onEdge) {
        return onEdge.plus(boundary.moveAt(piece.boundary().nearest(onEdge).alongMm()));
    }

    /** The stitching line goes with the boundary beside it, corner with corner; points of its own with a rule go by that. */
    private Path sewing(Path line) {
        Opposite opposite = new Opposite(line);
        TreeMap<Double, Vec> moves = new TreeMap<>();
        for (GradePoint point : piece.gradePoints()) {
            PathPlace own = line.nearest(point.at());
            if (own.point().isNear(point.at(), AT_MM)) {
                moves.putIfAbsent(own.alongMm(), move(point));
            }
        }
        if (moves.isEmpty()) {
            boundary.moves().forEach((along, move) -> {
                Point at = piece.boundary().pointAt(along);
                boolean corner = piece.corners().stream().anyMatch(c -> c.isNear(at, AT_MM));
                Point like = corner ? opposite.ofCorner(at) : line.nearest(at).point();
                moves.putIfAbsent(line.nearest(like).alongMm(), move);
            });
        }
        return new RuledLine(line, moves).moved();
    }

    private ApparelNotch notch(ApparelNotch notch, Path moved) {
        Vec move = boundary.moveAt(notch.alongMm());
        double along = moved.nearest(piece.boundary().pointAt(notch.alongMm()).plus(move))
                .alongMm();
        return new ApparelNotch(
                notch.at().plus(move),
                along,
                notch.offMm(),
                notch.kind(),
                notch.depthMm(),
                notch.widthMm(),
                notch.angleRad());
    }

    private Optional<Vec> known(Point p) {
        OptionalInt own = piece.gradePoints().stream()
                .filter(point -> point.at().isNear(p, AT_MM))
                .mapToInt(GradePoint::rule)
                .findFirst();
        if (own.isPresent()) {
            return Optional.of(table.move(own.getAsInt(), size).turned(xAxisRad));
        }
        PathPlace edge = piece.boundary().nearest(p);
        return edge.point().isNear(p, ON_EDGE_MM) ? Optional.of(boundary.moveAt(edge.alongMm())) : Optional.empty();
    }

    private Point inside(Point p) {
        return p.plus(known(p).orElse(Vec.ZERO));
    }

    private Point hole(Point p) {
        unmoved += known(p).isEmpty() ? 1 : 0;
        return inside(p);
    }

    /** A line inside moves by its own rules and with the edge where it meets it; without either it stays as it is. */
    private Path inside(Path line) {
        List<Point> corners = new ArrayList<>();
        line.segments().forEach(stroke -> corners.add(stroke.start()));
        corners.add(line.end());
        TreeMap<Double, Vec> moves = new TreeMap<>();
        double along = 0;
        for (int i = 0; i < corners.size(); i++) {
            boolean end = i == 0 || i + 1 == corners.size();
            if (end || isRuled(corners.get(i))) {
                double at = along;
                known(corners.get(i)).ifPresent(move -> moves.putIfAbsent(at, move));
            }
            along += i < line.segments().size() ? lengthOf(line, i) : 0;
        }
        unmoved += moves.isEmpty() ? 1 : 0;
        return new RuledLine(line, moves).moved();
    }

    private static double lengthOf(Path line, int stroke) {
        Segment s = line.segments().get(stroke);
        return s.length();
    }

    private boolean isRuled(Point p) {
        return piece.gradePoints().stream().anyMatch(point -> point.at().isNear(p, AT_MM));
    }
}
