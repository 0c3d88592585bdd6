package trueseam.output.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.fitting.tissue.AlteredPiece;
import trueseam.garment.pattern.CuttingLine;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Path;

/**
 * The lines of one piece as chosen for printing, reckoned once.
 *
 * @param piece the piece whose marks are printed: the altered one if it was asked for, else the original
 * @param stitching where it is sewn, if asked for
 * @param cutting where it is cut, if asked for and if the outline does not cross itself
 * @param before the original piece, if it was altered and both were asked for
 * @param beforeStitching parts of the original stitching line that lie apart
 * @param beforeCutting parts of the original cutting line that lie apart
 * @param outlines closed outlines that together cover the paper of the piece
 */
record PieceLines(
        Piece piece,
        Optional<Path> stitching,
        Optional<Path> cutting,
        Optional<Piece> before,
        List<Path> beforeStitching,
        List<Path> beforeCutting,
        List<Path> outlines) {

    /** Notches and the thickness of lines stand out so far from the outline, mm. */
    static final double STANDING_OUT_MM = 6;

    static PieceLines of(AlteredPiece altered, PrintOptions options) {
        boolean both = options.has(PrintedLine.ALTERED) && options.has(PrintedLine.ORIGINAL) && altered.isAltered();
        Piece piece = options.has(PrintedLine.ALTERED) ? altered.now() : altered.original();
        Optional<Path> stitching = stitching(piece, options);
        Optional<Path> cutting = cutting(piece, options);
        List<Path> outlines = new ArrayList<>();
        outlines.add(cutting.or(() -> stitching).orElseGet(piece::outline));
        List<Path> beforeStitching = List.of();
        List<Path> beforeCutting = List.of();
        if (both) {
            Optional<Path> sewn = stitching(altered.original(), options);
            Optional<Path> cut = cutting(altered.original(), options);
            beforeStitching = sewn.map(p -> apart(p, stitching)).orElse(List.of());
            beforeCutting = cut.map(p -> apart(p, cutting)).orElse(List.of());
            outlines.add(cut.or(() -> sewn).orElseGet(altered.original()::outline));
        }
        Optional<Piece> before = both ? Optional.of(altered.original()) : Optional.empty();
        return new PieceLines(piece, stitching, cutting, before, beforeStitching, beforeCutting, outlines);
    }

    private static Optional<Path> stitching(Piece piece, PrintOptions options) {
        return options.has(PrintedLine.STITCHING) ? Optional.of(piece.outline()) : Optional.empty();
    }

    private static Optional<Path> cutting(Piece piece, PrintOptions options) {
        return options.has(PrintedLine.CUTTING) ? CuttingLine.find(piece) : Optional.empty();
    }

    private static List<Path> apart(Path before, Optional<Path> now) {
        return now.map(n -> Apart.parts(before, n)).orElse(List.of(before));
    }

    /** Whether its outline crosses itself, so that it has no cutting line and must not be cut. */
    boolean crosses() {
        return CuttingLine.find(piece).isEmpty();
    }

    /** The outline that scissors follow: the cutting line, or the stitching line where no other is printed. */
    Path outline() {
        return outlines.get(0);
    }

    /** How far beyond the stitching line marks at an edge stand, mm. */
    double allowanceMm(String edge) {
        return cutting.isPresent() ? piece.edge(edge).allowanceMm() : 0;
    }

    /** All that is drawn of it, notches included. */
    Bounds bounds() {
        Bounds all = outlines.get(0).bounds();
        for (Path outline : outlines) {
            all = all.with(outline.bounds());
        }
        return all.grown(STANDING_OUT_MM);
    }
}
