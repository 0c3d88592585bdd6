package trueseam.fitting.repertoire;

import trueseam.fitting.alteration.CapEnd;
import trueseam.fitting.alteration.CapHeight;
import trueseam.fitting.alteration.CapLength;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;

/** The cap of a sleeve: its height, its ease, and where its crown meets the shoulder seam. */
final class SleeveCap {

    static final Entry HEIGHT = cap("cap height")
            .folds(
                    "lines from the crown down to the underarm: the cap is too low",
                    "folds across the cap: it is too high")
            .amount("raises the crown", "lowers the crown")
            .moves("the crown; the cap is drawn new to the notches")
            .sharing("the full amount")
            .alsoStays("the girth at the upper arm; the cap below the notches")
            .lengthens(EdgeRole.CAP)
            .trued("the cap is walked in the armhole: its ease has changed")
            .amounts(9.525, 19.05)
            .doneBy((pattern, mm) -> new CapHeight(mm).work(pattern));

    static final Entry EASE = cap("cap ease")
            .folds("the cap ripples along its seam: it is too wide", "the cap cannot be sewn in without stretching it")
            .amount("gives the cap more to ease in", "takes ease out of the cap by a lap across it")
            .moves("the cap between the notches; the crown goes up or down with it")
            .sharing("N/2 on each half of the cap")
            .alsoStays("the girth at the upper arm; the cap below the notches; the armhole")
            .lengthens(EdgeRole.CAP)
            .trued(
                    "the cap is walked in the armhole from notch to notch; how much it should be longer the sources say differently: 3/4 in"
                            + " [web:capnote], 1 in rather than 3/4 in [web:cap35], 1 1/2 in [web:capdraft]")
            .amounts(12.7, 38.1)
            .doneBy((pattern, mm) -> new CapLength(mm / 2, mm / 2, CapEnd.CROWN).work(pattern));

    static final Entry TURN = cap("cap turn")
            .folds("diagonal folds in the sleeve to the back: the arm hangs forward", "the sleeve twists on the arm")
            .amount(
                    "sets the sleeve forward for an arm that hangs forward: the crown goes to the back",
                    "sets the sleeve back for an arm that hangs back: the crown goes to the front")
            .moves("the crown, where the shoulder seam meets the cap")
            .sharing("the front half of the cap takes the full amount from the back half")
            .alsoStays("the whole cap seam, the seams under the arm, the girth at the upper arm")
            .trued("the ease is shared anew: more in front, less at the back")
            .amounts(6.35, 12.7)
            .doneBy((pattern, mm) -> new CapLength(mm, -mm, CapEnd.CROWN).work(pattern));

    private SleeveCap() {}

    private static EntryBuilder cap(String name) {
        return Entry.named(name, Family.SLEEVE, Stage.SLEEVE, PieceKind.SLEEVE)
                .pin("the crown slides; the notches stay")
                .stays(Stay.all(EdgeRole.UNDERARM), Stay.all(EdgeRole.WRIST))
                .source("common practice; [HERR32]");
    }
}
