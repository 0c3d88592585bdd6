/**
 * Benchmarks for the speed table of the design. {@code tools/benchmark} runs them all; the numbers, with the machine, stand in
 * {@code docs/performance.md}. They are no tests: nothing fails here when the machine is slow.
 *
 * <p>The scenes are fixed: shells of published size tables, a made-up body, and the people of the public survey in
 * {@code data/bodies}. Run from the root of the project.
 */
package trueseam.benchmarks;
