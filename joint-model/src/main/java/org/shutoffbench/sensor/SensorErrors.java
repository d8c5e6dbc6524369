package org.shutoffbench.sensor;

import java.util.Map;
import org.shutoffbench.draw.CutNormal;
import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.draw.Stream;

/** Gain and offset of every sensor of one tool. Immutable. */
public final class SensorErrors {

    /**
     * First draw number of the tool's stream that sensors use: two per quantity from here. Other rooms draw a tool's other
     * numbers below it.
     */
    public static final int FIRST_DRAW = 1 << 16;

    /** A tool whose sensors have no gain or offset error. */
    public static final SensorErrors NONE = new SensorErrors();

    private static final CutNormal STANDARD = new CutNormal(0, 1);

    private final double[] gains = new double[Quantity.values().length];
    private final double[] offsets = new double[gains.length];

    private SensorErrors() {
        java.util.Arrays.fill(gains, 1);
    }

    /** Uniform numbers in the open interval (0, 1) for the errors of one tool's sensors. */
    public interface Uniforms {
        double gain(Quantity quantity);

        double offset(Quantity quantity);
    }

    /** Draws one tool's errors. A sensor's draws do not depend on which others the suite has. */
    public static SensorErrors draw(SensorSuite suite, DrawKey key, long tool) {
        return of(suite, new Uniforms() {
            @Override
            public double gain(Quantity quantity) {
                return key.uniform(Stream.TOOL, tool, FIRST_DRAW + 2 * quantity.code());
            }

            @Override
            public double offset(Quantity quantity) {
                return key.uniform(Stream.TOOL, tool, FIRST_DRAW + 2 * quantity.code() + 1);
            }
        });
    }

    /** The errors that given numbers stand for; asked only of sensors that have such an error. */
    public static SensorErrors of(SensorSuite suite, Uniforms uniforms) {
        SensorErrors errors = new SensorErrors();
        for (Map.Entry<Quantity, ChannelSensor> entry : suite.channels().entrySet()) {
            Quantity quantity = entry.getKey();
            ChannelSensor sensor = entry.getValue();
            if (sensor.gainError() > 0) {
                errors.gains[quantity.code()] = 1 + sensor.gainError() * STANDARD.quantile(uniforms.gain(quantity));
            }
            if (sensor.offsetError() > 0) {
                errors.offsets[quantity.code()] = sensor.offsetError() * STANDARD.quantile(uniforms.offset(quantity));
            }
        }
        return errors;
    }

    /** Factor on what is sensed. */
    public double gain(Quantity quantity) {
        return gains[quantity.code()];
    }

    /** Added to what is sensed, in the quantity's unit. */
    public double offset(Quantity quantity) {
        return offsets[quantity.code()];
    }
}
