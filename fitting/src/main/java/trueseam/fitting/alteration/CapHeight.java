package trueseam.fitting.alteration;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/**
 * Height of a sleeve's cap: the crown goes up or down, and the cap is drawn new to the notches (common practice).
 *
 * <p>Must stay: the girth of the sleeve, the cap below the notches. The cap's seam grows or shrinks, and with it what is eased in.
 *
 * @param higherMm higher by so much, mm; minus for lower
 */
public record CapHeight(double higherMm) implements Alteration {

    @Override
    public String title() {
        return "Cap height";
    }

    @Override
    public boolean changesCapEase() {
        return true;
    }

    @Override
    public List<PieceWork> work(Pattern pattern) {
        List<PieceWork> work = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            if (piece.kind() == PieceKind.SLEEVE && higherMm != 0) {
                List<SleeveHalf> halves = SleeveHalf.of(piece);
                StepList list = new StepList(piece);
                CapLength.slideCrown(list, halves, 0, higherMm);
                for (SleeveHalf half : halves) {
                    CapReach.draw(list, half, CapReach.growth(half, higherMm));
                }
                work.add(new PieceWork(piece.name(), list.finished()));
            }
        }
        return work;
    }
}
