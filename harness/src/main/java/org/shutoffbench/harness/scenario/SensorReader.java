package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.sensor.ArmMotion;
import org.shutoffbench.sensor.BlowDetector;
import org.shutoffbench.sensor.ChannelSensor;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorPresets;
import org.shutoffbench.sensor.SensorSuite;

/** Reads the sensors: the name of a preset, or one with channels added, changed or taken away. */
final class SensorReader {

    private static final List<String> PRESETS = List.of("ideal", "good", "cheap");
    private static final Range RATE = Range.of(Dimension.FREQUENCY, "100 Hz", "100 kHz");
    private static final Range LATENCY = Range.of(Dimension.TIME, "0 s", "1 s");
    private static final Range VOLTAGE = Range.of(Dimension.VOLTAGE, "1 V", "1000 V");
    private static final Range SWAY = Range.of(Dimension.ANGLE, "0 deg", "90 deg");
    private static final Range SWAY_TIME = Range.of(Dimension.TIME, "1 ms", "100 s");

    private final Section root;

    SensorReader(Section root) {
        this.root = root;
    }

    SensorRecipe read() {
        if (!(root.take("sensors") instanceof Tree.Branch branch)) {
            return SensorRecipe.of(root.choice("sensors", PRESETS, "good"));
        }
        Section sensors = new Section(branch, root.path("sensors"), root.problems());
        String basis = sensors.choice("based on", PRESETS, "good");
        if (!sensors.has("based on")) {
            sensors.missing("based on", "name a preset: " + String.join(", ", PRESETS));
        }
        SensorSuite suite = pace(sensors, SensorRecipe.of(basis).suite());
        suite = suite.withArm(arm(sensors, suite.arm()));
        for (Quantity quantity : Quantity.values()) {
            suite = quantity == Quantity.BLOWS
                    ? blows(sensors, suite)
                    : channel(sensors, suite, quantity, SensorRecipe.of(basis).suite());
        }
        sensors.finish();
        return new SensorRecipe(basis, suite);
    }

    private static SensorSuite pace(Section sensors, SensorSuite suite) {
        SensorNumbers numbers = new SensorNumbers(sensors);
        int rate = (int) Math.rint(numbers.value("rate", Dimension.FREQUENCY, RATE, suite.rateHz()));
        long latency = numbers.nanoseconds("command_latency", LATENCY, suite.commandLatencyNs());
        double voltage = numbers.value("nominal_voltage", Dimension.VOLTAGE, VOLTAGE, suite.nominalVoltageV());
        try {
            return new SensorSuite(
                    suite.name(),
                    rate,
                    latency,
                    suite.channels(),
                    suite.blowDetector(),
                    suite.arm(),
                    voltage,
                    suite.accelerationPerTorque());
        } catch (IllegalArgumentException e) {
            sensors.problem("rate", String.valueOf(e.getMessage()));
            return suite;
        }
    }

    private static ArmMotion arm(Section sensors, ArmMotion basis) {
        Section arm = sensors.section("arm");
        if (arm == null) {
            return basis;
        }
        SensorNumbers numbers = new SensorNumbers(arm);
        boolean yields = arm.yesOrNo("yields", basis.yields());
        double sway = numbers.value("sway", Dimension.ANGLE, SWAY, basis.swayRad());
        double time = numbers.value("sway_time", Dimension.TIME, SWAY_TIME, basis.swayTimeS());
        arm.finish();
        return new ArmMotion(yields, sway, time);
    }

    private static SensorSuite blows(Section sensors, SensorSuite suite) {
        String key = Quantity.BLOWS.title();
        if (sensors.take(key) instanceof Tree.Branch branch) {
            BlowDetector basis = suite.blowDetector() == null ? BlowDetector.IDEAL : suite.blowDetector();
            Section section = new Section(branch, sensors.path(key), sensors.problems());
            BlowDetector read = new ChannelReader(section).blowDetector(basis);
            return suite.withBlowDetector(read);
        }
        boolean there = sensors.yesOrNo(key, suite.blowDetector() != null);
        if (!there) {
            return suite.without(Quantity.BLOWS);
        }
        return suite.blowDetector() == null ? suite.withBlowDetector(BlowDetector.IDEAL) : suite;
    }

    private static SensorSuite channel(Section sensors, SensorSuite suite, Quantity quantity, SensorSuite preset) {
        String key = quantity.title();
        ChannelSensor own = suite.channels().get(quantity);
        ChannelSensor basis = own != null ? own : spare(preset, quantity);
        if (sensors.take(key) instanceof Tree.Branch branch) {
            Section section = new Section(branch, sensors.path(key), sensors.problems());
            return with(sensors, suite, quantity, new ChannelReader(section).channel(quantity, basis));
        }
        boolean there = sensors.yesOrNo(key, own != null);
        return there ? with(sensors, suite, quantity, basis) : suite.without(quantity);
    }

    private static SensorSuite with(Section sensors, SensorSuite suite, Quantity quantity, ChannelSensor sensor) {
        try {
            return suite.with(quantity, sensor);
        } catch (IllegalArgumentException e) {
            sensors.problem(quantity.title(), String.valueOf(e.getMessage()));
            return suite;
        }
    }

    /** The sensor that a preset gets for a quantity it lacks: that of the good ones, or an ideal one. */
    private static ChannelSensor spare(SensorSuite preset, Quantity quantity) {
        ChannelSensor good = SensorPresets.GOOD_WITH_TORQUE.channels().get(quantity);
        return good == null || preset.name().equals("ideal") ? ChannelSensor.IDEAL : good;
    }
}
