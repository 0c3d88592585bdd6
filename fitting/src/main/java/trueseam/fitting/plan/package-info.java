/**
 * The plan of a fit: which measures which alterations serve, in what order, how each amount is shared, and the amounts that make
 * the finished flat pattern measure what it should.
 */
package trueseam.fitting.plan;
