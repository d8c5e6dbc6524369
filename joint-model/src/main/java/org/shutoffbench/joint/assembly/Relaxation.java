package org.shutoffbench.joint.assembly;

/**
 * Short-term relaxation: clamp force falls by a share with every decade of time since the stop.
 *
 * @param sharePerDecade share of the clamp force lost per factor of ten in time, in [0, 1)
 * @param onsetS time constant from which decades count, s; positive
 */
public record Relaxation(double sharePerDecade, double onsetS) {

    /** Steel parts: 1 % per decade from 1 s on (assumed). */
    public static final Relaxation ASSUMED_STEEL = new Relaxation(0.01, 1);

    /** Painted or gasketed parts: 4 % per decade from 1 s on (assumed). */
    public static final Relaxation ASSUMED_SOFT = new Relaxation(0.04, 1);

    public Relaxation {
        if (!(sharePerDecade >= 0 && sharePerDecade < 1) || !(onsetS > 0 && onsetS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("relaxation needs a share in [0, 1) and a positive onset");
        }
    }

    /** Clamp force in N at a time in s after the stop, never below 0. */
    public double forceN(double initialForceN, double timeS) {
        return Math.max(0, initialForceN * (1 - sharePerDecade * Math.log10(1 + timeS / onsetS)));
    }
}
