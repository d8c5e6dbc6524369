package org.shutoffbench.harness.study.training;

import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.TuningNote;

/**
 * What the trained strategy makes of whole joints.
 *
 * @param joints tightened
 * @param inWindow outcome in window
 * @param silentMisses verdict REACHED on unseated or low joints
 */
record JointTally(long joints, long inWindow, long silentMisses) {

    static JointTally of(
            Bench bench,
            StrategyFactory strategy,
            Map<String, Double> settings,
            Provision provision,
            int jointsPerFamily,
            int threads)
            throws InterruptedException {
        Bench own = bench.with(List.of(new Contestant(strategy, settings, provision)));
        JointTally[] sum = {new JointTally(0, 0, 0)};
        OrderedWork.run(
                0,
                (long) own.scenario().families().size() * jointsPerFamily,
                threads,
                () -> {
                    ClosedLoop loop = own.newLoop();
                    return joint ->
                            of(own.tighten(loop, (int) (joint / jointsPerFamily), (int) (joint % jointsPerFamily))[0]);
                },
                (JointTally one) -> sum[0] = sum[0].plus(one));
        return sum[0];
    }

    private static JointTally of(TighteningRecord record) {
        boolean loose = record.outcome() == Outcome.UNSEATED || record.outcome() == Outcome.LOW;
        boolean silent = loose && record.verdict() == Verdict.REACHED;
        return new JointTally(1, record.outcome() == Outcome.IN_WINDOW ? 1 : 0, silent ? 1 : 0);
    }

    private JointTally plus(JointTally other) {
        return new JointTally(joints + other.joints, inWindow + other.inWindow, silentMisses + other.silentMisses);
    }

    String words() {
        return new TuningNote.Tally(inWindow, joints, silentMisses).words();
    }
}
