package org.shutoffbench.controller.signal;

/**
 * First-order low pass y' = (x - y)/tau, exact for an input held constant between samples. The first finite sample after a reset sets the
 * output; samples that are not finite leave it unchanged.
 */
public final class FirstOrderLowPass {

    private final float weight;
    private float output = Float.NaN;

    /**
     * @param cutoffHz frequency at which the amplitude has fallen by 3 dB
     * @param periodS sample period, s
     */
    public FirstOrderLowPass(float cutoffHz, float periodS) {
        if (!(cutoffHz > 0 && periodS > 0)) {
            throw new IllegalArgumentException("cut-off frequency and period must be positive");
        }
        this.weight = (float) -Math.expm1(-2 * Math.PI * cutoffHz * periodS);
    }

    /** Forgets everything. */
    public void reset() {
        output = Float.NaN;
    }

    /** Sets the output. */
    public void reset(float value) {
        output = value;
    }

    /** Takes a sample and returns the new output; NaN before the first finite sample. */
    public float update(float sample) {
        if (Float.isFinite(sample)) {
            output = Float.isNaN(output) ? sample : output + weight * (sample - output);
        }
        return output;
    }

    public float output() {
        return output;
    }
}
