package org.shutoffbench.harness.study;

import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;

/**
 * One of the joints of a cell that ended farthest from the target.
 *
 * @param joint joint number within its family
 * @param deviation relative distance of the judged quantity from the target, -1 where there is none of it
 */
public record WorstJoint(
        int joint,
        Outcome outcome,
        Verdict verdict,
        EndReason endReason,
        double deviation,
        double clampForceN,
        double clampingTorqueNm,
        double prevailingTorqueNm,
        double nutAngleDeg,
        int blows,
        double timeS) {}
