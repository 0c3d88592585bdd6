/** How much cloth to buy. */
package trueseam.cloth.need;
