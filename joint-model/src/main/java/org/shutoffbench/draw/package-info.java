/**
 * Keyed draws: counter-based random numbers that are pure functions of a key and an index, and inverse distributions.
 *
 * <p>No draw depends on thread count, order of evaluation or on which strategies run.
 */
@NullMarked
package org.shutoffbench.draw;

import org.jspecify.annotations.NullMarked;
