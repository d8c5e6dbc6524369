package org.shutoffbench.harness.run;

/**
 * The clockwork of a closed loop, in whole ticks.
 *
 * @param samplePeriodNs time between samples, ns; positive
 * @param latencyTicks how many ticks a command needs beyond the one after its sample; not negative
 * @param timeLimitTicks tick at which a tightening that has not stopped is ended; positive
 */
public record LoopTiming(long samplePeriodNs, int latencyTicks, int timeLimitTicks) {

    public LoopTiming {
        if (samplePeriodNs <= 0 || latencyTicks < 0 || timeLimitTicks <= 0) {
            throw new IllegalArgumentException("period and time limit must be positive, the latency not negative");
        }
    }

    /** Time of a tick in s: the very double at which sensors are sampled. */
    public double timeS(int tick) {
        return (double) (tick * samplePeriodNs) / 1_000_000_000;
    }
}
