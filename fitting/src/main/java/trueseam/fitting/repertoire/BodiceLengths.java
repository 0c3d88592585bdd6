package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Lengths below the bust: of a bodice or dress to the waist, and the place of a dress's waist between its shoulder and its hem. */
final class BodiceLengths {

    private static final Set<PieceKind> UPPER =
            EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.BODICE_BACK, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);
    private static final Set<PieceKind> DRESS = EnumSet.of(PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK);

    static final Entry BELOW_BUST = Entry.named(
                    "length below the bust", Family.BODICE, Stage.LENGTH, UPPER.toArray(PieceKind[]::new))
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
            .doneBy((pattern, mm) ->
                    new LengthAtLine("Length below the bust", LevelName.BODICE_LENGTH, UPPER, mm).work(pattern));

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

    private BodiceLengths() {}

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
