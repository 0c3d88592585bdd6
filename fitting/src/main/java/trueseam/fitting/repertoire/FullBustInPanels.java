package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.PanelBust;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** Full or small bust of a front in panels: the two seams over the bust point take all of it. */
final class FullBustInPanels {

    static final String NAME = "full bust in panels";

    static final Entry ENTRY = Entry.named(
                    NAME, Family.BODICE, Stage.BUST, PieceKind.BODICE_CENTRE_FRONT, PieceKind.BODICE_SIDE_FRONT)
            .calledForBy(Measure.BUST_GIRTH)
            .folds(
                    "the panel seams pull open over the bust and the back sits well",
                    "the panels stand hollow over the bust")
            .amount("widens the front panels at the bust level", "narrows the front panels at the bust level")
            .moves("the edges of the front panel seams between their top and the waist")
            .sharing("N/4 at each of the four edges of the two front panel seams")
            .pin("top of the panel seam, then the bust level on it")
            .stays(
                    Stay.all(EdgeRole.SIDE),
                    Stay.all(EdgeRole.ARMHOLE),
                    Stay.all(EdgeRole.SHOULDER),
                    Stay.all(EdgeRole.NECK),
                    Stay.back(EdgeRole.PANEL))
            .alsoStays(
                    "the waist girth, the bust point; a front that also has to be longer is lengthened at the bodice line")
            .trued("the seam is drawn smooth at the bust level, and both its edges walk")
            .source("common practice; trade facts 4.1: N/(2k) of k seams")
            .amounts(19.05, 50.8)
            .doneBy((pattern, mm) -> new PanelBust(mm).work(pattern));

    private FullBustInPanels() {}
}
