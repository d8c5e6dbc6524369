package org.shutoffbench.controller.strategy.adaptive;

/**
 * Measures how restless the arm is: between two blows the nut rests, so what its angle does there is sway and noise. The
 * variance of a measured step of the nut follows from it.
 *
 * <p>A step compares two averages over sqrt(r/q); their variance grows with sqrt(q r), that of the gap between them with q.
 */
final class SwayGauge {

    /** As many rests as the believed level counts for. */
    private static final float BELIEVED = 10;
    /** Share of a step's variance that comes from the two averages, 1. */
    private static final float AVERAGES = 0.7f;
    /** Variance of the drift over one rest, over that of a step: (q 0.014 s + 2 sqrt(q r)) / (q 1.2 ms + 2 sqrt(q r)). */
    private static final float DRIFT_OVER_STEP = 4;
    /** Drifts beyond so many standard deviations are cut: a blow that nobody reported. */
    private static final float CUT = 3;

    private final float believedVariance;
    private float count;
    private float sum;

    SwayGauge(float stepNoiseRad) {
        believedVariance = stepNoiseRad * stepNoiseRad;
    }

    void reset() {
        count = BELIEVED;
        sum = BELIEVED;
    }

    void hear(float driftRad) {
        float square = driftRad * driftRad / (DRIFT_OVER_STEP * believedVariance);
        count++;
        sum += Math.min(square, CUT * CUT * sum / count);
    }

    /** Variance of the drifts over the believed one, pulled towards 1 while few were heard. */
    float restlessness() {
        return sum / count;
    }

    /** Variance of a measured step, rad^2. */
    float stepVariance() {
        float restlessness = restlessness();
        return believedVariance * (AVERAGES * (float) Math.sqrt(restlessness) + (1 - AVERAGES) * restlessness);
    }

    /** Variance of the nut's advance from rest to rest where it moves for long, rad^2. */
    float driftVariance() {
        return believedVariance * DRIFT_OVER_STEP * 1.5f * sum / count;
    }
}
