/**
 * JMH measurements of the plant, the strategies and whole studies. May see every room; no room may see it, and nothing
 * published depends on it. Tracked figures live in {@code benchmarks/results}.
 */
@NullMarked
package org.shutoffbench.benchmarks;

import org.jspecify.annotations.NullMarked;
