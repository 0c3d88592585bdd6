package trueseam.intake.patternfile;

/** Pattern files as a person might draw them, in few lines. */
final class Drawing {

    /** A rectangle of 100 by 200 mm, a front of a skirt, its lower left corner at (0, 0) of the piece. */
    static final String HEM = "<path data-edge='hem' data-allowance='40' d='M0 0 L100 0'/>\n";

    static final String SIDE = "<path data-edge='side' data-allowance='15' d='M100 0 L100 -200'/>\n";
    static final String WAIST = "<path data-edge='waist' data-allowance='15' d='M100 -200 L0 -200'/>\n";
    static final String CENTRE =
            "<path data-edge='centre front' data-allowance='0' data-line='fold' d='M0 -200 L0 0'/>\n";
    static final String GRAIN = "<path data-line='grain' d='M50 -20 L50 -180'/>\n";
    static final String OUTLINE = HEM + SIDE + WAIST + CENTRE;

    private Drawing() {}

    /** A drawing of 300 by 300 mm. */
    static String sheet(String content) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'"
                + " data-pattern='skirt'>\n" + content + "</svg>\n";
    }

    static String group(String attributes, String content) {
        return "<g " + attributes + ">\n" + content + "</g>\n";
    }

    /** A sheet with one piece "front". */
    static String front(String content) {
        return sheet(group("data-piece='front' data-kind='skirt front' data-cut='1'", content));
    }

    /** The rectangle with something more drawn in it. */
    static String rectangleWith(String more) {
        return front(OUTLINE + GRAIN + more);
    }
}
