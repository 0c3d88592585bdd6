package trueseam.intake.dxf;

import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.drawing.Drawing;

/**
 * What a DXF file holds.
 *
 * @param drawing everything drawn, placed as on the sheet
 * @param unit how long one unit of the file was taken to be
 */
public record DxfReading(Drawing drawing, DrawingUnit unit) {

    /**
     * Its pattern pieces.
     *
     * @return none if it does not keep to the apparel convention
     */
    public ApparelPieces apparel() {
        return drawing.apparel();
    }
}
