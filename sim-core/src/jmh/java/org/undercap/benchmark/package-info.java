/** Benchmarks; start with {@link org.undercap.benchmark.SeasonBenchmark}. */
package org.undercap.benchmark;
