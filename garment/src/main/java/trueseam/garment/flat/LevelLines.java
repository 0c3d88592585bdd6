package trueseam.garment.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Piece;

/** The lines by which pieces that are sewn side by side lie at one height. */
final class LevelLines {

    private final List<Piece> pieces;
    private final IdentityHashMap<Piece, HeightTies> ties = new IdentityHashMap<>();
    private Function<Piece, OptionalDouble> zero = piece -> OptionalDouble.empty();
    private double zeroHeightMm;

    LevelLines(List<Piece> pieces) {
        this.pieces = pieces;
        pieces.forEach(piece -> ties.put(piece, new HeightTies()));
    }

    List<Piece> pieces() {
        return pieces;
    }

    LevelLines line(LevelName level, double heightMm) {
        return line(piece -> piece.level(level), heightMm);
    }

    LevelLines line(Function<Piece, OptionalDouble> place, double heightMm) {
        if (pieces.stream().allMatch(piece -> ties.get(piece).isEmpty())) {
            zero = place;
            zeroHeightMm = heightMm;
        }
        for (Piece piece : pieces) {
            place.apply(piece).ifPresent(y -> ties.get(piece).with(heightMm, y));
        }
        return this;
    }

    LevelLines lineOfFront(LevelName level) {
        return lineOfFront(piece -> piece.level(level));
    }

    /** A line whose height is that of the first front which has it. */
    LevelLines lineOfFront(Function<Piece, OptionalDouble> place) {
        OptionalDouble height = heightOfFront(place);
        return height.isPresent() ? line(place, height.getAsDouble()) : this;
    }

    OptionalDouble heightOfFront(LevelName level) {
        return heightOfFront(piece -> piece.level(level));
    }

    OptionalDouble heightOfFront(Function<Piece, OptionalDouble> place) {
        List<Piece> inOrder = new ArrayList<>(pieces);
        inOrder.sort(Comparator.comparing(piece -> !piece.kind().isFront()));
        for (Piece piece : inOrder) {
            OptionalDouble y = place.apply(piece);
            OptionalDouble from = zero.apply(piece);
            if (y.isPresent() && from.isPresent()) {
                return OptionalDouble.of(zeroHeightMm + y.getAsDouble() - from.getAsDouble());
            }
        }
        return OptionalDouble.empty();
    }

    /** The pieces with the heights laid on them: 1 time of what a wearer has on either side, 2 times of what goes round both. */
    List<LaidPiece> laid(int times) {
        return pieces.stream()
                .filter(piece -> !ties.get(piece).isEmpty())
                .map(piece -> new LaidPiece(piece, ties.get(piece), Math.min(times, piece.timesAround()), times == 1))
                .toList();
    }
}
