/**
 * DXF files, ASCII, release 12 to 2018: what is drawn becomes a {@link trueseam.intake.drawing.Drawing} in mm, and the blocks of a file that
 * keeps to the apparel convention (ASTM D6673, before it AAMA) become {@link trueseam.intake.apparel.ApparelPieces}.
 *
 * <p>Front types: {@link trueseam.intake.dxf.Dxf}, {@link trueseam.intake.dxf.DxfReading}, {@link trueseam.intake.dxf.RuleTable}.
 *
 * <p>Kept exactly: lines, arcs and ellipses (to 1e-6 mm), splines up to degree 3 without weights. Other splines are chords within 0.01
 * mm and said. Refused: binary DXF, blocks stretched or placed inside themselves. What is damaged is left out, one by one, each with a
 * finding. Heights above the paper are left out.
 *
 * <p>The apparel convention is known here from the first page of the standard, from general DXF libraries and from memory, and no real
 * file was at hand: tests prove that reader and writer agree with what is written down, not that every real file opens.
 */
package trueseam.intake.dxf;
