/**
 * The bolted joint: threads, stiffness, friction, prevailing torque and the law of one drawn joint.
 *
 * <p>Everything here is immutable and in SI units, angles in rad, positive = tightening. This room knows no tool, no
 * plant and no random number. A joint in plain numbers is a {@link org.shutoffbench.joint.JointSpecification}; the plant
 * runs on the {@link org.shutoffbench.joint.JointLaw} that it makes.
 */
@NullMarked
package org.shutoffbench.joint;

import org.jspecify.annotations.NullMarked;
