package org.shutoffbench.controller.signal;

/**
 * Kalman filter of a level that rises with some abscissa at a slowly changing slope: level += slope times the step,
 * measured with known variance. Two states, written out.
 */
public final class RampKalman {

    private float level;
    private float slope;
    private float varianceOfLevel;
    private float covariance;
    private float varianceOfSlope;

    /** Starts from a level and a slope known with variances. */
    public void reset(float startLevel, float levelVariance, float startSlope, float slopeVariance) {
        level = startLevel;
        slope = startSlope;
        varianceOfLevel = levelVariance;
        covariance = 0;
        varianceOfSlope = slopeVariance;
    }

    /** Moves along the abscissa; the variances of both states grow by what they may have wandered. */
    public void predict(float step, float levelWander, float slopeWander) {
        level += slope * step;
        varianceOfLevel += step * (2 * covariance + step * varianceOfSlope) + levelWander;
        covariance += step * varianceOfSlope;
        varianceOfSlope += slopeWander;
    }

    /** Takes a measured level; one that is not finite is skipped. */
    public void update(float measuredLevel, float variance) {
        float total = varianceOfLevel + variance;
        float innovation = measuredLevel - level;
        if (!Float.isFinite(innovation) || !(total > 0 && total < Float.POSITIVE_INFINITY)) {
            return;
        }
        float gainOfLevel = varianceOfLevel / total;
        float gainOfSlope = covariance / total;
        level += gainOfLevel * innovation;
        slope += gainOfSlope * innovation;
        varianceOfSlope -= gainOfSlope * covariance;
        covariance -= gainOfLevel * covariance;
        varianceOfLevel -= gainOfLevel * varianceOfLevel;
    }

    public float level() {
        return level;
    }

    public float slope() {
        return slope;
    }

    public float varianceOfLevel() {
        return varianceOfLevel;
    }
}
