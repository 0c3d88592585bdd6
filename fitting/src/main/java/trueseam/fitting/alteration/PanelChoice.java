package trueseam.fitting.alteration;

/** Over which seams a girth is shared where front and back are divided into panels or gores (sources disagree). */
public enum PanelChoice {
    /** Over every seam from top to bottom: N/2k at each edge of k seams. */
    ALL_SEAMS,
    /** Over both edges of the side panels; the centre panels are left alone. */
    SIDE_PANELS,
    /** Over the side seams alone, as in a garment without panels. */
    SIDE_SEAMS,
    /** Over the seams between the panels alone, which hold what darts hold elsewhere; the side seams stay. */
    PANEL_SEAMS
}
