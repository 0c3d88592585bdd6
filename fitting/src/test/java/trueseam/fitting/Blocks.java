package trueseam.fitting;

import java.util.List;
import java.util.Map;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Cubic;
import trueseam.geometry.Line;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * Pieces drawn by hand for the tests of this room, with the offsets of the derived table of pivots (trade facts, section 4.2):
 * shoulder point to front underarm (30, -190), to back underarm (45, -200), underarm to waist (-25, -200).
 */
public final class Blocks {

    private Blocks() {}

    /** A bodice whose front and back have the offsets of the table; the bust is measured at the underarm level. */
    public static Pattern bodice() {
        Piece front = upper("bodice front", PieceKind.BODICE_FRONT, new Point(220, 390), new Point(250, 200));
        Piece back = upper("bodice back", PieceKind.BODICE_BACK, new Point(205, 400), new Point(250, 200));
        return new Pattern(
                "test bodice",
                "14",
                "misses",
                "drawn by hand for a test",
                List.of(front, back),
                List.of(
                        Seam.of("side seam", ref("bodice front", "side"), ref("bodice back", "side"), 0),
                        Seam.of("shoulder seam", ref("bodice front", "shoulder"), ref("bodice back", "shoulder"), 0)),
                Map.of(Measure.BUST_GIRTH, 76.2));
    }

    static EdgeRef ref(String piece, String edge) {
        return new EdgeRef(piece, edge);
    }

    private static Piece upper(String name, PieceKind kind, Point shoulderPoint, Point underarm) {
        Point waistSide = underarm.plus(new Vec(-25, -200));
        Point neckPoint = shoulderPoint.plus(new Vec(-118, 42));
        Point neckCentre = new Point(0, neckPoint.y() - 60);
        Vec side = underarm.minus(waistSide).unit();
        Vec shoulder = neckPoint.minus(shoulderPoint).unit();
        Path waist = Path.of(
                new Line(new Point(0, 0), new Point(80, 0)),
                new Line(new Point(80, 0), new Point(95, -2)),
                new Line(new Point(95, -2), new Point(110, 0)),
                Cubic.of(new Point(110, 0), new Vec(40, 0), side.left().times(40), waistSide));
        Path armhole = Path.of(
                Cubic.of(underarm, side.left().times(70), shoulder.right().times(90), shoulderPoint));
        Path neck = Path.of(Cubic.of(neckPoint, shoulder.left().times(30), new Vec(40, 0), neckCentre));
        String centre = kind.isFront() ? "centre front" : "centre back";
        return new PieceBuilder(name, kind)
                .onFold(centre)
                .edge("waist", EdgeRole.WAIST, waist, 15)
                .edge("side", EdgeRole.SIDE, Path.through(waistSide, underarm), 15)
                .edge("armhole", EdgeRole.ARMHOLE, armhole, 15)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(shoulderPoint, neckPoint), 15)
                .edge("neck", EdgeRole.NECK, neck, 15)
                .edge(centre, EdgeRole.CENTRE, Path.through(neckCentre, new Point(0, 0)), 0)
                .dart(new Dart.EdgeDart("waist dart", "waist", 80, 80 + 2 * Math.hypot(15, 2), new Point(95, 150)))
                .notch("armhole", 60, Notch.Kind.SINGLE)
                .level(LevelName.BUST, 200)
                .level(LevelName.BODICE_LENGTH, 63.5)
                .level(LevelName.WAIST, 0)
                .grain(new Grain(new Point(40, 40), new Point(40, 240)))
                .build();
    }

    /** A one-piece sleeve whose underarm points lie at (160, -130) and (-160, -130) from the crown. */
    public static Piece sleeve() {
        Point crown = new Point(0, 0);
        Point right = new Point(160, -130);
        Point left = new Point(-160, -130);
        Point wristRight = new Point(110, -560);
        Point wristLeft = new Point(-110, -560);
        return new PieceBuilder("sleeve", PieceKind.SLEEVE)
                .cut(2)
                .edge("wrist", EdgeRole.WRIST, Path.through(wristLeft, wristRight), 25)
                .edge("underarm front", EdgeRole.UNDERARM, Path.through(wristRight, right), 15)
                .edge("cap front", EdgeRole.CAP, Path.of(Cubic.of(right, new Vec(-70, 0), new Vec(80, 0), crown)), 15)
                .edge("cap back", EdgeRole.CAP, Path.of(Cubic.of(crown, new Vec(-80, 0), new Vec(70, 0), left)), 15)
                .edge("underarm back", EdgeRole.UNDERARM, Path.through(left, wristLeft), 15)
                .notch("cap front", 90, Notch.Kind.SINGLE)
                .notch("cap back", 120, Notch.Kind.DOUBLE)
                .level(LevelName.BICEP, -130)
                .level(LevelName.ABOVE_ELBOW, -220)
                .level(LevelName.ELBOW, -330)
                .level(LevelName.BELOW_ELBOW, -440)
                .grain(new Grain(new Point(0, -500), new Point(0, -100)))
                .build();
    }

    /** A pattern of the sleeve alone, with its underarm seam. */
    public static Pattern sleevePattern() {
        return new Pattern(
                "test sleeve",
                "",
                "",
                "drawn by hand for a test",
                List.of(sleeve()),
                List.of(Seam.of("underarm seam", ref("sleeve", "underarm front"), ref("sleeve", "underarm back"), 0)),
                Map.of());
    }
}
