package org.shutoffbench.harness.study.tuning;

import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.Event;

/**
 * What one candidate made of the tuning joints.
 *
 * @param joints tightened
 * @param inWindow outcome in window
 * @param squaredDeviation sum over joints of ((quantity - target) / target)^2
 * @param reachedInWindow verdict REACHED among those in window
 * @param silentMisses verdict REACHED on unseated or low joints
 * @param faults ended by a fault of the strategy
 */
record Score(
        long joints, long inWindow, double squaredDeviation, long reachedInWindow, long silentMisses, long faults) {

    static final Score NONE = new Score(0, 0, 0, 0, 0, 0);

    static Score of(TighteningRecord record, double deviation) {
        boolean reached = record.verdict() == Verdict.REACHED;
        boolean in = record.outcome() == Outcome.IN_WINDOW;
        boolean silent = Event.SILENT_MISS.holds(record.outcome(), record.verdict());
        boolean fault = record.endReason() == EndReason.FAULT;
        return new Score(1, in ? 1 : 0, deviation * deviation, reached && in ? 1 : 0, silent ? 1 : 0, fault ? 1 : 0);
    }

    Score plus(Score other) {
        return new Score(
                joints + other.joints,
                inWindow + other.inWindow,
                squaredDeviation + other.squaredDeviation,
                reachedInWindow + other.reachedInWindow,
                silentMisses + other.silentMisses,
                faults + other.faults);
    }

    /** To be made small: more joints in the window come first, then less mean squared deviation. */
    double loss() {
        double spread = squaredDeviation / joints;
        return -inWindow + spread / (1 + spread);
    }
}
