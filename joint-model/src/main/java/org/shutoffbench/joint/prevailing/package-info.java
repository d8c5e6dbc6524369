/**
 * Lock nuts by size: prevailing torque of standards and handbooks, where the locking element sits, what reuse leaves.
 *
 * <p>Uses the thread room and nothing else.
 */
@NullMarked
package org.shutoffbench.joint.prevailing;

import org.jspecify.annotations.NullMarked;
