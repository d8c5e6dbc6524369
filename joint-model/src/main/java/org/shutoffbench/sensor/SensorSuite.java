package org.shutoffbench.sensor;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All that a tool can sense, and how fast its electronics sample and act. Immutable.
 *
 * @param name as written in scenario files
 * @param rateHz samples per second; a divisor of 1e9, so that the period is a whole number of ns
 * @param commandLatencyNs time from the sample that a strategy answers with a command to the moment at which the motor
 *     follows, ns; a command never acts before the next sample
 * @param channels sensors by quantity; what is not here the tool lacks. {@link Quantity#BLOWS} is never here
 * @param blowDetector the blow detector, or null where there is none
 * @param arm motion of the housing
 * @param nominalVoltageV nominal supply voltage; with the motor's no-load speed it gives the torque constant, V
 * @param accelerationPerTorque housing acceleration per lug torque T_c, (m/s^2)/(N m)
 */
public record SensorSuite(
        String name,
        int rateHz,
        long commandLatencyNs,
        Map<Quantity, ChannelSensor> channels,
        @Nullable BlowDetector blowDetector,
        ArmMotion arm,
        double nominalVoltageV,
        double accelerationPerTorque) {

    private static final int NS_PER_S = 1_000_000_000;

    public SensorSuite {
        if (rateHz < 1 || NS_PER_S % rateHz != 0) {
            throw new IllegalArgumentException("sample rate must be a divisor of 1e9 Hz");
        }
        if (commandLatencyNs < 0 || commandLatencyNs > NS_PER_S) {
            throw new IllegalArgumentException("command latency must lie between 0 and 1 s");
        }
        if (channels.containsKey(Quantity.BLOWS)) {
            throw new IllegalArgumentException("blows have a detector, not a channel sensor");
        }
        if (!(nominalVoltageV > 0 && nominalVoltageV < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("nominal voltage must be positive and finite");
        }
        if (!(accelerationPerTorque > 0 && accelerationPerTorque < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("acceleration per torque must be positive and finite");
        }
        EnumMap<Quantity, ChannelSensor> copy = new EnumMap<>(Quantity.class);
        copy.putAll(channels);
        copy.forEach((quantity, sensor) -> requireDivisor(quantity, sensor, rateHz));
        channels = Collections.unmodifiableMap(copy);
    }

    /** Sample period, ns. */
    public long periodNs() {
        return NS_PER_S / rateHz;
    }

    /** Sample period, s. */
    public double periodS() {
        return 1.0 / rateHz;
    }

    /** Time of a sample from the start, s: tick times {@link #periodS}. To be had like this everywhere, or bits differ. */
    public double timeS(long tick) {
        return tick * periodS();
    }

    /** What the tool can sense. */
    public Set<Quantity> quantities() {
        EnumMap<Quantity, Boolean> all = new EnumMap<>(Quantity.class);
        channels.keySet().forEach(quantity -> all.put(quantity, true));
        if (blowDetector != null) {
            all.put(Quantity.BLOWS, true);
        }
        return Collections.unmodifiableSet(all.keySet());
    }

    /** The sensor of a quantity, or null where the tool lacks it. */
    @Nullable
    ChannelSensor sensor(Quantity quantity) {
        return channels.get(quantity);
    }

    /** The same suite with a sensor added or replaced. */
    public SensorSuite with(Quantity quantity, ChannelSensor sensor) {
        EnumMap<Quantity, ChannelSensor> changed = new EnumMap<>(Quantity.class);
        changed.putAll(channels);
        changed.put(quantity, sensor);
        return with(changed, blowDetector, arm);
    }

    /** The same suite without a quantity. */
    public SensorSuite without(Quantity quantity) {
        EnumMap<Quantity, ChannelSensor> changed = new EnumMap<>(Quantity.class);
        changed.putAll(channels);
        changed.remove(quantity);
        return with(changed, quantity == Quantity.BLOWS ? null : blowDetector, arm);
    }

    /** The same suite with another blow detector. */
    public SensorSuite withBlowDetector(BlowDetector detector) {
        return with(channels, detector, arm);
    }

    /** The same suite held by another arm. */
    public SensorSuite withArm(ArmMotion other) {
        return with(channels, blowDetector, other);
    }

    /** The same suite with another name. */
    public SensorSuite named(String other) {
        return new SensorSuite(
                other, rateHz, commandLatencyNs, channels, blowDetector, arm, nominalVoltageV, accelerationPerTorque);
    }

    /** The same suite sampled and commanded at another pace. */
    public SensorSuite withPace(int sampleRateHz, long latencyNs) {
        return new SensorSuite(
                name, sampleRateHz, latencyNs, channels, blowDetector, arm, nominalVoltageV, accelerationPerTorque);
    }

    private SensorSuite with(
            Map<Quantity, ChannelSensor> sensors, @Nullable BlowDetector detector, ArmMotion otherArm) {
        return new SensorSuite(
                name, rateHz, commandLatencyNs, sensors, detector, otherArm, nominalVoltageV, accelerationPerTorque);
    }

    private static void requireDivisor(Quantity quantity, ChannelSensor sensor, int rateHz) {
        if (sensor.rateHz() != 0 && rateHz % sensor.rateHz() != 0) {
            throw new IllegalArgumentException("rate of " + quantity.title() + " must divide the sample rate");
        }
    }
}
