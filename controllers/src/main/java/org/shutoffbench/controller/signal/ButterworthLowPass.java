package org.shutoffbench.controller.signal;

/**
 * Second-order Butterworth low pass: two trapezoidal integrators in a loop, which is the bilinear transform with the
 * cut-off frequency matched. This form keeps its accuracy in single precision where the cut-off lies far below the
 * sample rate, and passes a constant exactly. Starts settled at the first finite sample; samples that are not finite
 * leave it unchanged.
 */
public final class ButterworthLowPass {

    private final float a1;
    private final float a2;
    private final float a3;
    private float rate;
    private float level = Float.NaN;
    private float output = Float.NaN;

    /**
     * @param cutoffHz frequency at which the amplitude has fallen by 3 dB; below half the sample rate
     * @param periodS sample period, s
     */
    public ButterworthLowPass(float cutoffHz, float periodS) {
        if (!(cutoffHz > 0 && periodS > 0 && cutoffHz * periodS < 0.5f)) {
            throw new IllegalArgumentException("cut-off frequency must lie between 0 and half the sample rate");
        }
        double g = Math.tan(Math.PI * cutoffHz * periodS);
        double norm = 1 / (1 + g * (g + Math.sqrt(2)));
        this.a1 = (float) norm;
        this.a2 = (float) (g * norm);
        this.a3 = (float) (g * g * norm);
    }

    /** Forgets everything. */
    public void reset() {
        rate = 0;
        level = Float.NaN;
        output = Float.NaN;
    }

    /** Takes a sample and returns the new output; NaN before the first finite sample. */
    public float update(float sample) {
        if (!Float.isFinite(sample)) {
            return output;
        }
        if (Float.isNaN(level)) {
            level = sample;
        }
        float ahead = sample - level;
        float band = a1 * rate + a2 * ahead;
        output = level + a2 * rate + a3 * ahead;
        rate = 2 * band - rate;
        level = 2 * output - level;
        return output;
    }

    public float output() {
        return output;
    }
}
