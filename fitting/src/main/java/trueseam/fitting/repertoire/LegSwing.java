package trueseam.fitting.repertoire;

import java.util.List;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** The set of a leg, knock knee and bow leg; and its length. */
final class LegSwing {

    static final Entry KNOCK_KNEE = swing("knock knee")
            .folds("folds break at the outer knee or at the ankle")
            .amount("swings the leg in below the crotch line", "")
            .doneBy(Maker.each(TrouserGirth.TROUSERS, LegSwing::swingIn));

    static final Entry BOW_LEG = swing("bow leg")
            .folds("a fold runs from the inner ankle forward and up")
            .amount("swings the leg out below the crotch line", "")
            .doneBy(Maker.each(TrouserGirth.TROUSERS, (list, piece, mm) -> swingIn(list, piece, -mm)));

    static final Entry LENGTH = Entry.named(
                    "leg length", Family.TROUSERS, Stage.LENGTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
            .solvedFor(Measure.INSIDE_LEG_LENGTH)
            .folds("the hem hangs too high or too low while the knee of the leg is right")
            .amount("lengthens the leg", "shortens the leg")
            .moves("all below the lines")
            .sharing("half above and half below the knee, the full half on front and back")
            .pin("lines above and below the knee")
            .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.CROTCH))
            .alsoStays("the crotch; the width at knee and hem")
            .trued("both seams are joined over the lines")
            .source("common practice; lines [NM209]")
            .amounts(25.4, 76.2)
            .doneBy(Maker.inTurn(
                    line(LevelName.ABOVE_KNEE).timesAmount(0.5),
                    line(LevelName.BELOW_KNEE).timesAmount(0.5)));

    static final Entry ABOVE_KNEE = partLength("leg length above the knee", LevelName.ABOVE_KNEE);
    static final Entry BELOW_KNEE = partLength("leg length below the knee", LevelName.BELOW_KNEE);

    private LegSwing() {}

    private static EntryBuilder swing(String name) {
        return Entry.named(name, Family.TROUSERS, Stage.CROTCH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
                .moves("outseam and inseam below the crotch line, the hem, the grainline")
                .sharing("the same amount at the hem on all four edges of a leg; 1 in goes far")
                .pin("crotch line on the outseam; crotch point on the inseam")
                .stays(
                        Stay.all(EdgeRole.SIDE),
                        Stay.all(EdgeRole.INSEAM),
                        Stay.all(EdgeRole.CROTCH),
                        Stay.all(EdgeRole.WAIST))
                .alsoStays("the lengths of the seams, the width of the leg")
                .trued(
                        "both seams are blended at the crotch line; the hem is drawn new; the grainline goes with the leg")
                .source("HERTZ; common practice")
                .amounts(12.7, 25.4);
    }

    private static Entry partLength(String name, LevelName line) {
        return Entry.named(name, Family.TROUSERS, Stage.LENGTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK)
                .calledForBy(Measure.KNEE_HEIGHT, Measure.INSIDE_LEG_LENGTH)
                .folds("the narrowest or the widest place of the leg does not lie at the knee")
                .amount("lengthens there", "shortens there")
                .moves("all below the line")
                .sharing("the full amount on front and back")
                .pin(line.word() + " line")
                .stays(Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.CROTCH))
                .alsoStays("the width at knee and hem")
                .trued("both seams are joined over the line")
                .source("NM209 (side to knee); common practice")
                .amounts(19.05, 50.8)
                .doneBy(line(line));
    }

    private static Maker line(LevelName line) {
        return (pattern, mm) -> new LengthAtLine("Leg length", line, TrouserGirth.TROUSERS, mm).work(pattern);
    }

    private static void swingIn(StepList list, Piece piece, double mm) {
        double in = 0;
        for (EdgeRole role : new EdgeRole[] {EdgeRole.SIDE, EdgeRole.INSEAM}) {
            SeamLine seam = new SeamLine(piece, role);
            if (role == EdgeRole.INSEAM) {
                list.add(new Step.LayBack());
            } else {
                in = -seam.outward();
            }
            // Inwards is away from the outseam, so out from the inseam.
            double out = role == EdgeRole.INSEAM ? mm : -mm;
            seam.swing(list, LegSeams.crotchLine(seam), LegSeams.named(seam.bottom("hem corner"), role), out);
        }
        Edge hem = piece.only(EdgeRole.HEM);
        list.join(hem.name(), 0, hem.length(), JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN));
        slantGrain(list, piece, in * mm);
    }

    /** The lower end of the grainline goes across with the leg: by its share of the way from the crotch line to the hem. */
    private static void slantGrain(StepList list, Piece piece, double acrossMm) {
        double crotch = piece.level(LevelName.CROTCH).orElseThrow();
        double hem = piece.only(EdgeRole.HEM).path().bounds().minY();
        double low = Math.min(piece.grain().from().y(), piece.grain().to().y());
        double high = Math.max(piece.grain().from().y(), piece.grain().to().y());
        for (LevelName name : List.of(LevelName.CROTCH, LevelName.KNEE)) {
            double level = piece.level(name).orElse(Double.POSITIVE_INFINITY);
            if (low < level && level <= high) {
                list.add(new Step.LayBack());
                list.add(new Step.Slide(acrossMm * (crotch - low) / (crotch - hem), 0));
                list.add(new Step.TransferBelow(level));
                return;
            }
        }
    }
}
