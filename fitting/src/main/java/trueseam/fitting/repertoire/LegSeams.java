package trueseam.fitting.repertoire;

import java.util.function.Function;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.CrotchLength;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Width of a leg: thigh, knee, calf and hem, at the outseam, at the inseam or at both. */
final class LegSeams {

    /** The fullest calf lies about this far from the knee to the hem of a leg of full length (common practice). */
    private static final double CALF_SHARE = 1.0 / 3;

    static final Entry THIGH = entry("thigh")
            .solvedFor(Measure.THIGH_GIRTH)
            .folds("the legs are tight or loose all round below the seat")
            .amount("makes the thigh larger", "makes the thigh smaller")
            .moves("outseam and inseam between hip and knee, and the crotch points")
            .sharing("N/4 on each of four edges of a leg")
            .pin("hip on the outseam, knee on the inseam")
            .stays(Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.WAIST))
            .alsoStays("waist, knee and hem; the crotch seam changes by about N/2 in all")
            .lengthens(EdgeRole.CROTCH)
            .trued("outseam at hip and knee; the crotch curve is drawn into the moved point")
            .source("common practice; shares trade example 28")
            .amounts(25.4, 38.1)
            .doneBy(Maker.inTurn(
                    Maker.each(TrouserGirth.TROUSERS, (list, piece, mm) -> outer(list, piece, mm / 4)),
                    (pattern, mm) -> new CrotchLength(mm / 4, 0, mm / 4, 0).work(pattern)));

    static final Entry OUTER_THIGH = entry("outer thigh")
            .solvedFor(Measure.THIGH_GIRTH)
            .folds("lines drag to the side seam below the hip", "for a thin one: loose folds along the outseam")
            .amount("lets the outseam out at the thigh", "takes the outseam in at the thigh")
            .moves("the outseam between hip and knee")
            .sharing("N/2 on each of the two outseam edges of a leg")
            .pin("hip, then thigh, then knee")
            .stays(Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.CROTCH))
            .alsoStays("waist, knee and hem; of the outseam blending takes a hair, front and back alike")
            .trued("the outseam is blended at hip, thigh and knee")
            .source("common practice")
            .amounts(19.05, 25.4)
            .doneBy(Maker.each(TrouserGirth.TROUSERS, (list, piece, mm) -> outer(list, piece, mm / 2)));

    static final Entry INNER_THIGH = entry("inner thigh")
            .solvedFor(Measure.THIGH_GIRTH)
            .folds(
                    "lines run from the crotch to the thigh; the inseams rub",
                    "for a thin one: folds hang along the inseam")
            .amount("moves the crotch points out", "moves the crotch points in")
            .moves("the inseam above the knee, and the crotch points")
            .sharing("N/2 on each of the two inseam edges of a leg")
            .pin("knee on the inseam")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.WAIST), Stay.all(EdgeRole.HEM))
            .alsoStays("the outseam; the crotch seam changes by about N in all")
            .lengthens(EdgeRole.CROTCH)
            .trued("the crotch curve is drawn into the moved point; the inseam is walked")
            .source("common practice")
            .amounts(19.05, 25.4)
            .doneBy((pattern, mm) -> new CrotchLength(mm / 2, 0, mm / 2, 0).work(pattern));

    static final Entry KNEE = entry("knee")
            .solvedFor(Measure.KNEE_GIRTH)
            .folds("the leg catches at the knee on bending", "the leg stands off at the knee")
            .amount("makes the knee larger", "makes the knee smaller")
            .moves("outseam and inseam from the crotch line to the hem")
            .sharing("N/4 on each of four edges of a leg")
            .pin("crotch line on the outseam, crotch point; then knee")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.CROTCH))
            .alsoStays("thigh and hem; the grain stays in the middle of the leg")
            .trued("both seams are blended at the knee; the hem at its ends")
            .source("common practice")
            .amounts(19.05, 38.1)
            .doneBy(both(LegSeams::crotchLine, seam -> seam.at(LevelName.KNEE, "knee")));

    static final Entry CALF = entry("calf")
            .solvedFor(Measure.CALF_GIRTH)
            .folds("the leg catches on the calf and rides up at the back", "the leg swings loose below the knee")
            .amount("makes the calf larger", "makes the calf smaller")
            .moves("outseam and inseam from the knee to the hem")
            .sharing("N/4 on each of four edges of a leg")
            .pin("knee; then calf, a third of the way from knee to hem")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.CROTCH))
            .alsoStays("knee and hem; the grain stays in the middle of the leg")
            .trued("both seams are blended at knee and calf; the hem at its ends")
            .source("common practice")
            .amounts(19.05, 38.1)
            .doneBy(both(seam -> seam.at(LevelName.KNEE, "knee"), LegSeams::calf));

    static final Entry HEM = entry("trouser hem width")
            .calledForBy(Measure.ANKLE_GIRTH)
            .folds("the hem stands off the shoe or hides it", "the hem is narrower than the style shows")
            .amount("makes the hem wider", "makes the hem narrower")
            .moves("outseam and inseam from the knee to the hem")
            .sharing("N/4 on each of four edges of a leg")
            .pin("knee")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.CROTCH))
            .alsoStays("the knee; the grain stays in the middle of the leg")
            .trued("both seams are blended at the knee; the hem at its ends")
            .source("common practice")
            .amounts(38.1, 76.2)
            .doneBy(both(seam -> seam.at(LevelName.KNEE, "knee"), seam -> seam.bottom("hem corner")));

    static final Entry INSTEP = entry("instep")
            .calledForBy(Measure.ANKLE_GIRTH)
            .folds("the foot will not pass the hem, or only with the shoe off")
            .amount("widens the hem by what it lacks for heel and instep to pass", "")
            .moves("outseam and inseam above the hem")
            .sharing(
                    "N/4 on each of four edges of a leg; the hem should measure heel and instep together and 1/2 in more")
            .pin("knee, or calf")
            .stays(Stay.all(EdgeRole.SIDE), Stay.all(EdgeRole.INSEAM), Stay.all(EdgeRole.CROTCH))
            .alsoStays("the knee; the grain stays in the middle of the leg")
            .trued("both seams are blended at the pin; the hem at its ends")
            .source("NM209 (the hem must pass heel and instep); the 1/2 in and both ways common practice")
            .amounts(25.4, 50.8)
            .variant(
                    "from the knee",
                    "the usual way, so that the leg widens evenly; where the hem must stay narrow alter nothing and leave the"
                            + " outseam open for a placket, at least half as long as what the hem lacks",
                    both(seam -> seam.at(LevelName.KNEE, "knee"), seam -> seam.bottom("hem corner")))
            .variant(
                    "from the calf",
                    "where the leg must stay narrow to the calf",
                    both(LegSeams::calf, seam -> seam.bottom("hem corner")))
            .written();

    private LegSeams() {}

    private static EntryBuilder entry(String name) {
        return Entry.named(name, Family.TROUSERS, Stage.WIDTH, PieceKind.TROUSER_FRONT, PieceKind.TROUSER_BACK);
    }

    private static void outer(StepList list, Piece piece, double outMm) {
        SeamLine side = new SeamLine(piece, EdgeRole.SIDE);
        Place hip = side.at(LevelName.HIP, "hip point");
        Place thigh = side.at(LevelName.CROTCH, "thigh");
        Place knee = side.at(LevelName.KNEE, "knee");
        side.swing(list, hip, thigh, outMm);
        side.swing(list, thigh, knee, 0);
        side.hang(list, knee, EdgeRole.HEM);
    }

    /** The outseam at the crotch line; the inseam at the crotch point. */
    static Place crotchLine(SeamLine seam) {
        return seam.edge.role() == EdgeRole.INSEAM
                ? seam.top("crotch point")
                : seam.at(LevelName.CROTCH, "outseam at the crotch line");
    }

    private static Place calf(SeamLine seam) {
        double knee = seam.at(LevelName.KNEE, "knee").on(seam.piece).y();
        double hem = seam.bottom("").on(seam.piece).y();
        return seam.atHeight(knee + CALF_SHARE * (hem - knee), "calf");
    }

    /** Both seams of a leg out by a quarter, pinned above; below the moved place they run back to the old hem. */
    private static Maker both(Function<SeamLine, Place> pin, Function<SeamLine, Place> moved) {
        return Maker.each(TrouserGirth.TROUSERS, (list, piece, mm) -> {
            for (EdgeRole role : new EdgeRole[] {EdgeRole.SIDE, EdgeRole.INSEAM}) {
                SeamLine seam = new SeamLine(piece, role);
                Place at = named(moved.apply(seam), role);
                Place above = pin.apply(seam);
                Place hem = named(seam.bottom("hem corner"), role);
                if (above.on(piece).y() <= at.on(piece).y()) {
                    throw new AlterationException(
                            piece.name(),
                            at.word(),
                            mm,
                            "it lies above the place it is pinned at; mark the levels anew.");
                }
                if (role == EdgeRole.INSEAM) {
                    list.add(new Step.LayBack());
                }
                seam.swing(list, above, at, mm / 4);
                if (Math.abs(at.alongMm() - hem.alongMm()) > 1) {
                    seam.swing(list, at, hem, 0);
                }
                seam.joinBeside(list, EdgeRole.HEM, false);
            }
        });
    }

    /** Marks on the two seams of a leg have different names. */
    static Place named(Place place, EdgeRole role) {
        return new Place(
                place.edge(),
                place.alongMm(),
                place.word() + (role == EdgeRole.INSEAM ? " on the inseam" : " on the outseam"));
    }
}
