package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.PieceKind;

/** Length above the bust: front and back are parted across chest and back, and the armhole grows with them. */
final class ChestLength {

    private static final Set<PieceKind> UPPER =
            Set.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);

    static final Entry ENTRY = Entry.named(
                    "length above the bust", Family.BODICE, Stage.LENGTH, UPPER.toArray(PieceKind[]::new))
            .calledForBy(Measure.SCYE_DEPTH)
            .folds(
                    "the armhole cuts in below while the shoulder sits well",
                    "folds across chest and back above the bust")
            .amount("lengthens between neck and underarm", "shortens between neck and underarm")
            .moves("all below a line across chest and back")
            .sharing("the full amount on front and back")
            .pin("line half way between underarm and shoulder")
            .stays(Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK), Stay.all(EdgeRole.SIDE))
            .alsoStays("darts, bust girth, the length of the sleeve")
            .lengthens(EdgeRole.ARMHOLE)
            .trued("the armholes are drawn smooth over the line; the cap gets deeper with them and keeps its ease")
            .source("[DM1911]; the cap: common practice")
            .amounts(9.525, 25.4)
            .doneBy((pattern, mm) ->
                    new LengthAtLine("Length above the bust", LevelName.ACROSS, UPPER, mm).work(pattern));

    private ChestLength() {}
}
