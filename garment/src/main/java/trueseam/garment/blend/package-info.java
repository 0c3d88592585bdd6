/**
 * Drawing across the nest: a pattern of one size above a level and of another below it, the lines between going over from the one size's to
 * the other's by a smooth curve, as a dressmaker draws it with a curved ruler. Requires the sizes lying on one another as the maker nested
 * them, their edges named alike. Guarantees that at a level that is named the line is that size's own, and that between levels it stays
 * between the two sizes'. Alters nothing else and fits nobody.
 */
package trueseam.garment.blend;
