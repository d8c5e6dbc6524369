package org.shutoffbench.harness.study;

import org.jspecify.annotations.Nullable;

/**
 * One family of joints in a study.
 *
 * @param name as in the scenario
 * @param note one line for people, such as "300 kN/mm, no prevailing torque"; may be empty
 * @param joints planned number of joints
 * @param lots number of lots they come from; equal to {@code joints} where each joint is its own lot
 * @param tools number of tools that tighten them; equal to {@code joints} where each joint has its own tool
 * @param repeats tightenings of one and the same piece, 1 where no piece is repeated
 * @param covariate a drawn parameter against which silent misses are counted, or null
 */
public record Family(
        String name,
        String note,
        int joints,
        int lots,
        int tools,
        int repeats,
        @Nullable Covariate covariate) {

    public Family {
        if (joints < 1 || lots < 1 || lots > joints || tools < 1 || tools > joints || repeats < 1) {
            throw new IllegalArgumentException(
                    "joints >= lots >= 1, joints >= tools >= 1 and repeats >= 1 must hold in family " + name);
        }
    }
}
