package org.shutoffbench.harness.report;

import org.shutoffbench.joint.JointLaw;

/** Draws a joint of a study again. */
@FunctionalInterface
public interface JointAtNumber {

    /**
     * The law of a joint.
     *
     * @param family index of the family in the scenario
     * @param joint joint number within the family, from 0
     */
    JointLaw draw(int family, int joint);
}
