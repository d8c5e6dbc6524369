package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.sensor.ArmMotion;
import org.shutoffbench.sensor.BlowDetector;
import org.shutoffbench.sensor.ChannelSensor;
import org.shutoffbench.sensor.Faults;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorSuite;

/** Sensors written out in full, as lines of a scenario file. */
final class SensorText {

    private static final String OFF = "off";

    private final List<String> lines = new ArrayList<>();

    SensorText(SensorRecipe recipe) {
        SensorSuite suite = recipe.suite();
        line("based on", recipe.basis());
        line("rate", written(suite.rateHz(), Dimension.FREQUENCY));
        line("command_latency", seconds(suite.commandLatencyNs()));
        line("nominal_voltage", written(suite.nominalVoltageV(), Dimension.VOLTAGE));
        line("arm", arm(suite.arm()));
        for (Quantity quantity : Quantity.values()) {
            line(quantity.title(), sensor(suite, quantity));
        }
    }

    /** One line per key, without indent. */
    List<String> lines() {
        return lines;
    }

    private void line(String key, String value) {
        lines.add(key + ": " + value);
    }

    private static String arm(ArmMotion arm) {
        return "{yields: " + (arm.yields() ? "yes" : "no") + ", sway: " + written(arm.swayRad(), Dimension.ANGLE)
                + ", sway_time: " + written(arm.swayTimeS(), Dimension.TIME) + "}";
    }

    private static String sensor(SensorSuite suite, Quantity quantity) {
        ChannelSensor sensor = suite.channels().get(quantity);
        BlowDetector detector = suite.blowDetector();
        if (quantity == Quantity.BLOWS && detector != null) {
            return blows(detector);
        }
        return sensor == null ? "no" : channel(sensor, ChannelReader.dimension(quantity));
    }

    private static String blows(BlowDetector detector) {
        return "{latency: " + seconds(detector.latencyNs())
                + ", jitter: " + written(detector.jitterS(), Dimension.TIME)
                + ", missed: " + written(detector.missedShare(), Dimension.PURE)
                + ", doubled: " + written(detector.doubledShare(), Dimension.PURE)
                + ", doubled_after: " + seconds(detector.doubledAfterNs())
                + ", least_hammer_speed: " + written(detector.leastHammerSpeedRadPerS(), Dimension.ANGULAR_SPEED)
                + "}";
    }

    private static String channel(ChannelSensor sensor, Dimension dimension) {
        Faults faults = sensor.faults();
        return "{rate: " + (sensor.rateHz() == 0 ? OFF : written(sensor.rateHz(), Dimension.FREQUENCY))
                + ", latency: " + seconds(sensor.latencyNs())
                + ", low_pass: " + lowPass(sensor)
                + ", resolution: " + written(sensor.resolution(), dimension)
                + ", range: " + range(sensor, dimension)
                + ", gain_error: " + written(sensor.gainError(), Dimension.PURE)
                + ", offset_error: " + written(sensor.offsetError(), dimension)
                + ", noise: " + written(sensor.noise(), dimension)
                + ", drop_outs: "
                + (faults.dropOutShare() == 0
                        ? OFF
                        : "{share: " + written(faults.dropOutShare(), Dimension.PURE) + ", length: "
                                + seconds(faults.dropOutNs()) + "}")
                + ", stuck: "
                + (faults.stuckProbability() == 0
                        ? OFF
                        : "{probability: "
                                + written(faults.stuckProbability(), Dimension.PURE) + ", within: "
                                + seconds(faults.stuckWithinNs()) + "}")
                + "}";
    }

    private static String lowPass(ChannelSensor sensor) {
        return sensor.lowPass().order() == 0
                ? OFF
                : "{order: " + sensor.lowPass().order() + ", cutoff: "
                        + written(sensor.lowPass().cutoffHz(), Dimension.FREQUENCY) + "}";
    }

    private static String range(ChannelSensor sensor, Dimension dimension) {
        return Double.isInfinite(sensor.maximum()) || Double.isInfinite(sensor.minimum())
                ? OFF
                : "[" + written(sensor.minimum(), dimension) + ", " + written(sensor.maximum(), dimension) + "]";
    }

    private static String seconds(long ns) {
        return written(ns / 1e9, Dimension.TIME);
    }

    private static String written(double si, Dimension dimension) {
        return org.shutoffbench.harness.scenario.unit.Quantity.ofSi(si, dimension)
                .text();
    }
}
