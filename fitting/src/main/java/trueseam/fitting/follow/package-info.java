/**
 * Following: whatever is sewn to an edge that was altered on purpose follows it, before truing.
 *
 * <p>An alteration says which edges it means to lengthen or shorten; by how much they did is measured on the pieces. The sleeve's cap
 * follows its armhole, front half the front and back half the back (common practice). Requires the pattern after all alterations;
 * guarantees tissue steps on the pieces that follow. What no alteration meant to change is left to truing.
 */
package trueseam.fitting.follow;
