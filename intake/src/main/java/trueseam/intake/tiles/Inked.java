package trueseam.intake.tiles;

import trueseam.geometry.Bounds;
import trueseam.intake.drawing.Stroke;

/**
 * A line of a page as the file has it, and how much of it the page shows.
 *
 * @param stroke the whole line, mm from the lower left corner of the page
 * @param bounds its bounds
 * @param visible the window that it is seen through; outside it is cut off
 */
public record Inked(Stroke stroke, Bounds bounds, Bounds visible) {

    /**
     * A line seen through a window.
     *
     * @param stroke the whole line
     * @param visible the window
     * @return the line with its bounds
     */
    public static Inked of(Stroke stroke, Bounds visible) {
        return new Inked(stroke, stroke.path().bounds(), visible);
    }

    /**
     * Whether any of it may be seen.
     *
     * @return false if its bounds lie outside the window
     */
    public boolean isSeen() {
        return bounds.meets(visible, 0.01);
    }

    /** What of its bounds lies in the window; its bounds, if nothing does. */
    Bounds seen() {
        return isSeen()
                ? new Bounds(
                        Math.min(Math.max(bounds.minX(), visible.minX()), bounds.maxX()),
                        Math.min(Math.max(bounds.minY(), visible.minY()), bounds.maxY()),
                        Math.max(Math.min(bounds.maxX(), visible.maxX()), bounds.minX()),
                        Math.max(Math.min(bounds.maxY(), visible.maxY()), bounds.minY()))
                : bounds;
    }
}
