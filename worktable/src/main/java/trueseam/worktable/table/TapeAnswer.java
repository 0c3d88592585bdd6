package trueseam.worktable.table;

import java.util.List;
import java.util.stream.Collectors;
import trueseam.garment.flat.OutlinePlace;
import trueseam.garment.flat.OutlineTape;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Path;
import trueseam.output.picture.PiecePicture;

/**
 * What tape and ruler read between two places of a stitching line; y points down.
 *
 * @param from where it begins, in words
 * @param to where it ends, in words
 * @param fromX where it begins
 * @param fromY where it begins
 * @param toX where it ends
 * @param toY where it ends
 * @param shorter along the stitching line, the shorter way round
 * @param shorterSewn the same with darts closed
 * @param longer along the stitching line, the longer way round
 * @param longerSewn the same with darts closed
 * @param straight by a ruler
 * @param line where the tape lies the shorter way round
 */
public record TapeAnswer(
        String from,
        String to,
        double fromX,
        double fromY,
        double toX,
        double toY,
        String shorter,
        String shorterSewn,
        String longer,
        String longerSewn,
        String straight,
        String line) {

    static TapeAnswer of(Piece piece, OutlinePlace from, OutlinePlace to, LengthFormat show) {
        OutlineTape tape = OutlineTape.between(piece, from, to);
        boolean on = tape.onMm() <= tape.backMm();
        List<Path> way = on ? tape.on(piece) : tape.back(piece);
        return new TapeAnswer(
                words(from, show),
                words(to, show),
                Numbers.rounded(from.point().x()),
                Numbers.rounded(-from.point().y()),
                Numbers.rounded(to.point().x()),
                Numbers.rounded(-to.point().y()),
                show.show(on ? tape.onMm() : tape.backMm()),
                show.show(on ? tape.onSewnMm() : tape.backSewnMm()),
                show.show(on ? tape.backMm() : tape.onMm()),
                show.show(on ? tape.backSewnMm() : tape.onSewnMm()),
                show.show(tape.straightMm()),
                way.stream().map(PiecePicture::text).collect(Collectors.joining()));
    }

    private static String words(OutlinePlace place, LengthFormat show) {
        return place.edge() + ", " + show.show(place.alongMm()) + " along";
    }
}
