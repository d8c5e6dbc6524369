package org.shutoffbench.joint.prevailing;

/**
 * What is left of prevailing torque when a nut is used again.
 *
 * @param firstLoss share lost by the first seating, in [0, 1)
 * @param laterLoss share lost by each later seating, in [0, 1)
 */
public record ReuseDecay(double firstLoss, double laterLoss) {

    /** Least and most that a first seating was seen to take (source key {@code Zimandy2013}). */
    public static final double FIRST_LOSS_LEAST = 0.10;

    public static final double FIRST_LOSS_MOST = 0.25;

    /** Middle of the published first loss; 5 % at each later seating (assumed). */
    public static final ReuseDecay TYPICAL = new ReuseDecay((FIRST_LOSS_LEAST + FIRST_LOSS_MOST) / 2, 0.05);

    public ReuseDecay {
        if (!(firstLoss >= 0 && firstLoss < 1) || !(laterLoss >= 0 && laterLoss < 1)) {
            throw new IllegalArgumentException("losses must be shares in [0, 1)");
        }
    }

    /**
     * Share of the first prevailing torque that is left.
     *
     * @param repeat number of earlier seatings; not negative
     */
    public double factor(int repeat) {
        if (repeat < 0) {
            throw new IllegalArgumentException("repeat must not be negative");
        }
        return repeat == 0 ? 1 : (1 - firstLoss) * Math.pow(1 - laterLoss, repeat - 1);
    }
}
