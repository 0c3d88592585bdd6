package trueseam.drafting;

import java.util.ArrayList;
import java.util.List;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/** The pieces of a bodice, from a solved draft. */
final class UpperPieces {

    /** Common practice: a bodice is lengthened or shortened 2 1/2 in above the waist. */
    static final double LENGTH_LINE_MM = 63.5;

    /** Notches of the armhole lie a little below where it is narrowest. */
    private static final double NOTCH_SHARE = 0.9;

    private final UpperDraft draft;
    private final UpperPlan plan;
    private final Allowances allowances;

    UpperPieces(UpperDraft draft, UpperPlan plan, Allowances allowances) {
        this.draft = draft;
        this.plan = plan;
        this.allowances = allowances;
    }

    static double notchMm(Path armhole) {
        return NOTCH_SHARE * armhole.segments().get(0).length();
    }

    Piece bodiceFront() {
        UpperDraft.OpenSide side = draft.frontSide();
        PieceBuilder piece = frontToUnderarm("bodice front", PieceKind.BODICE_FRONT, side);
        front(piece, side, 0);
        draft.frontWaistLine().darts().forEach(piece::dart);
        return piece.level(
                        LevelName.BODICE_LENGTH,
                        lengthLine(draft.frontDartApex().y()))
                .grain(grain(
                        0.6 * draft.frontWaist().x(), 0, draft.frontUnderarm().y()))
                .build();
    }

    Piece bodiceBack() {
        PieceBuilder piece = backToUnderarm("bodice back", PieceKind.BODICE_BACK);
        back(piece, 0);
        draft.backWaistLine().darts().forEach(piece::dart);
        return piece.level(LevelName.BODICE_LENGTH, lengthLine(draft.backBustLevel()))
                .grain(grain(0.25 * draft.backWaist().x(), 0, plan.backLength()))
                .build();
    }

    /** Begins a front that ends at the waist, with its waist and side. */
    PieceBuilder frontToUnderarm(String name, PieceKind kind, UpperDraft.OpenSide side) {
        return new PieceBuilder(name, kind)
                .edge("waist", EdgeRole.WAIST, draft.frontWaistLine().path(), allowances.seamMm())
                .edge("side", EdgeRole.SIDE, side.path(), allowances.seamMm());
    }

    /** The same for the back. */
    PieceBuilder backToUnderarm(String name, PieceKind kind) {
        return new PieceBuilder(name, kind)
                .edge("waist", EdgeRole.WAIST, draft.backWaistLine().path(), allowances.seamMm())
                .edge("side", EdgeRole.SIDE, Path.of(draft.backSide()), allowances.seamMm());
    }

    /**
     * What lies inside a front without an armhole, once it has all its edges.
     *
     * @param grainTopY how far up the grain line may go
     */
    Piece frontWithin(PieceBuilder piece, UpperDraft.OpenSide side, double grainTopY) {
        side.darts().forEach(piece::dart);
        draft.frontWaistLine().darts().forEach(piece::dart);
        if (plan.bustDart()) {
            piece.landmark(Landmark.BUST_POINT, draft.bustPoint);
        }
        return piece.level(LevelName.BUST, draft.frontBustLevel())
                .level(LevelName.BODICE_LENGTH, lengthLine(draft.frontDartApex().y()))
                .level(LevelName.WAIST, 0)
                .grain(grain(0.6 * draft.frontWaist().x(), 0, grainTopY))
                .build();
    }

    /** The same for the back. */
    Piece backWithin(PieceBuilder piece) {
        draft.backWaistLine().darts().forEach(piece::dart);
        return piece.level(LevelName.BUST, draft.backBustLevel())
                .level(LevelName.BODICE_LENGTH, lengthLine(draft.backBustLevel()))
                .level(LevelName.WAIST, 0)
                .landmark(Landmark.BLADE_POINT, draft.bladePoint)
                .grain(grain(0.25 * draft.backWaist().x(), 0, plan.backLength()))
                .build();
    }

    /** Edges above the side seam, and what rides on the upper part. */
    void front(PieceBuilder piece, UpperDraft.OpenSide side, double bottomY) {
        Path armhole = draft.frontArmhole();
        upper(piece, armhole, draft.frontShoulder, draft.frontNeck, "centre front", bottomY);
        side.darts().forEach(piece::dart);
        piece.notch("armhole", notchMm(armhole), Notch.Kind.SINGLE)
                .level(LevelName.ACROSS, Armhole.acrossLevel(draft.frontUnderarm(), armhole.end()))
                .level(LevelName.BUST, draft.frontBustLevel())
                .level(LevelName.WAIST, 0);
        if (plan.bustDart()) {
            piece.landmark(Landmark.BUST_POINT, draft.bustPoint);
        }
    }

    /** The same for the back. */
    void back(PieceBuilder piece, double bottomY) {
        Path armhole = draft.backArmhole();
        upper(piece, armhole, draft.backShoulder, draft.backNeck, "centre back", bottomY);
        piece.notch("armhole", notchMm(armhole), Notch.Kind.DOUBLE)
                .level(LevelName.ACROSS, Armhole.acrossLevel(draft.backUnderarm(), armhole.end()))
                .level(LevelName.BUST, draft.backBustLevel())
                .level(LevelName.WAIST, 0)
                .landmark(Landmark.BLADE_POINT, draft.bladePoint);
    }

    private void upper(
            PieceBuilder piece, Path armhole, ShoulderLine shoulder, Path neck, String centre, double bottomY) {
        double seam = allowances.seamMm();
        piece.edge("armhole", EdgeRole.ARMHOLE, armhole, seam)
                .edge("shoulder", EdgeRole.SHOULDER, shoulder.path(), seam)
                .edge("neck", EdgeRole.NECK, neck, seam)
                .edge(centre, EdgeRole.CENTRE, Path.through(neck.end(), new Point(0, bottomY)), 0)
                .onFold(centre);
        shoulder.darts().forEach(piece::dart);
    }

    /** 2 1/2 in above the waist, or half way to the lowest thing above it where that is near. */
    static double lengthLine(double lowestAboveY) {
        return Math.min(LENGTH_LINE_MM, lowestAboveY / 2);
    }

    static Grain grain(double x, double lowY, double highY) {
        double height = highY - lowY;
        return new Grain(new Point(x, lowY + 0.2 * height), new Point(x, lowY + 0.8 * height));
    }

    /** Seams of front, back and sleeve. */
    static List<Seam> seams(String name, DraftEase ease) {
        String front = name + " front";
        String back = name + " back";
        List<Seam> seams = new ArrayList<>();
        seams.add(Seam.of(
                "shoulder", new EdgeRef(front, "shoulder"), new EdgeRef(back, "shoulder"), ease.backShoulderMm()));
        seams.add(Seam.of("side", new EdgeRef(front, "side"), new EdgeRef(back, "side"), 0));
        seams.add(Seam.of(
                "underarm", new EdgeRef("sleeve", "underarm front"), new EdgeRef("sleeve", "underarm back"), 0));
        seams.add(new Seam(
                "armhole",
                List.of(new EdgeRef(back, "armhole"), new EdgeRef(front, "armhole")),
                List.of(new EdgeRef("sleeve", "cap back"), new EdgeRef("sleeve", "cap front")),
                ease.capMm()));
        return seams;
    }
}
