/**
 * How far bolt and clamped parts give: bolt elements after VDI 2230, parts as cone, frusta or exponential fit, and springs
 * in series.
 *
 * <p>Uses the thread room and nothing else. Compliances are in m/N, stiffnesses in N/m.
 */
@NullMarked
package org.shutoffbench.joint.stiffness;

import org.jspecify.annotations.NullMarked;
