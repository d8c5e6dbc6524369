package org.shutoffbench.controller.signal;

/**
 * One-sided cumulative sum: finds a lasting rise of a signal's mean soonest for a given rate of false alarms ({@code Page1954} in
 * docs/references.md).
 * S = max(0, S + x - k), alarm when S exceeds h.
 */
public final class Cusum {

    private final float allowance;
    private final float threshold;
    private float sum;

    /**
     * @param allowance k, in the unit of the samples; half the rise that matters
     * @param threshold h, in the unit of the samples
     */
    public Cusum(float allowance, float threshold) {
        if (!(allowance >= 0 && threshold > 0)) {
            throw new IllegalArgumentException("allowance must not be negative, threshold must be positive");
        }
        this.allowance = allowance;
        this.threshold = threshold;
    }

    public void reset() {
        sum = 0;
    }

    /** Takes the deviation of a sample from the mean before the change; true on alarm. NaN is skipped. */
    public boolean update(float deviation) {
        float next = sum + deviation - allowance;
        if (!Float.isNaN(next)) {
            sum = Math.max(0, next);
        }
        return sum > threshold;
    }

    /** The sum S, in the unit of the samples; not negative. */
    public float sum() {
        return sum;
    }
}
