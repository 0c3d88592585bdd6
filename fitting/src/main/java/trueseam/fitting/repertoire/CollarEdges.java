package trueseam.fitting.repertoire;

import java.util.Set;
import trueseam.fitting.follow.Following;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** One edge of a collar longer or shorter than it was; what follows a changed neck is no matter of these. */
final class CollarEdges {

    private static final Set<PieceKind> COLLARS = Set.of(PieceKind.COLLAR);

    static final Entry OUTER = Entry.named("collar outer edge", Family.BODICE, Stage.SHOULDER, PieceKind.COLLAR)
            .folds(
                    "the outer edge of the collar is tight: the collar rides up and shows its seam",
                    "the collar stands off the neck because its outer edge is long")
            .amount(
                    "lets the outer edge out, so that the collar lies lower and flatter",
                    "takes the outer edge in, so that the collar stands higher and closer")
            .moves("the outer edge, cut at three places and spread or lapped")
            .sharing("a sixth of the amount in each of three cuts on the half collar at the fold")
            .pin("hinges on the neck edge, opposite the cuts")
            .stays(Stay.all(EdgeRole.NECK))
            .alsoStays("the centre back, the point; under collar and collar facing take the same change")
            .trued("the neck edge is drawn smooth over the hinges and stays as long as the neck")
            .source("[HERR32] by name; common practice")
            .amounts(9.525, 25.4)
            .doneBy(Maker.each(COLLARS, (list, piece, mm) -> CollarCuts.fromOuterEdge(list, piece)
                    .spread(mm)));

    static final Entry NECK = Entry.named("collar neck edge", Family.BODICE, Stage.SHOULDER, PieceKind.COLLAR)
            .folds(
                    "the collar stands off the neck because its neck edge is long",
                    "the collar strains at the neck seam, or ripples the neck of the garment")
            .amount("lets the neck edge of the collar out", "takes the neck edge of the collar in")
            .moves("the neck edge of the collar; the neck of the garment stays and is eased or stretched to it")
            .sharing(
                    "a sixth of the amount in each of three cuts on the half collar at the fold; or all at the centre back")
            .pin("hinges on the outer edge, opposite the cuts; or a slide along the neck edge")
            .stays(Stay.front(EdgeRole.NECK), Stay.back(EdgeRole.NECK))
            .alsoStays("with the hinges the outer edge; under collar and collar facing take the same change")
            .trued("collar and neck are walked with the difference that was asked for")
            .source("[HERR32] by name; at the centre back [ND1921]")
            .amounts(6.35, 12.7)
            .variant(
                    "hinged at the outer edge",
                    "for a collar that stands off or strains at its seam alone: the outer edge keeps its length (common practice)",
                    Maker.each(COLLARS, (list, piece, mm) -> CollarCuts.fromNeckEdge(list, piece)
                            .spread(mm)),
                    EdgeRole.NECK)
            .variant(
                    "at the centre back",
                    "for a collar that is too long or too short as a whole: neck edge and outer edge alike [ND1921]",
                    (pattern, mm) -> pattern.pieces().stream()
                            .filter(piece -> COLLARS.contains(piece.kind()))
                            .map(piece -> Following.longerBand(
                                    piece, piece.only(EdgeRole.NECK).name(), CollarCuts.share(piece) * mm))
                            .toList(),
                    EdgeRole.NECK)
            .written();

    private CollarEdges() {}
}
