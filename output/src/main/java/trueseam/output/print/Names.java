package trueseam.output.print;

import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;

/** How patterns and their parts are named on paper. */
final class Names {

    private Names() {}

    /** The pattern and its size, which is not said twice. */
    static String withSize(Pattern pattern) {
        String size = pattern.size();
        boolean said = size.isBlank() || (" " + pattern.name() + " ").contains(" " + size + " ");
        return said ? pattern.name() : pattern.name() + ", size " + size;
    }

    /** A level as a dressmaker calls it on this piece. */
    static String level(Piece piece, Level level) {
        if (level.name() == LevelName.ACROSS) {
            return piece.kind().isFront() ? "across front" : piece.kind().isBack() ? "across back" : "across";
        }
        return level.name().word() + " level";
    }
}
