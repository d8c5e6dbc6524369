package org.shutoffbench.controller.signal;

/**
 * Kalman filter of one level that wanders: x(k+1) = x(k) + w, z = x + v, variances Q of w and R of v. With both constant
 * the variance before a measurement settles at (Q + sqrt(Q^2 + 4 Q R))/2.
 */
public final class RandomWalkKalman {

    private float level;
    private float variance;

    /** Starts from a level known with a variance; a variance of infinity stands for unknown. */
    public void reset(float level, float variance) {
        this.level = level;
        this.variance = variance;
    }

    /** One step of the walk: the level moves by a known amount and the variance grows. */
    public void predict(float move, float processVariance) {
        level += move;
        variance += processVariance;
    }

    /** Takes a measurement; one that is not finite is skipped. */
    public void update(float measurement, float measurementVariance) {
        if (!Float.isFinite(measurement)) {
            return;
        }
        if (Float.isInfinite(variance)) {
            level = measurement;
            variance = measurementVariance;
            return;
        }
        float gain = variance / (variance + measurementVariance);
        level += gain * (measurement - level);
        variance *= 1 - gain;
    }

    public float level() {
        return level;
    }

    public float variance() {
        return variance;
    }
}
