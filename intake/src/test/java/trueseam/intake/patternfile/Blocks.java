package trueseam.intake.patternfile;

import java.util.List;
import java.util.Map;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Marking;
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

/** A small pattern with one of everything, in round numbers; our own invention. */
final class Blocks {

    private Blocks() {}

    static Piece front() {
        return new PieceBuilder("front", PieceKind.DRESS_FRONT)
                .cut(1)
                .onFold("centre front")
                .edge("hem", EdgeRole.HEM, Path.through(new Point(0, 0), new Point(250, 0)), 50)
                .edge("side", EdgeRole.SIDE, Path.through(new Point(250, 0), new Point(230, 400)), 15.875)
                .edge(
                        "armhole",
                        EdgeRole.ARMHOLE,
                        Path.of(
                                new Cubic(
                                        new Point(230, 400),
                                        new Point(190, 400),
                                        new Point(180, 430),
                                        new Point(180, 480)),
                                new Line(new Point(180, 480), new Point(190, 560))),
                        10)
                .edge("shoulder", EdgeRole.SHOULDER, Path.through(new Point(190, 560), new Point(70, 600)), 15)
                .edge(
                        "neck",
                        EdgeRole.NECK,
                        Path.of(new Cubic(
                                new Point(70, 600), new Point(60, 540), new Point(40, 520), new Point(0, 520))),
                        6)
                .edge("centre front", EdgeRole.CENTRE, Path.through(new Point(0, 520), new Point(0, 0)), 0)
                .dart(new Dart.EdgeDart("bust dart", "side", 330, 350.5, new Point(110, 390)))
                .dart(new Dart.DiamondDart(
                        "waist dart", new Point(100, 330), new Point(100, 60), new Point(90, 200), new Point(110, 200)))
                .notch("armhole", 70.25, Notch.Kind.SINGLE)
                .notch("side", 0, Notch.Kind.TRIPLE)
                .landmark(Landmark.BUST_POINT, new Point(92.5, 392.75))
                .level(LevelName.BUST, 390)
                .level(LevelName.WAIST, 200)
                .level(LevelName.HIP, 0)
                .marking(new Marking("pocket & flap", Path.through(new Point(120, 100), new Point(180, 90))))
                .grain(new Grain(new Point(40, 100), new Point(40, 450)))
                .build();
    }

    static Piece back() {
        return new PieceBuilder("back \"left\" <1>", PieceKind.DRESS_BACK)
                .cut(2)
                .edge("hem", EdgeRole.HEM, Path.through(new Point(0, 0), new Point(240, 0)), 50)
                .edge("side", EdgeRole.SIDE, Path.through(new Point(240, 0), new Point(230, 400)), 15.875)
                .edge("top", EdgeRole.OTHER, Path.through(new Point(230, 400), new Point(0, 600)), 0)
                .edge("centre back", EdgeRole.CENTRE, Path.through(new Point(0, 600), new Point(0, 0)), 15)
                .notch("centre back", 300, Notch.Kind.DOUBLE)
                .grain(new Grain(new Point(40, 100), new Point(40, 450)))
                .build();
    }

    static Pattern pattern() {
        EdgeRef frontSide = new EdgeRef("front", "side");
        EdgeRef backSide = new EdgeRef("back \"left\" <1>", "side");
        EdgeRef top = new EdgeRef("back \"left\" <1>", "top");
        return new Pattern(
                "Shift for a summer's day",
                "14",
                "misses",
                "Drawn by hand\nfor a test.",
                List.of(front(), back()),
                List.of(
                        Seam.of("side seam", frontSide, backSide, -20.25),
                        new Seam("chain", List.of(top, backSide), List.of(frontSide), 0.1 + 0.2)),
                Map.of(Measure.BUST_GIRTH, 63.5, Measure.HIP_GIRTH, 1.0 / 3));
    }
}
