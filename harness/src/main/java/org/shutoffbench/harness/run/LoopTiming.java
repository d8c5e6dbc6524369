package org.shutoffbench.harness.run;

import org.shutoffbench.sensor.SensorSuite;

/**
 * The clockwork of a closed loop, in whole ticks.
 *
 * @param samplePeriodNs time between samples, ns; positive
 * @param latencyTicks how many ticks a command needs beyond the one after its sample; not negative
 * @param timeLimitTicks tick at which a tightening that has not stopped is ended; positive
 */
public record LoopTiming(long samplePeriodNs, int latencyTicks, int timeLimitTicks) {

    private static final long NS_PER_S = 1_000_000_000;

    public LoopTiming {
        if (samplePeriodNs <= 0 || latencyTicks < 0 || timeLimitTicks <= 0) {
            throw new IllegalArgumentException("period and time limit must be positive, the latency not negative");
        }
    }

    /**
     * The clockwork of a sensor suite: a command acts at the next tick, or after the latency, rounded up to whole ticks.
     *
     * @param timeLimitS time limit of a tightening, s
     */
    public static LoopTiming of(SensorSuite suite, double timeLimitS) {
        long periodNs = suite.periodNs();
        long latency = Math.max(1, (suite.commandLatencyNs() + periodNs - 1) / periodNs) - 1;
        return new LoopTiming(periodNs, (int) latency, (int) Math.round(timeLimitS * NS_PER_S / periodNs));
    }

    /** Time of a tick in s: the very double at which the sensors are sampled. */
    public double timeS(int tick) {
        return tick * ((double) samplePeriodNs / NS_PER_S);
    }
}
