/**
 * One tightening in closed loop, what it ended as, and many of them in parallel.
 *
 * <p>Joins plant, sensors and strategies; truth never reaches a strategy here.
 */
@NullMarked
package org.shutoffbench.harness.run;

import org.jspecify.annotations.NullMarked;
