package trueseam.intake.dxf;

import trueseam.intake.drawing.Drawing;

/**
 * What a DXF file holds.
 *
 * @param drawing everything drawn, placed as on the sheet
 * @param unit how long one unit of the file was taken to be
 * @param apparel the pattern pieces, if the file keeps to the apparel convention; none otherwise
 */
public record DxfReading(Drawing drawing, DrawingUnit unit, ApparelPieces apparel) {}
