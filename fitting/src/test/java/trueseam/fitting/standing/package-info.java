/** Standing alterations: examples and laws. */
package trueseam.fitting.standing;
