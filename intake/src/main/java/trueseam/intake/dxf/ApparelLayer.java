package trueseam.intake.dxf;

import java.util.Locale;

/**
 * What a layer means by the apparel convention (ASTM D6673 and before it AAMA). Layers 1, 4, 8, 11 and 13 and their names on cutting
 * tables from a note for operators of such tables; the others from memory.
 */
enum ApparelLayer {
    BOUNDARY,
    TURN_POINT,
    CURVE_POINT,
    NOTCH,
    GRADE_LINE,
    MIRROR_LINE,
    GRAIN,
    INTERNAL,
    STRIPE_OR_PLAID,
    CUT_OUT,
    DRILL,
    SEW_LINE,
    TEXT,
    QUALITY_CURVE,
    OTHER;

    static ApparelLayer of(String name) {
        return switch (name.strip().toUpperCase(Locale.ROOT)) {
            case "1", "CUT", "OUTLINE" -> BOUNDARY;
            case "2" -> TURN_POINT;
            case "3" -> CURVE_POINT;
            case "4", "80", "81", "82", "83", "NOTCH" -> NOTCH;
            case "5" -> GRADE_LINE;
            case "6" -> MIRROR_LINE;
            case "7" -> GRAIN;
            case "8", "DRAW", "INK" -> INTERNAL;
            case "9", "10" -> STRIPE_OR_PLAID;
            case "11", "INTCUT" -> CUT_OUT;
            case "13", "DRILL" -> DRILL;
            case "14" -> SEW_LINE;
            case "15", "19", "TEXT" -> TEXT;
            case "84", "85", "86", "87" -> QUALITY_CURVE;
            default -> OTHER;
        };
    }

    /** Whether points on it say what a vertex of the boundary is, and are nothing drawn. */
    boolean isVertexMark() {
        return this == TURN_POINT || this == CURVE_POINT;
    }
}
