package org.shutoffbench.sensor;

/**
 * The sensor of one quantity. A reading comes about in this order: low pass, latency, gain and offset, noise, range,
 * resolution, faults. Units are those of the quantity.
 *
 * @param rateHz readings per second, a divisor of the tool's sample rate; between readings the last one is repeated. 0: as
 *     often as the tool samples
 * @param latencyNs age of what is read, ns
 * @param lowPass bandwidth
 * @param resolution readings are multiples of it; 0 for none
 * @param minimum least reading
 * @param maximum greatest reading
 * @param gainError standard deviation of the gain over tools, as a share of 1 (normal, cut at 4)
 * @param offsetError standard deviation of the offset over tools (normal, cut at 4)
 * @param noise standard deviation of white noise at every reading
 * @param faults drop-outs and sticking
 */
public record ChannelSensor(
        int rateHz,
        long latencyNs,
        LowPass lowPass,
        double resolution,
        double minimum,
        double maximum,
        double gainError,
        double offsetError,
        double noise,
        Faults faults) {

    /** Reads the truth at every sample. */
    public static final ChannelSensor IDEAL = new ChannelSensor(
            0, 0, LowPass.NONE, 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0, 0, 0, Faults.NONE);

    private static final long LONGEST_LATENCY_NS = 1_000_000_000L;

    public ChannelSensor {
        if (rateHz < 0) {
            throw new IllegalArgumentException("rate must not be negative");
        }
        if (latencyNs < 0 || latencyNs > LONGEST_LATENCY_NS) {
            throw new IllegalArgumentException("latency must lie between 0 and 1 s");
        }
        requireSize(resolution, "resolution");
        requireSize(gainError, "gain error");
        requireSize(offsetError, "offset error");
        requireSize(noise, "noise");
        if (!(minimum < maximum)) {
            throw new IllegalArgumentException("range must have its minimum below its maximum");
        }
    }

    public ChannelSensor withRateHz(int value) {
        return new ChannelSensor(
                value, latencyNs, lowPass, resolution, minimum, maximum, gainError, offsetError, noise, faults);
    }

    public ChannelSensor withLatencyNs(long value) {
        return new ChannelSensor(
                rateHz, value, lowPass, resolution, minimum, maximum, gainError, offsetError, noise, faults);
    }

    public ChannelSensor withLowPass(LowPass value) {
        return new ChannelSensor(
                rateHz, latencyNs, value, resolution, minimum, maximum, gainError, offsetError, noise, faults);
    }

    public ChannelSensor withResolution(double value) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, value, minimum, maximum, gainError, offsetError, noise, faults);
    }

    public ChannelSensor withRange(double least, double greatest) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, resolution, least, greatest, gainError, offsetError, noise, faults);
    }

    public ChannelSensor withGainError(double value) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, resolution, minimum, maximum, value, offsetError, noise, faults);
    }

    public ChannelSensor withOffsetError(double value) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, resolution, minimum, maximum, gainError, value, noise, faults);
    }

    public ChannelSensor withNoise(double value) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, resolution, minimum, maximum, gainError, offsetError, value, faults);
    }

    public ChannelSensor withFaults(Faults value) {
        return new ChannelSensor(
                rateHz, latencyNs, lowPass, resolution, minimum, maximum, gainError, offsetError, noise, value);
    }

    private static void requireSize(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be finite and not negative");
        }
    }
}
