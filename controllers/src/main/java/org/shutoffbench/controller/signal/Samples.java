package org.shutoffbench.controller.signal;

/** Durations in whole samples. */
final class Samples {

    private Samples() {}

    /** The nearest number of samples to a duration, at least a given one. */
    static int in(float durationS, int sampleRateHz, int atLeast) {
        return Math.max(atLeast, Math.round(durationS * sampleRateHz));
    }
}
