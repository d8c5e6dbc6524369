package org.shutoffbench.sensor;

/**
 * Bandwidth of a sensor.
 *
 * @param order 0 no limit, 1 first order, 2 second-order Butterworth (damping 1/sqrt(2))
 * @param cutoffHz frequency at which the amplitude falls to 1/sqrt(2), Hz; infinite for order 0
 */
public record LowPass(int order, double cutoffHz) {

    /** No limit. */
    public static final LowPass NONE = new LowPass(0, Double.POSITIVE_INFINITY);

    public LowPass {
        if (order < 0 || order > 2) {
            throw new IllegalArgumentException("order of a low pass must be 0, 1 or 2");
        }
        if (order == 0 ? cutoffHz != Double.POSITIVE_INFINITY : !(cutoffHz > 0 && cutoffHz < 1e9)) {
            throw new IllegalArgumentException(
                    "cutoff frequency must be positive and finite, and infinite for order 0");
        }
    }

    public static LowPass firstOrder(double cutoffHz) {
        return new LowPass(1, cutoffHz);
    }

    /** Second-order Butterworth. */
    public static LowPass butterworth(double cutoffHz) {
        return new LowPass(2, cutoffHz);
    }

    boolean isNone() {
        return order == 0;
    }
}
