package trueseam.intake.dxf;

import java.util.List;
import java.util.Locale;

/**
 * A drawing in the drawing, to be placed by its name; by the apparel convention a pattern piece.
 *
 * @param name as written
 * @param line where it begins in the file
 * @param head its own groups: its base point
 * @param entities what is drawn in it
 */
record Block(String name, int line, RawEntity head, List<RawEntity> entities) {

    /** Blocks that hold a whole sheet and are no drawing of their own. */
    boolean isSheet() {
        String plain = name.toUpperCase(Locale.ROOT);
        return plain.startsWith("*MODEL_SPACE")
                || plain.startsWith("*PAPER_SPACE")
                || plain.startsWith("$MODEL_SPACE")
                || plain.startsWith("$PAPER_SPACE");
    }
}
