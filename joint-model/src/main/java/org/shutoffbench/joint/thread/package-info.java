/**
 * Screw threads and the hexagon bolts and nuts that carry them: profile, stress area, designations, dimensions.
 *
 * <p>Leaf room: it uses nothing of the rest of the joint. Dimensions typed from memory say so; those that a formula or a
 * published table can check are checked in the tests.
 */
@NullMarked
package org.shutoffbench.joint.thread;

import org.jspecify.annotations.NullMarked;
