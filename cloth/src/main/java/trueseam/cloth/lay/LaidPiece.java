package trueseam.cloth.lay;

import trueseam.cloth.packing.Placed;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

/**
 * One copy of a piece on the cloth. Along the cloth is x, from the end that is laid first; across is y, from the fold or from the lower free
 * line beside the selvage.
 *
 * @param part what is laid
 * @param placed where, as the search has it: give it back to keep it there
 * @param lie from the piece to the cloth
 * @param cutting its cutting line on the cloth
 * @param grainFrom the lower end of its grainline on the cloth
 * @param grainTo and the upper
 */
public record LaidPiece(ClothPart part, Placed placed, Lie lie, Path cutting, Point grainFrom, Point grainTo) {}
