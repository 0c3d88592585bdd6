package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.SideGirth;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Bust, waist and hip of a bodice or dress at its side seams, front and back alike: each level pinned one level above. */
final class SideSeams {

    static final Entry BUST = Entry.named("bust girth", Family.BODICE, Stage.WIDTH, UpperKinds.ALL)
            .solvedFor(Measure.BUST_GIRTH)
            .folds("strain lines all round at the bust, the back as well as the front")
            .amount("makes the bust larger all round", "makes the bust smaller all round")
            .moves("armhole and side seam, front and back")
            .sharing(
                    "N/4 on each of four side edges; N/2k over the edges of k panels; a text that divides by the seams [CWU17] gives the"
                            + " amount of a seam, which its two edges halve")
            .pin(
                    "shoulder point, of a raglan the neck end of its seam; then underarm point, back to the waist; a kimono slides out")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.RAGLAN),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.OVERARM),
                    Stay.all(EdgeRole.NECK),
                    Stay.all(EdgeRole.CAP))
            .alsoStays("centre front and back, the intake of the darts")
            .trued("the underarm is blended and brought level; the side seam is walked")
            .source("common practice; mechanics [MULTI]")
            .amounts(25.4, 50.8)
            .doneBy((pattern, mm) -> new SideGirth(mm, 0, 0, HemChoice.CARRIED).work(pattern));

    static final Entry WAIST = Entry.named("waist girth", Family.BODICE, Stage.WIDTH, UpperKinds.ALL)
            .solvedFor(Measure.WAIST_GIRTH)
            .folds("folds or strain lines across at the waist, reaching the sides")
            .amount("makes the waist larger", "makes the waist smaller")
            .moves("the side seams from the underarm down")
            .sharing("N/4 on each of four side edges")
            .pin("underarm point")
            .stays(
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.RAGLAN),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.OVERARM),
                    Stay.all(EdgeRole.NECK))
            .alsoStays("the bust level, the darts")
            .trued("the waist line is blended at the side; a skirt or band takes the same change")
            .source("common practice")
            .amounts(25.4, 50.8)
            .doneBy((pattern, mm) -> new SideGirth(0, mm, 0, HemChoice.CARRIED).work(pattern));

    static final Entry HIP = Entry.named(
                    "hip girth of a dress", Family.BODICE, Stage.WIDTH, PieceKind.DRESS_FRONT, PieceKind.DRESS_BACK)
            .solvedFor(Measure.HIP_GIRTH)
            .folds("lines across at the hip; the dress rides up")
            .amount("makes the hip larger", "makes the hip smaller")
            .moves("the side seams from the waist down")
            .sharing("N/4 on each of four side edges")
            .pin("side waist; then the hip")
            .stays(Stay.all(EdgeRole.ARMHOLE), Stay.all(EdgeRole.SHOULDER), Stay.all(EdgeRole.NECK))
            .alsoStays("bust and waist")
            .trued("the hem at the side")
            .source("common practice")
            .amounts(25.4, 50.8)
            .variant(
                    "hem carried",
                    "the line below the hip keeps its direction, and the hem grows by as much",
                    (pattern, mm) -> new SideGirth(0, 0, mm, HemChoice.CARRIED).work(pattern))
            .variant(
                    "hem let back",
                    "the hem keeps its sweep, where cloth or style wants it",
                    (pattern, mm) -> new SideGirth(0, 0, mm, HemChoice.LET_BACK).work(pattern))
            .written();

    private SideSeams() {}
}
