package org.shutoffbench.harness.statistics;

/** A rule that accepts or rejects a population from a sample of it. */
public interface AcceptancePlan {

    /** Joints to try. */
    int n();

    /**
     * Probability of accepting: the operating characteristic.
     *
     * @param failing share of all joints that fail, in [0, 1]
     */
    double acceptance(double failing);
}
