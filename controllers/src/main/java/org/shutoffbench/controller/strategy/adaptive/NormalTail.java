package org.shutoffbench.controller.strategy.adaptive;

/** Tail of the normal distribution, Abramowitz and Stegun 26.2.17 (absolute error below 1e-6 in single precision). */
final class NormalTail {

    private static final float P = (float) 0.2316419;
    private static final float B1 = (float) 0.319381530;
    private static final float B2 = (float) -0.356563782;
    private static final float B3 = (float) 1.781477937;
    private static final float B4 = (float) -1.821255978;
    private static final float B5 = (float) 1.330274429;
    private static final float ONE_OVER_ROOT_TWO_PI = (float) 0.3989422804;

    private NormalTail() {}

    /** Probability that a standard normal number exceeds z. */
    static float above(float z) {
        float size = Math.abs(z);
        float t = 1 / (1 + P * size);
        float poly = t * (B1 + t * (B2 + t * (B3 + t * (B4 + t * B5))));
        float tail = ONE_OVER_ROOT_TWO_PI * (float) Math.exp(-0.5f * size * size) * poly;
        return z >= 0 ? tail : 1 - tail;
    }
}
