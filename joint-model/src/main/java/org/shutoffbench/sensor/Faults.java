package org.shutoffbench.sensor;

/**
 * What can go wrong with a channel in a run.
 *
 * @param dropOutShare share of time in which readings are lost (NaN), in [0, 1]
 * @param dropOutNs length of the pieces of time that are lost as a whole, ns; at least 1
 * @param stuckProbability chance that the channel sticks in a run: from then on it repeats its last reading, in [0, 1]
 * @param stuckWithinNs time from the start within which it sticks, all instants alike, ns; at least 1
 */
public record Faults(double dropOutShare, long dropOutNs, double stuckProbability, long stuckWithinNs) {

    /** Nothing goes wrong. */
    public static final Faults NONE = new Faults(0, 1, 0, 1);

    public Faults {
        requireProbability(dropOutShare, "drop-out share");
        requireProbability(stuckProbability, "probability of sticking");
        if (dropOutNs < 1 || stuckWithinNs < 1) {
            throw new IllegalArgumentException("times of faults must be positive");
        }
    }

    /** Readings are lost for a share of the time, in pieces of a given length. */
    public static Faults dropOuts(double share, long pieceNs) {
        return new Faults(share, pieceNs, 0, 1);
    }

    /** The same drop-outs, and the channel may stick within a time from the start. */
    public Faults andStuck(double probability, long withinNs) {
        return new Faults(dropOutShare, dropOutNs, probability, withinNs);
    }

    boolean areNone() {
        return dropOutShare == 0 && stuckProbability == 0;
    }

    static void requireProbability(double value, String name) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must lie in [0, 1]");
        }
    }
}
