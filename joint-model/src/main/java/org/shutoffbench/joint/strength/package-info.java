/**
 * What bolts and nuts bear: property classes, proof loads, and the clamp force at which tightening makes a bolt yield.
 *
 * <p>Uses the thread room and nothing else.
 */
@NullMarked
package org.shutoffbench.joint.strength;

import org.jspecify.annotations.NullMarked;
