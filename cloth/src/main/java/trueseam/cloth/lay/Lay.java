package trueseam.cloth.lay;

import java.util.List;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.goods.Layers;
import trueseam.cloth.goods.Stuff;
import trueseam.garment.finding.Finding;

/**
 * The pieces of a garment on cloth.
 *
 * @param cloth the cloth
 * @param stuff what the pieces are cut from
 * @param wishes what was wanted
 * @param pieces every copy
 * @param usedMm how much of the length that lies there is covered: of cloth folded crosswise the length of one layer
 * @param density which part of that cloth becomes garment, 0 to 1
 * @param findings what is doubtful
 */
public record Lay(
        Cloth cloth,
        Stuff stuff,
        LayWishes wishes,
        List<LaidPiece> pieces,
        double usedMm,
        double density,
        List<Finding> findings) {

    /** Does not change. */
    public Lay {
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }

    /**
     * The length of washed cloth that is needed.
     *
     * @return mm
     */
    public double neededMm() {
        return cloth.layers() == Layers.CROSSWISE ? 2 * usedMm : usedMm;
    }

    /**
     * The length to buy before it shrinks.
     *
     * @return mm, not rounded to what shops cut
     */
    public double toBuyMm() {
        return cloth.toBuyMm(neededMm());
    }

    /**
     * What is left over: of a remnant what lies beyond the layout, else what is bought more than needed, after it has shrunk.
     *
     * @param shop in what steps it is cut
     * @return mm of washed cloth over its whole width, 0 where a remnant is too short
     */
    public double leftOverMm(CutLength shop) {
        double there = cloth.haveMm().orElse(shop.roundUpMm(toBuyMm()) * (1 - cloth.shrinkLength()));
        return Math.max(0, there - neededMm());
    }

    /**
     * By how much a remnant is too short.
     *
     * @return mm; 0 where there is enough, or as much as is needed can be bought
     */
    public double missingMm() {
        // A hundredth of a millimetre is rounding.
        double missing = neededMm() - cloth.haveMm().orElse(neededMm());
        return missing > 0.01 ? missing : 0;
    }

    /**
     * Whether a piece lies where it was put by hand.
     *
     * @param piece one of the pieces
     * @return whether it stays when the rest is laid
     */
    public boolean byHand(LaidPiece piece) {
        return wishes.byHand().contains(piece.placed());
    }
}
