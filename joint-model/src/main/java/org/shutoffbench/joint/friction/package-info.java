/**
 * Friction of thread and bearing face: classes, how it scatters by lot, piece and repeat, and what a measurement tells.
 *
 * <p>Uses the thread room and nothing else; it describes scatter and draws nothing.
 */
@NullMarked
package org.shutoffbench.joint.friction;

import org.jspecify.annotations.NullMarked;
