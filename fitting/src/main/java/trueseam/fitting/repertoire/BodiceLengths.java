package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.AlterationException;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Lengths below the bust: of a bodice or dress to the waist, the place of a dress's waist between its shoulder and its hem, and its hem. */
final class BodiceLengths {

    private static final Set<PieceKind> DRESS = EnumSet.of(PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);

    /** What a dress keeps below its hip line, mm: a finger's breadth. */
    private static final double LEAST_BELOW_HIP_MM = 15;

    static final Entry BELOW_BUST = Entry.named("length below the bust", Family.BODICE, Stage.LENGTH, UpperKinds.ALL)
            .solvedFor(Measure.BACK_WAIST_LENGTH)
            .folds(
                    "folds across the waist that reach the side and the front: too long",
                    "the waist sits above the body's")
            .amount("lengthens between bust and waist", "shortens between bust and waist")
            .moves("all below a line above the waist")
            .sharing("the full amount on front and back")
            .pin("line 2 1/2 in above the waist")
            .stays(Stay.all(EdgeRole.ARMHOLE), Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK))
            .alsoStays("the armhole, the bust dart, the sleeve")
            .trued("the side seams are drawn smooth over the line and stay of one length")
            .source("[DM1911]")
            .amounts(12.7, 50.8)
            .doneBy((pattern, mm) -> new LengthAtLine(
                            "Length below the bust", LevelName.BODICE_LENGTH, UpperKinds.ALL, mm)
                    .work(pattern));

    static final Entry WAIST_LINE = Entry.named(
                    "waist line of a dress", Family.BODICE, Stage.LENGTH, DRESS.toArray(PieceKind[]::new))
            .folds("the narrowest place of a dress lies above or below the waist and the hem is right")
            .amount("lowers the waist of the dress", "raises the waist of the dress")
            .moves("waist and hip, between a line above the waist and a line below the hip")
            .sharing("the full amount on front and back; what is added above is taken below")
            .pin("the line above the waist and the line below the hip")
            .stays(Stay.all(EdgeRole.ARMHOLE), Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.HEM))
            .alsoStays("the length of the dress, its hem")
            .trued("the side seams are drawn smooth over both lines and stay of one length")
            .source("common practice; [ND1921]")
            .amounts(9.525, 19.05)
            .doneBy(BodiceLengths::waistLine);

    static final Entry DRESS_LENGTH = Entry.named(
                    "dress length", Family.BODICE, Stage.LENGTH, DRESS.toArray(PieceKind[]::new))
            .solvedFor(Measure.DRESS_LENGTH)
            .folds("the hem of the dress hangs too high or too low all round, and the waist is right")
            .amount("lengthens the dress below the hip", "shortens the dress below the hip")
            .moves("all below the line below the hip, or the hem")
            .sharing("the full amount on front and back; of 4 or 5 in half at the line and half at the hem")
            .pin("line below the hip; or the hem")
            .stays(Stay.all(EdgeRole.ARMHOLE), Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK))
            .alsoStays("bust, waist and hip; the flare where it is lengthened at the line")
            .trued("the sides are joined over the line; the hem at the side")
            .source("[ND1921]; common practice")
            .amounts(25.4, 127)
            .variant("line", "the hem keeps its sweep [ND1921]", dressLine())
            .variant("hem", "where there is no line, or the hem may grow [ND1921]", dressHem())
            .variant(
                    "half and half",
                    "for 4 or 5 in: half at the line and half at the hem [ND1921]",
                    Maker.inTurn(dressLine().timesAmount(0.5), dressHem().timesAmount(0.5)))
            .written();

    private BodiceLengths() {}

    private static Maker dressLine() {
        return (pattern, mm) -> new LengthAtLine("Dress length", LevelName.SKIRT_LENGTH, DRESS, mm).work(pattern);
    }

    private static Maker dressHem() {
        return Maker.each(DRESS, (list, piece, mm) -> {
            double hem = new Corners(piece)
                    .at(EdgeRole.HEM, EdgeRole.SIDE, "side hem")
                    .on(piece)
                    .y();
            double most = piece.level(LevelName.HIP).orElse(Double.POSITIVE_INFINITY) - hem - LEAST_BELOW_HIP_MM;
            if (-mm > most) {
                throw new AlterationException(
                        piece.name(),
                        "hem",
                        mm,
                        "the hem would rise to the hip, where the side is shaped; take less, and shorten at the waist too.");
            }
            SkirtLength.lowerHem(list, piece, mm);
        });
    }

    /** What is added at one line is taken at the other, on the pieces as the first change left them. */
    private static List<PieceWork> waistLine(Pattern pattern, double mm) {
        List<PieceWork> above = new LengthAtLine("Waist line", LevelName.BODICE_LENGTH, DRESS, mm).work(pattern);
        List<Piece> lengthened = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Piece now = piece;
            for (PieceWork work : above) {
                if (work.piece().equals(piece.name())) {
                    now = Tissue.work(piece, work.steps()).piece();
                }
            }
            lengthened.add(now);
        }
        List<PieceWork> both = new ArrayList<>(above);
        both.addAll(new LengthAtLine("Waist line", LevelName.SKIRT_LENGTH, DRESS, -mm)
                .work(pattern.withPieces(lengthened)));
        return both;
    }
}
