/**
 * The joints that a scenario can draw: joint k of a family, with its tool and its operator, as a pure function of the root
 * seed, the scenario's and the family's name, and the indices of lot, piece, repeat and tool.
 *
 * <p>The same joints for every strategy, thread count, order and resume. Nothing is tightened here.
 */
@NullMarked
package org.shutoffbench.harness.population;

import org.jspecify.annotations.NullMarked;
