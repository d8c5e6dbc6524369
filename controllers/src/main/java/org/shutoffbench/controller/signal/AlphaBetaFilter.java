package org.shutoffbench.controller.signal;

/**
 * Tracks a level and its rate of change from noisy samples with fixed gains ({@code Kalata1984} in
 * docs/references.md). Samples that are not finite are predicted over.
 */
public final class AlphaBetaFilter {

    private final float alpha;
    private final float beta;
    private final float periodS;
    private float level = Float.NaN;
    private float ratePerS;

    /**
     * @param alpha gain of the level, in (0, 1]
     * @param beta gain of the rate, in (0, 4 - 2 alpha) for stability
     * @param periodS sample period, s
     */
    public AlphaBetaFilter(float alpha, float beta, float periodS) {
        if (!(alpha > 0 && alpha <= 1 && beta > 0 && beta < 4 - 2 * alpha && periodS > 0)) {
            throw new IllegalArgumentException("alpha in (0, 1], beta in (0, 4 - 2 alpha), period positive");
        }
        this.alpha = alpha;
        this.beta = beta;
        this.periodS = periodS;
    }

    /**
     * The filter that is optimal in the steady state for a tracking index: process noise (acceleration) over measurement noise,
     * sigma_w T^2 / sigma_v.
     */
    public static AlphaBetaFilter forTrackingIndex(float index, float periodS) {
        if (!(index > 0)) {
            throw new IllegalArgumentException("tracking index must be positive");
        }
        double r = (4 + index - Math.sqrt(8 * index + index * index)) / 4;
        double alpha = 1 - r * r;
        double beta = 2 * (2 - alpha) - 4 * Math.sqrt(1 - alpha);
        return new AlphaBetaFilter((float) alpha, (float) beta, periodS);
    }

    /** Forgets everything. */
    public void reset() {
        level = Float.NaN;
        ratePerS = 0;
    }

    /** Takes a sample; the first finite one sets the level, at rate 0. */
    public void update(float sample) {
        if (Float.isNaN(level)) {
            if (Float.isFinite(sample)) {
                level = sample;
            }
            return;
        }
        level += ratePerS * periodS;
        if (Float.isFinite(sample)) {
            float residual = sample - level;
            level += alpha * residual;
            ratePerS += beta / periodS * residual;
        }
    }

    /** Filtered level in the unit of the samples; NaN before the first finite sample. */
    public float level() {
        return level;
    }

    /** Rate of change, unit of the samples per second. */
    public float ratePerS() {
        return ratePerS;
    }

    public float alpha() {
        return alpha;
    }

    public float beta() {
        return beta;
    }
}
