package trueseam.output;

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
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * A plain bodice drawn by hand for tests, with the offsets of the derived table of pivots (trade facts, section 4.2): shoulder
 * point to front underarm (30, -190), to back underarm (45, -200), underarm to side waist (-25, -200).
 */
public final class DrawnByHand {

    private DrawnByHand() {}

    /** Front with a waist dart, side to the right. */
    public static Piece front() {
        return upper("bodice front", PieceKind.BODICE_FRONT, new Point(220, 390), true);
    }

    /** Back, side to the right. */
    public static Piece back() {
        return upper("bodice back", PieceKind.BODICE_BACK, new Point(205, 400), false);
    }

    /** Front and back with side and shoulder seam. */
    public static Pattern bodice() {
        return new Pattern(
                "hand-drawn bodice",
                "14",
                "misses",
                "drawn by hand for a test",
                List.of(front(), back()),
                List.of(seam("side seam", "side"), seam("shoulder seam", "shoulder")),
                Map.of(Measure.BUST_GIRTH, 76.2));
    }

    private static Seam seam(String name, String edge) {
        return Seam.of(name, new EdgeRef("bodice front", edge), new EdgeRef("bodice back", edge), 0);
    }

    private static Piece upper(String name, PieceKind kind, Point shoulderPoint, boolean dart) {
        Point underarm = new Point(250, 200);
        Point waistSide = underarm.plus(new Vec(-25, -200));
        Point neckPoint = shoulderPoint.plus(new Vec(-118, 42));
        Point neckCentre = new Point(0, neckPoint.y() - 60);
        Vec side = underarm.minus(waistSide).unit();
        Vec shoulder = neckPoint.minus(shoulderPoint).unit();
        String centre = kind.isFront() ? "centre front" : "centre back";
        PieceBuilder piece = new PieceBuilder(name, kind)
                .onFold(centre)
                .edge(
                        "waist",
                        EdgeRole.WAIST,
                        Path.of(
                                new trueseam.geometry.Line(new Point(0, 0), new Point(80, 0)),
                                new trueseam.geometry.Line(new Point(80, 0), new Point(95, -2)),
                                new trueseam.geometry.Line(new Point(95, -2), new Point(110, 0)),
                                Cubic.of(
                                        new Point(110, 0),
                                        new Vec(40, 0),
                                        side.left().times(40),
                                        waistSide)),
                        15)
                .edge("side", EdgeRole.SIDE, Path.through(waistSide, underarm), 15)
                .edge(
                        "armhole",
                        EdgeRole.ARMHOLE,
                        Path.of(Cubic.of(
                                underarm,
                                side.left().times(70),
                                shoulder.right().times(90),
                                shoulderPoint)),
                        15)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(shoulderPoint, neckPoint), 15)
                .edge(
                        "neck",
                        EdgeRole.NECK,
                        Path.of(Cubic.of(neckPoint, shoulder.left().times(30), new Vec(40, 0), neckCentre)),
                        15)
                .edge(centre, EdgeRole.CENTRE, Path.through(neckCentre, new Point(0, 0)), 0)
                .notch("armhole", 60, Notch.Kind.SINGLE)
                .level(LevelName.BUST, 200)
                .level(LevelName.BODICE_LENGTH, 63.5)
                .level(LevelName.WAIST, 0)
                .grain(new Grain(new Point(40, 40), new Point(40, 240)));
        if (dart) {
            piece.dart(new Dart.EdgeDart("waist dart", "waist", 80, 80 + 2 * Math.hypot(15, 2), new Point(95, 150)));
        }
        return piece.build();
    }

    /** The front turned over: centre to the right, side to the left. */
    public static Piece mirroredFront() {
        Point underarm = new Point(-250, 200);
        Point waistSide = new Point(-225, 0);
        Point shoulderPoint = new Point(-220, 390);
        Point neckPoint = new Point(-102, 432);
        Point neckCentre = new Point(0, 372);
        return new PieceBuilder("bodice front", PieceKind.BODICE_FRONT)
                .onFold("centre front")
                .edge("centre front", EdgeRole.CENTRE, Path.through(new Point(0, 0), neckCentre), 0)
                .edge("neck", EdgeRole.NECK, Path.through(neckCentre, neckPoint), 15)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(neckPoint, shoulderPoint), 15)
                .edge(
                        "armhole",
                        EdgeRole.ARMHOLE,
                        Path.of(Cubic.of(shoulderPoint, new Vec(30, -90), new Vec(-70, 0), underarm)),
                        15)
                .edge("side", EdgeRole.SIDE, Path.through(underarm, waistSide), 15)
                .edge("waist", EdgeRole.WAIST, Path.through(waistSide, new Point(0, 0)), 15)
                .level(LevelName.BUST, 200)
                .grain(new Grain(new Point(-40, 40), new Point(-40, 240)))
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

    /** The bodice with its sleeve. */
    public static Pattern bodiceWithSleeve() {
        Pattern bodice = bodice();
        List<Seam> seams = new java.util.ArrayList<>(bodice.seams());
        seams.add(Seam.of(
                "underarm seam", new EdgeRef("sleeve", "underarm front"), new EdgeRef("sleeve", "underarm back"), 0));
        seams.add(new Seam(
                "armhole seam",
                List.of(new EdgeRef("bodice front", "armhole"), new EdgeRef("bodice back", "armhole")),
                List.of(new EdgeRef("sleeve", "cap front"), new EdgeRef("sleeve", "cap back")),
                20));
        return new Pattern(
                bodice.name(),
                bodice.size(),
                bodice.sizeTable(),
                bodice.source(),
                List.of(front(), back(), sleeve()),
                seams,
                bodice.easeMm());
    }
}
