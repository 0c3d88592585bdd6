/** Whether a layout is one that can be cut: tested without the search that made it. */
package trueseam.cloth.proof;
