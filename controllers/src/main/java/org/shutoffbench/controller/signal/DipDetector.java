package org.shutoffbench.controller.signal;

/**
 * Finds blows in the carrier's speed alone. After a blow the hammer rebounds and, about 6 ms later, the cam reaches the end of
 * its groove: the carrier loses a quarter of its speed within half a millisecond, which nothing else does at steady
 * drive. A blow on a spinning nut rebounds too little to be seen; the first lift-off at seating is seen although no blow
 * went before it.
 */
public final class DipDetector {

    private static final float LOOK_BACK_S = 8e-4f;
    private static final float DEAF_S = 8e-3f;

    private final float leastFraction;
    private final RingBuffer past;
    private final int deafSamples;
    private int deaf;

    /**
     * @param leastFraction fall within 0.8 ms over the speed before it that counts as a dip, in (0, 1)
     * @param sampleRateHz samples per second
     */
    public DipDetector(float leastFraction, int sampleRateHz) {
        if (!(leastFraction > 0 && leastFraction < 1)) {
            throw new IllegalArgumentException("the least fall must lie between 0 and 1");
        }
        this.leastFraction = leastFraction;
        this.past = new RingBuffer(Samples.in(LOOK_BACK_S, sampleRateHz, 1) + 1);
        this.deafSamples = Samples.in(DEAF_S, sampleRateHz, 2);
    }

    public void reset() {
        past.clear();
        deaf = 0;
    }

    /** Takes a sample of carrier speed, rad/s; true at the sample where a dip shows, once per dip. */
    public boolean update(float speedRadPerS) {
        past.add(speedRadPerS);
        if (deaf > 0) {
            deaf--;
            return false;
        }
        float before = past.get(past.size() - 1);
        boolean dip = before - speedRadPerS > leastFraction * before;
        if (dip) {
            deaf = deafSamples;
        }
        return dip;
    }

    /** Speed before the newest sample by the look-back time, rad/s: the speed before the dip where one was just found. */
    public float speedBeforeRadPerS() {
        return past.get(past.size() - 1);
    }
}
