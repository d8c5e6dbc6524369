package org.shutoffbench.controller.signal;

import java.util.Arrays;

/**
 * Fits y = x . theta to samples that come one by one, without keeping them. With forgetting factor 1 it equals the batch
 * solution of (X'X + I/p0) theta = X'y, p0 the variance it starts from.
 */
public final class RecursiveLeastSquares {

    private final int n;
    private final float forgetting;
    private final float startVariance;
    private final float[] theta;
    private final float[] p;
    private final float[] px;

    /**
     * @param parameters number of parameters
     * @param forgetting weight of the past at each new sample, in (0, 1]; 1 forgets nothing
     * @param startVariance variance of each parameter before the first sample
     */
    public RecursiveLeastSquares(int parameters, float forgetting, float startVariance) {
        if (!(parameters > 0 && forgetting > 0 && forgetting <= 1 && startVariance > 0)) {
            throw new IllegalArgumentException("parameters and variance positive, forgetting in (0, 1]");
        }
        this.n = parameters;
        this.forgetting = forgetting;
        this.startVariance = startVariance;
        this.theta = new float[n];
        this.p = new float[n * n];
        this.px = new float[n];
        reset();
    }

    /** Forgets all samples. */
    public void reset() {
        Arrays.fill(theta, 0);
        Arrays.fill(p, 0);
        for (int i = 0; i < n; i++) {
            p[i * n + i] = startVariance;
        }
    }

    /** Takes one sample; {@code x} has one entry per parameter and is not kept. A sample that is not finite is skipped. */
    public void update(float[] x, float y) {
        float scale = forgetting;
        float predicted = 0;
        for (int i = 0; i < n; i++) {
            float sum = 0;
            for (int j = 0; j < n; j++) {
                sum += p[i * n + j] * x[j];
            }
            px[i] = sum;
            scale += x[i] * sum;
            predicted += x[i] * theta[i];
        }
        float residual = y - predicted;
        if (!Float.isFinite(residual) || !(scale > 0 && scale < Float.POSITIVE_INFINITY)) {
            return;
        }
        for (int i = 0; i < n; i++) {
            theta[i] += px[i] / scale * residual;
            for (int j = 0; j <= i; j++) {
                float value = (p[i * n + j] - px[i] * px[j] / scale) / forgetting;
                p[i * n + j] = value;
                p[j * n + i] = value;
            }
        }
    }

    /** Estimate of parameter i. */
    public float parameter(int i) {
        return theta[i];
    }
}
