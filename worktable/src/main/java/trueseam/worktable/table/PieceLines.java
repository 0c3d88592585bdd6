package trueseam.worktable.table;

import java.util.stream.Collectors;
import trueseam.garment.pattern.Landmark;
import trueseam.garment.pattern.Piece;
import trueseam.output.picture.PiecePicture;

/**
 * The lines of a piece as the page and its script know them: path text, mm, y downwards, each empty where the piece has none.
 *
 * @param name the piece
 * @param stitching the stitching line
 * @param fold the fold
 * @param darts the darts
 * @param notches the notches
 * @param grain the grainline
 * @param levels the lines across
 * @param marks the named points inside, as crosses
 */
public record PieceLines(
        String name,
        String stitching,
        String fold,
        String darts,
        String notches,
        String grain,
        String levels,
        String marks) {

    private static final double CROSS_MM = 5;

    static PieceLines of(Piece piece) {
        PiecePicture picture = PiecePicture.of(piece);
        return new PieceLines(
                picture.piece(),
                picture.stitching(),
                picture.fold(),
                picture.darts(),
                picture.notches(),
                picture.grain(),
                picture.levels().stream().map(PiecePicture.LevelLine::line).collect(Collectors.joining()),
                picture.landmarks().stream().map(PieceLines::cross).collect(Collectors.joining()));
    }

    private static String cross(Landmark mark) {
        double x = mark.at().x();
        double y = -mark.at().y();
        return "M" + Numbers.text(x - CROSS_MM) + " " + Numbers.text(y) + "h" + Numbers.text(2 * CROSS_MM) + "M"
                + Numbers.text(x) + " " + Numbers.text(y - CROSS_MM) + "v" + Numbers.text(2 * CROSS_MM);
    }
}
