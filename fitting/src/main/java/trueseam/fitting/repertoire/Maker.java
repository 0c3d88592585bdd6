package trueseam.fitting.repertoire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Tissue;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;

/** Writes down the steps of an alteration. */
@FunctionalInterface
public interface Maker {

    /**
     * The steps, piece by piece.
     *
     * @param pattern the pattern as the alterations before left it
     * @param mm the amount, mm, as the entry counts it; never 0
     * @return work on the pieces that it touches
     * @throws trueseam.fitting.alteration.AlterationException if a piece cannot take the amount
     */
    List<PieceWork> work(Pattern pattern, double mm);

    /** Writes down the steps for one piece; leaves the list empty if the piece is not concerned. */
    @FunctionalInterface
    interface OfPiece {
        /**
         * Adds the steps.
         *
         * @param list the list to add to
         * @param piece the piece
         * @param mm the amount, mm
         */
        void steps(StepList list, Piece piece, double mm);
    }

    /**
     * One after the other: the second works on what the first left.
     *
     * @param first what is done first
     * @param second what is done then
     * @return the maker
     */
    static Maker inTurn(Maker first, Maker second) {
        return (pattern, mm) -> {
            List<PieceWork> work = new ArrayList<>(first.work(pattern, mm));
            List<Piece> pieces = new ArrayList<>();
            for (Piece piece : pattern.pieces()) {
                Piece now = piece;
                for (PieceWork one : work) {
                    now = one.piece().equals(piece.name())
                            ? Tissue.work(now, one.steps()).piece()
                            : now;
                }
                pieces.add(now);
            }
            work.addAll(second.work(pattern.withPieces(pieces), mm));
            return work;
        };
    }

    /**
     * A share of the amount.
     *
     * @param share for example a half
     * @return the maker that is given so much of its amount
     */
    default Maker timesAmount(double share) {
        return (pattern, mm) -> work(pattern, share * mm);
    }

    /**
     * The same work on every piece of some kinds.
     *
     * @param kinds the kinds
     * @param one the work on one piece
     * @return the maker
     */
    static Maker each(Set<PieceKind> kinds, OfPiece one) {
        Set<PieceKind> concerned = EnumSet.copyOf(kinds);
        return (pattern, mm) -> {
            List<PieceWork> work = new ArrayList<>();
            for (Piece piece : pattern.pieces()) {
                if (concerned.contains(piece.kind())) {
                    StepList list = new StepList(piece);
                    one.steps(list, piece, mm);
                    if (!list.isEmpty()) {
                        work.add(new PieceWork(piece.name(), list.finished()));
                    }
                }
            }
            return work;
        };
    }
}
