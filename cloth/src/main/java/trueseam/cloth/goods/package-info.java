/** Cloth as it is bought and laid: width, folds, nap, shrinkage, repeats, flaws, and the steps in which shops cut it. */
package trueseam.cloth.goods;
