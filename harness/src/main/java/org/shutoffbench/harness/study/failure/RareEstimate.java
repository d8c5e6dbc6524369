package org.shutoffbench.harness.study.failure;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.Interval;

/**
 * The probability of a failure by one method.
 *
 * @param method "subset simulation", "importance sampling" or "plain sampling"
 * @param estimate probability
 * @param interval with the stated confidence
 * @param effectiveSamples plain samples that would tell as much; null where nothing failed
 * @param tightenings spent
 */
public record RareEstimate(
        String method,
        double estimate,
        Interval interval,
        @Nullable Double effectiveSamples,
        long tightenings) {

    /** Whether the intervals of two methods meet. */
    public boolean agreesWith(RareEstimate other) {
        return interval.low() <= other.interval.high() && other.interval.low() <= interval.high();
    }
}
