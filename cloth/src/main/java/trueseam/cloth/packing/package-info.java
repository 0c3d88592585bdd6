/**
 * Laying shapes on a strip so that little of its length is used: irregular strip packing. Nothing here knows of sewing.
 *
 * <p>Start at {@link trueseam.cloth.packing.StripSearch}.
 */
package trueseam.cloth.packing;
