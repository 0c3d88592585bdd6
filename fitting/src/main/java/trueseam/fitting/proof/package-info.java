/**
 * Proving an altered pattern: every proof is computed from the finished outline, never from the plan.
 */
package trueseam.fitting.proof;
