package trueseam.drafting;

import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.geometry.join.Joining;

/**
 * The pieces of a dress or top without waist seam, from a solved draft. Below the waist front and back have the same side
 * seam; above it the front's is as long as the back's once its bust dart is sewn.
 */
final class DressPieces {

    private static final Vec UP = new Vec(0, 1);
    private static final double LEAST_BELOW_HIP_MM = 10;

    private final UpperDraft draft;
    private final UpperPlan plan;
    private final UpperPieces upper;
    private final Allowances allowances;
    private final double hemY;

    DressPieces(UpperDraft draft, UpperPlan plan, Allowances allowances) {
        this.draft = draft;
        this.plan = plan;
        this.upper = new UpperPieces(draft, plan, allowances);
        this.allowances = allowances;
        this.hemY = plan.backLength() - plan.length();
        if (hemY > -plan.hipDepth() - LEAST_BELOW_HIP_MM) {
            throw new DraftException(
                    plan.shell(),
                    Measure.DRESS_LENGTH,
                    plan.length(),
                    plan.backLength() + plan.hipDepth() + LEAST_BELOW_HIP_MM,
                    "it has to reach below the hip line; choose a longer one");
        }
    }

    Piece front() {
        UpperDraft.OpenSide side = draft.frontSide();
        PieceBuilder piece = new PieceBuilder("dress front", PieceKind.DRESS_FRONT);
        lower(piece, plan.frontHip(), draft.frontWaist(), side.path());
        upper.front(piece, side.after(below(plan.frontHip(), draft.frontWaist()).length()), hemY);
        diamond(piece, draft.frontDartApex(), draft.frontDartMm(), 0.55);
        return piece.notch("side", lineMm(), Notch.Kind.SINGLE)
                .notch("side", below(plan.frontHip(), draft.frontWaist()).length(), Notch.Kind.SINGLE)
                .level(
                        LevelName.BODICE_LENGTH,
                        UpperPieces.lengthLine(draft.frontDartApex().y()))
                .grain(UpperPieces.grain(0.72 * draft.frontWaist().x(), hemY, draft.frontBustLevel()))
                .build();
    }

    Piece back() {
        PieceBuilder piece = new PieceBuilder("dress back", PieceKind.DRESS_BACK);
        lower(piece, plan.backHip(), draft.backWaist(), Path.of(draft.backSide()));
        upper.back(piece, hemY);
        diamond(piece, draft.backDartApex(), draft.backDartMm(), 0.72);
        return piece.notch("side", lineMm(), Notch.Kind.DOUBLE)
                .notch("side", below(plan.backHip(), draft.backWaist()).length(), Notch.Kind.DOUBLE)
                .level(LevelName.BODICE_LENGTH, UpperPieces.lengthLine(draft.backBustLevel()))
                .grain(UpperPieces.grain(0.25 * draft.backWaist().x(), hemY, plan.backLength()))
                .build();
    }

    private double lineMm() {
        return -plan.hipDepth() - hemY;
    }

    private void lower(PieceBuilder piece, double hip, Point waist, Path above) {
        Path below = below(hip, waist);
        piece.edge("hem", EdgeRole.HEM, Path.through(new Point(0, hemY), below.start()), allowances.hemMm())
                .edge("side", EdgeRole.SIDE, below.then(above), allowances.seamMm())
                .level(LevelName.HIP, -plan.hipDepth())
                .level(LevelName.SKIRT_LENGTH, SkirtDraft.lengthLine(-plan.hipDepth(), hemY));
    }

    /** The side seam from hem to waist: straight to the hip, then a curve that is upright at hip and waist. */
    private Path below(double hip, Point waist) {
        Point level = new Point(hip, -plan.hipDepth());
        Cubic curve = Joining.smooth(level, UP, waist, UP);
        return Path.of(new Line(new Point(hip, hemY), level), curve);
    }

    private void diamond(PieceBuilder piece, Point top, double intakeMm, double depthShare) {
        if (intakeMm > 0) {
            piece.dart(new Dart.DiamondDart(
                    UpperDraft.WAIST_DART,
                    top,
                    new Point(top.x(), -depthShare * plan.hipDepth()),
                    new Point(top.x() - intakeMm / 2, 0),
                    new Point(top.x() + intakeMm / 2, 0)));
        }
    }
}
