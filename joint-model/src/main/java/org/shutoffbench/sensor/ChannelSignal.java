package org.shutoffbench.sensor;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.draw.NoiseStream;

/** One channel in a run: from what the sensor element feels at each tick to what the electronics read. */
final class ChannelSignal {

    private static final int NOISE = 0;
    private static final int DROP_OUT = 1;
    private static final int STICKING = 2;
    private static final int BRANCHES = 3;
    private static final long NEVER = Long.MAX_VALUE;

    private final Quantity quantity;
    private final Faults faults;
    private final boolean canFail;
    /** Every sample is read as it is felt. */
    private final boolean readsAtOnce;

    private final int everyTicks;
    private final double noise;
    private final double minimum;
    private final double maximum;
    private final double resolution;
    private final double perResolution;
    private final long dropOutNs;
    private final long periodNs;
    private final @Nullable LinearFilter lowPass;
    private final @Nullable DelayLine delay;

    private double gain;
    private double offset;
    private long noiseKey;
    private long dropOutKey;
    private long stuckFromTick;
    private double lastInput;
    private float held;

    /**
     * @param filtersHere false where the signal arrives through its low pass already
     */
    ChannelSignal(Quantity quantity, ChannelSensor sensor, SensorSuite suite, boolean filtersHere) {
        this.quantity = quantity;
        faults = sensor.faults();
        canFail = !faults.areNone();
        periodNs = suite.periodNs();
        everyTicks = sensor.rateHz() == 0 ? 1 : suite.rateHz() / sensor.rateHz();
        noise = sensor.noise();
        minimum = sensor.minimum();
        maximum = sensor.maximum();
        resolution = sensor.resolution();
        perResolution = resolution > 0 ? 1 / resolution : 0;
        dropOutNs = faults.dropOutNs();
        lowPass = filtersHere && !sensor.lowPass().isNone()
                ? new LinearFilter(LinearStep.of(sensor.lowPass(), suite.periodS()))
                : null;
        delay = sensor.latencyNs() > 0 ? new DelayLine(sensor.latencyNs(), periodNs) : null;
        readsAtOnce = lowPass == null && delay == null && everyTicks == 1 && !canFail;
    }

    void start(SensorErrors errors, long runKey) {
        gain = errors.gain(quantity);
        offset = errors.offset(quantity);
        int firstBranch = BRANCHES * quantity.code();
        noiseKey = NoiseStream.branch(runKey, firstBranch + NOISE);
        dropOutKey = NoiseStream.branch(runKey, firstBranch + DROP_OUT);
        stuckFromTick = canFail ? stuckFromTick(NoiseStream.branch(runKey, firstBranch + STICKING)) : NEVER;
        held = Float.NaN;
    }

    private long stuckFromTick(long key) {
        if (NoiseStream.uniform(key, 0) >= faults.stuckProbability()) {
            return NEVER;
        }
        return 1 + (long) (NoiseStream.uniform(key, 1) * faults.stuckWithinNs() / periodNs);
    }

    /** The reading at a tick. Ticks must come one after the other from 0. */
    float read(long tick, double input) {
        return readsAtOnce ? reading(tick, input) : readBehindElectronics(tick, input);
    }

    private float reading(long tick, double signal) {
        return quantised(gain * signal + offset + whiteNoise(tick));
    }

    private float readBehindElectronics(long tick, double input) {
        if (tick == 0) {
            settle(input);
        }
        double signal = input;
        if (lowPass != null) {
            signal = lowPass.advance(lastInput, input);
            lastInput = input;
        }
        if (delay != null) {
            signal = delay.push(signal);
        }
        if (everyTicks != 1 && tick % everyTicks != 0) {
            return held;
        }
        float reading = reading(tick, signal);
        held = canFail ? withFaults(tick, reading) : reading;
        return held;
    }

    /** Before the first sample everything has long been as it is then. */
    private void settle(double input) {
        lastInput = input;
        if (lowPass != null) {
            lowPass.settle(input);
        }
        if (delay != null) {
            delay.fill(input);
        }
    }

    private double whiteNoise(long tick) {
        return noise == 0 ? 0 : noise * NoiseStream.normal(noiseKey, tick);
    }

    private float quantised(double value) {
        double inRange = value > maximum ? maximum : value < minimum ? minimum : value;
        return (float) (perResolution == 0 ? inRange : Math.rint(inRange * perResolution) * resolution);
    }

    private float withFaults(long tick, float reading) {
        if (tick >= stuckFromTick) {
            return held;
        }
        boolean lost = NoiseStream.uniform(dropOutKey, tick * periodNs / dropOutNs) < faults.dropOutShare();
        return lost ? Float.NaN : reading;
    }

    void copyFrom(ChannelSignal other) {
        gain = other.gain;
        offset = other.offset;
        noiseKey = other.noiseKey;
        dropOutKey = other.dropOutKey;
        stuckFromTick = other.stuckFromTick;
        lastInput = other.lastInput;
        held = other.held;
        if (lowPass != null && other.lowPass != null) {
            lowPass.copyFrom(other.lowPass);
        }
        if (delay != null && other.delay != null) {
            delay.copyFrom(other.delay);
        }
    }
}
