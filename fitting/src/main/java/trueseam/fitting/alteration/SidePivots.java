package trueseam.fitting.alteration;

import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Until;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;

/**
 * Moves the side edge of a piece out or in at several levels, each pinned one level above.
 *
 * <pre>{@code
 *      o shoulder point: pin 1, pivot until the underarm meets its mark, trace the armhole
 *      |\
 *      | )
 *      |  o--> underarm: pin 2, pivot until the side waist meets its mark, trace the side
 *      |  |
 *      | o---> side waist: pin 3, pivot until the hip meets its mark, trace
 *      |  \
 *      |   o-> hip: pin 4, stand the grain upright (hem carried) or pivot back to the old hem
 *      +---+
 * }</pre>
 *
 * Source: common practice.
 */
final class SidePivots {

    private final Flank flank;
    private final List<SideLevel> levels;
    private final boolean hemCarried;
    private final double letDownMm;
    private final StepList list;

    /**
     * @param levels from the top of the side edge down to its bottom, at least two
     * @param hemCarried whether the last part is carried upright instead of meeting its mark
     * @param letDownMm how far the last part is slid down along the grain, so that the hem is level again
     */
    SidePivots(Flank flank, List<SideLevel> levels, boolean hemCarried, double letDownMm) {
        this(flank, levels, hemCarried, letDownMm, new StepList(flank.piece));
    }

    /**
     * @param list what the steps are added to
     */
    SidePivots(Flank flank, List<SideLevel> levels, boolean hemCarried, StepList list) {
        this(flank, levels, hemCarried, 0, list);
    }

    private SidePivots(Flank flank, List<SideLevel> levels, boolean hemCarried, double letDownMm, StepList list) {
        this.flank = flank;
        this.levels = List.copyOf(levels);
        this.hemCarried = hemCarried;
        this.letDownMm = letDownMm;
        this.list = list;
    }

    /** Nothing where no level moves. */
    List<Step> steps() {
        return isMoved() ? added().finished() : List.of();
    }

    boolean isMoved() {
        return levels.stream().anyMatch(level -> level.outMm() != 0);
    }

    /** The list with the steps of this edge. */
    StepList added() {
        boolean topMoves = levels.get(0).outMm() != 0;
        Optional<Edge> armhole = flank.piece.firstOf(EdgeRole.ARMHOLE).or(flank::raglan);
        if (topMoves && armhole.isPresent()) {
            swingArmhole(armhole.get());
        } else if (topMoves && levels.get(1).outMm() == 0) {
            swingTopAlone();
            return list;
        } else if (topMoves) {
            list.add(new Step.Slide(flank.outward() * levels.get(0).outMm(), 0));
        }
        if (topMoves && armhole.isEmpty()) {
            joinTop();
        }
        walkDown(topMoves);
        closeBottom();
        return list;
    }

    private Step.Mark mark(SideLevel level) {
        return new Step.Mark(level.mark(), level.place(), flank.outward() * level.outMm(), 0);
    }

    private void pinAndPivot(Place pin, SideLevel to) {
        list.add(mark(to));
        list.add(new Step.Pin(pin));
        list.add(new Step.Pivot(new Until.MeetsAcross(to.place(), to.mark())));
    }

    private void swingArmhole(Edge armhole) {
        Place shoulderPoint = flank.upwards
                ? Place.endOf(flank.piece, armhole.name(), topOfArmhole())
                : Place.startOf(armhole.name(), topOfArmhole());
        pinAndPivot(shoulderPoint, levels.get(0));
        list.trace(armhole.name(), 0, armhole.length());
    }

    private String topOfArmhole() {
        if (flank.raglan().isPresent()) {
            return "neck end of the raglan seam";
        }
        return flank.piece.firstOf(EdgeRole.SHOULDER).isPresent() ? "shoulder point" : "armhole end of the yoke seam";
    }

    /** Only the top moves: the level below is the pin, and all below it stays. */
    private void swingTopAlone() {
        pinAndPivot(levels.get(1).place(), levels.get(0));
        flank.trace(list, levels.get(0).place().alongMm(), levels.get(1).place().alongMm());
        joinTop();
    }

    /** A side without an armhole above it ends at a waist, or runs on into the curve under a kimono's arm. */
    private void joinTop() {
        flank.joinBeside(list, EdgeRole.WAIST, true);
        KimonoSleeve.turn(flank.piece, Math.max(0, levels.get(0).outMm()))
                .ifPresent(
                        turn -> list.add(new Step.Join(turn, JoinForm.curve(Direction.AS_DRAWN, Direction.AS_DRAWN))));
    }

    private void walkDown(boolean topMoves) {
        boolean moved = topMoves;
        int last = levels.size() - 1;
        for (int i = 0; i < last; i++) {
            SideLevel above = levels.get(i);
            SideLevel below = levels.get(i + 1);
            moved |= below.outMm() != 0;
            if (!moved) {
                continue;
            }
            if (i + 1 == last && hemCarried) {
                list.add(new Step.Pin(above.place()));
                list.add(new Step.Pivot(new Until.GrainUpright()));
            } else {
                pinAndPivot(above.place(), below);
            }
            if (i + 1 == last && letDownMm != 0) {
                letDown(above.place().alongMm(), below.place().alongMm());
            } else {
                flank.trace(list, above.place().alongMm(), below.place().alongMm());
            }
        }
    }

    /** Slid up, the last part needs room: what it would cover is taken from its top. */
    private void letDown(double topMm, double bottomMm) {
        double room = 2 * Math.max(0, -letDownMm);
        double top = topMm > bottomMm ? topMm - room : topMm + room;
        list.add(new Step.Slide(0, -letDownMm));
        flank.trace(list, top, bottomMm);
        list.join(flank.side.name(), Math.min(top, topMm), Math.max(top, topMm), JoinForm.STRAIGHT);
    }

    private void closeBottom() {
        flank.joinBeside(list, EdgeRole.HEM, false);
        if (flank.piece.kind().isUpper()) {
            flank.joinBeside(list, EdgeRole.WAIST, false);
        }
        if (flank.piece.kind().isSleeve()) {
            flank.joinBeside(list, EdgeRole.WRIST, false);
        }
    }
}
