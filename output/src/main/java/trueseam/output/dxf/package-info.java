/**
 * Pattern pieces as a DXF file by the apparel convention (ASTM D6673, before it AAMA), for cutting tables and other programs: release 12,
 * 7-bit ASCII, a block for each piece, mm. What the convention is known from, and what of it only from memory, is said in
 * {@code trueseam.intake.dxf}; seams, the names of edges and allowances are not carried by it.
 *
 * <p>Front type: {@link trueseam.output.dxf.ApparelDxf}. Only text is made here; who writes it to a file is outside.
 */
package trueseam.output.dxf;
