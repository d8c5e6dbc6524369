/** Quantities with units as people write them: {@code 84 N*m}, {@code 100 ft*lbf}, {@code 30 deg}, {@code 8 %}. */
@NullMarked
package org.shutoffbench.harness.scenario.unit;

import org.jspecify.annotations.NullMarked;
