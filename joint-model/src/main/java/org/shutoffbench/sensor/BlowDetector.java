package org.shutoffbench.sensor;

/**
 * Detector that counts blows from the shock in the housing. The shock is proportional to the lug torque T_c, whose peak at a
 * first contact is proportional to the hammer's speed there; bounces follow within the same shock and are not counted again,
 * except by a doubled report.
 *
 * @param latencyNs least time from contact to report, ns; at most 100 ms
 * @param jitterS root mean square of the further delay, s; at most 10 ms. The delay is the size of a normal
 *     number, for a report cannot come before its blow
 * @param missedShare share of blows that are not reported, in [0, 1]
 * @param doubledShare share of blows that are reported twice, in [0, 1]; missed and doubled together at most 1
 * @param doubledAfterNs time from a report to its double, ns: about the hold-off after which a detector listens again; at most 100 ms
 * @param leastHammerSpeedRadPerS slower first contacts are not seen, rad/s
 */
public record BlowDetector(
        long latencyNs,
        double jitterS,
        double missedShare,
        double doubledShare,
        long doubledAfterNs,
        double leastHammerSpeedRadPerS) {

    /** Reports every blow once, at the next sample. */
    public static final BlowDetector IDEAL = new BlowDetector(0, 0, 0, 0, 0, 0);

    private static final long LONGEST_NS = 100_000_000;
    private static final double LARGEST_JITTER_S = 0.01;

    public BlowDetector {
        if (latencyNs < 0 || latencyNs > LONGEST_NS || doubledAfterNs < 0 || doubledAfterNs > LONGEST_NS) {
            throw new IllegalArgumentException("times of a blow detector must lie between 0 and 100 ms");
        }
        if (!(jitterS >= 0 && jitterS <= LARGEST_JITTER_S)) {
            throw new IllegalArgumentException("jitter must lie between 0 and 10 ms");
        }
        Faults.requireProbability(missedShare, "share of missed blows");
        Faults.requireProbability(doubledShare, "share of doubled blows");
        Faults.requireProbability(missedShare + doubledShare, "share of missed and doubled blows together");
        if (!(leastHammerSpeedRadPerS >= 0 && leastHammerSpeedRadPerS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("least hammer speed must be finite and not negative");
        }
    }
}
