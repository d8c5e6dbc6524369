/**
 * Estimates and their uncertainty: intervals, tests, comparisons, rare events, sensitivity.
 *
 * <p>Pure numerics over counts, samples and functions; knows nothing of joints, strategies or files. Distribution tails
 * come from Commons Statistics. What randomness a method needs it takes as a {@link
 * java.util.random.RandomGenerator}. Sources are keys into {@code docs/references.md}; {@code docs/statistics.md} says
 * which method is shown when.
 */
@NullMarked
package org.shutoffbench.harness.statistics;

import org.jspecify.annotations.NullMarked;
