package trueseam.intake.drawing;

import trueseam.geometry.Point;

/**
 * Something written in a drawing.
 *
 * @param text what
 * @param at where it begins, mm, y up
 * @param heightMm how tall its letters are
 * @param layer as of a stroke
 * @param colour as of a look; empty where the file does not say
 */
public record Caption(String text, Point at, double heightMm, String layer, String colour) {

    /**
     * Something written in no colour that is known.
     *
     * @param text as of the record
     * @param at as of the record
     * @param heightMm as of the record
     * @param layer as of the record
     */
    public Caption(String text, Point at, double heightMm, String layer) {
        this(text, at, heightMm, layer, "");
    }
}
