package trueseam.intake.apparel;

import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Grain;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * A pattern piece of the apparel convention, in one size, as its block has it: mm, y up. Which edges are sewn together is never in such a
 * file, nor whether a boundary without a sew line has seam allowance: ask.
 *
 * @param block name of its block
 * @param name its text {@code Piece Name}, else the name of the block
 * @param size its text {@code Size}, else what follows the last underscore of the block's name; empty if there is neither
 * @param cutCount how many are cut, from its text {@code Quantity}; left and right counts are added; 1 if it is not said
 * @param material its text {@code Material}; empty if it has none
 * @param category its text {@code Category}; empty if it has none
 * @param boundary the cutting edge, closed, anticlockwise, from a corner if it has one
 * @param corners the turn points of the boundary, in its order
 * @param cornersMarked whether the file marks turn points and curve points; else the corners are its sharper bends
 * @param sewing the stitching line, if the file has one that is closed
 * @param sewLines other sew lines
 * @param notches notches
 * @param grain grainline
 * @param mirrorLine the fold, if only one half is drawn
 * @param internalLines lines that are drawn and not cut
 * @param cutOuts lines inside that are cut
 * @param drillHoles drill holes
 * @param otherLines lines on layers that the convention does not know
 * @param gradeLine the grade reference line, x axis of the rules
 * @param gradePoints points with a grade rule
 * @param texts every text in the block, as written
 */
public record ApparelPiece(
        String block,
        String name,
        String size,
        int cutCount,
        String material,
        String category,
        Path boundary,
        List<Point> corners,
        boolean cornersMarked,
        Optional<Path> sewing,
        List<Path> sewLines,
        List<ApparelNotch> notches,
        Optional<Grain> grain,
        Optional<Path> mirrorLine,
        List<Path> internalLines,
        List<Path> cutOuts,
        List<Point> drillHoles,
        List<OtherLine> otherLines,
        Optional<Path> gradeLine,
        List<GradePoint> gradePoints,
        List<String> texts) {

    /** Does not change. */
    public ApparelPiece {
        corners = List.copyOf(corners);
        sewLines = List.copyOf(sewLines);
        notches = List.copyOf(notches);
        internalLines = List.copyOf(internalLines);
        cutOuts = List.copyOf(cutOuts);
        drillHoles = List.copyOf(drillHoles);
        otherLines = List.copyOf(otherLines);
        gradePoints = List.copyOf(gradePoints);
        texts = List.copyOf(texts);
    }
}
