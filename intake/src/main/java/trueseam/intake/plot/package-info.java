/**
 * Plot files: the plain pen language HP-GL (SP PU PD PA PR AA AR CI EA ER BZ BR LB LT PW, IN and DF, IP and SC where they keep one scale)
 * becomes a {@link trueseam.intake.drawing.Drawing} in mm, 40 plotter units being 1 mm. Arcs are kept to 1e-6 mm and not as the chords of
 * a plotter. Packed lines (PE), turned plots (RO), stretched ones and raster commands are refused in one sentence; any other instruction
 * that may draw is a finding. Source: the published descriptions of HP-GL and HP-GL/2, from memory.
 *
 * <p>Front type: {@link trueseam.intake.plot.Plot}.
 */
package trueseam.intake.plot;
