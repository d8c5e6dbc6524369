/**
 * A whole bolted joint from standard sizes: bolt, nut, washers and layers, refused where it cannot exist, with the numbers
 * that a drawn joint needs; and what happens after tightening.
 *
 * <p>Stands on the thread, strength and stiffness rooms.
 */
@NullMarked
package org.shutoffbench.joint.assembly;

import org.jspecify.annotations.NullMarked;
