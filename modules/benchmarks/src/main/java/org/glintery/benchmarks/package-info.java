/**
 * The command {@code application/benchmarks}: {@link org.glintery.benchmarks.Benchmarks} runs the benchmarks that were
 * asked for and tells which figures are met. To add one, implement {@link org.glintery.benchmarks.Benchmark} and list it
 * in {@link org.glintery.benchmarks.Catalogue}.
 *
 * <p>What a figure is compared with is measured in the same run, by turns, so that a busy machine slows both.
 */
package org.glintery.benchmarks;
