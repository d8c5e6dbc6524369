package org.shutoffbench.harness.study;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.FixedPoint;

/**
 * The joints of a cell that ended farthest from the target; among equals the one whose nut is farthest from snug, then the
 * lower joint number.
 */
final class WorstJoints {

    static final int KEPT = 100;

    private static final FixedPoint MICRO = new FixedPoint(1e6);
    private static final Comparator<WorstJoint> WORST_FIRST = Comparator.comparingDouble(
                    (WorstJoint joint) -> -Math.abs(joint.deviation()))
            .thenComparingDouble(WorstJoint::nutAngleDeg)
            .thenComparingInt(WorstJoint::joint);

    private final Judge judge;
    private final TreeSet<WorstJoint> joints = new TreeSet<>(WORST_FIRST);

    WorstJoints(Judge judge) {
        this.judge = judge;
    }

    void add(TighteningRecord tightening) {
        add(worstJoint(tightening));
    }

    void merge(WorstJoints other) {
        other.joints.forEach(this::add);
    }

    List<WorstJoint> summarise() {
        return List.copyOf(joints);
    }

    private void add(WorstJoint joint) {
        if (joints.size() == KEPT && WORST_FIRST.compare(joint, joints.last()) > 0) {
            return;
        }
        joints.add(joint);
        if (joints.size() > KEPT) {
            joints.pollLast();
        }
    }

    private WorstJoint worstJoint(TighteningRecord tightening) {
        Quantity judged = judge.quantity();
        double value = judged.counted().rounded(judged.of(tightening));
        return new WorstJoint(
                tightening.joint(),
                tightening.outcome(),
                tightening.verdict(),
                tightening.endReason(),
                judge.deviation(value),
                Quantity.CLAMP_FORCE.counted().rounded(tightening.clampForceN()),
                Quantity.CLAMPING_TORQUE.counted().rounded(tightening.clampingTorqueNm()),
                MICRO.rounded(tightening.prevailingTorqueNm()),
                MICRO.rounded(tightening.nutAngleDeg()),
                tightening.blows(),
                MICRO.rounded(tightening.timeS()));
    }
}
