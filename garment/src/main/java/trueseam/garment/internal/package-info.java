/** Reading the small tables that ship with this room. Nothing outside the garment room may use it. */
package trueseam.garment.internal;
