package org.shutoffbench.sensor;

import java.util.List;
import java.util.Map;

/**
 * Three invented sensor suites. Numbers are assumed, engineering choices of this project and not measurements of any tool;
 * docs/sensors.md gives the reason of each.
 */
public final class SensorPresets {

    private static final double DEGREE = Math.PI / 180;

    /** 4 pole pairs with 6 commutation steps each, behind a gear of 8. */
    private static final double COMMUTATION_STEP_RAD = 2 * Math.PI / (4 * 6 * 8);

    private static final double BATTERY_V = 18;
    /** A lever of 40 mm over a housing of 0.02 kg m^2. */
    private static final double ACCELERATION_PER_TORQUE = 2.0;

    /** 5 ms, 5 s */
    private static final long PIECE_NS = 5_000_000;

    private static final long FIRST_SECONDS_NS = 5_000_000_000L;

    /** The arm of a person: yields, sways by 1 deg in half a second. */
    public static final ArmMotion ARM = new ArmMotion(true, 1 * DEGREE, 0.5);

    /** Reads the truth at every sample, in a tool that is clamped in a stand. */
    public static final SensorSuite IDEAL = new SensorSuite(
            "ideal",
            10_000,
            0,
            Map.of(
                    Quantity.CARRIER_ANGLE, ChannelSensor.IDEAL,
                    Quantity.CARRIER_SPEED, ChannelSensor.IDEAL,
                    Quantity.MOTOR_CURRENT, ChannelSensor.IDEAL,
                    Quantity.SUPPLY_VOLTAGE, ChannelSensor.IDEAL,
                    Quantity.HOUSING_ACCELERATION, ChannelSensor.IDEAL.withLowPass(LowPass.butterworth(4_000)),
                    Quantity.ANVIL_ANGLE, ChannelSensor.IDEAL,
                    Quantity.HOUSING_RATE, ChannelSensor.IDEAL,
                    Quantity.TORQUE, ChannelSensor.IDEAL),
            BlowDetector.IDEAL,
            ArmMotion.NONE,
            BATTERY_V,
            ACCELERATION_PER_TORQUE);

    /** A well-equipped tool with a torque sensor. */
    public static final SensorSuite GOOD_WITH_TORQUE = new SensorSuite(
            "good with torque",
            10_000,
            1_000_000,
            Map.of(
                    Quantity.CARRIER_ANGLE,
                    ChannelSensor.IDEAL.withResolution(COMMUTATION_STEP_RAD),
                    Quantity.CARRIER_SPEED,
                    ChannelSensor.IDEAL.withResolution(1).withRange(-500, 500).withNoise(1),
                    Quantity.MOTOR_CURRENT,
                    ChannelSensor.IDEAL
                            .withLowPass(LowPass.firstOrder(2_000))
                            .withResolution(0.05)
                            .withRange(-100, 100)
                            .withGainError(0.01)
                            .withOffsetError(0.1)
                            .withNoise(0.3),
                    Quantity.SUPPLY_VOLTAGE,
                    ChannelSensor.IDEAL
                            .withRateHz(1_000)
                            .withLowPass(LowPass.firstOrder(100))
                            .withResolution(0.00125)
                            .withRange(0, 1.28)
                            .withGainError(0.005)
                            .withNoise(0.002),
                    Quantity.HOUSING_ACCELERATION,
                    ChannelSensor.IDEAL
                            .withLowPass(LowPass.butterworth(2_000))
                            .withResolution(1)
                            .withRange(-2_000, 2_000)
                            .withGainError(0.02)
                            .withOffsetError(1)
                            .withNoise(5),
                    Quantity.ANVIL_ANGLE,
                    ChannelSensor.IDEAL.withResolution(0.25 * DEGREE).withNoise(0.3 * DEGREE),
                    Quantity.HOUSING_RATE,
                    ChannelSensor.IDEAL
                            .withRateHz(1_000)
                            .withLowPass(LowPass.firstOrder(100))
                            .withResolution(0.001)
                            .withRange(-35, 35)
                            .withGainError(0.01)
                            .withOffsetError(1 * DEGREE)
                            .withNoise(0.002),
                    Quantity.TORQUE,
                    ChannelSensor.IDEAL
                            .withLowPass(LowPass.butterworth(2_000))
                            .withRange(-1_000, 1_000)
                            .withGainError(0.03)
                            .withNoise(2)),
            new BlowDetector(0, 0.5e-3, 0.005, 0.005, 3_000_000, 0),
            ARM,
            BATTERY_V,
            ACCELERATION_PER_TORQUE);

    /** The same tool without a torque sensor. */
    public static final SensorSuite GOOD =
            GOOD_WITH_TORQUE.without(Quantity.TORQUE).named("good");

    /** A tool with what a motor controller has anyway, a simple shock detector and a coarse anvil ring. */
    public static final SensorSuite CHEAP = new SensorSuite(
            "cheap",
            1_000,
            2_000_000,
            Map.of(
                    Quantity.CARRIER_ANGLE,
                    ChannelSensor.IDEAL.withResolution(COMMUTATION_STEP_RAD),
                    Quantity.CARRIER_SPEED,
                    ChannelSensor.IDEAL
                            .withLatencyNs(1_000_000)
                            .withLowPass(LowPass.firstOrder(200))
                            .withResolution(4)
                            .withRange(0, 500)
                            .withNoise(3),
                    Quantity.MOTOR_CURRENT,
                    ChannelSensor.IDEAL
                            .withLowPass(LowPass.firstOrder(300))
                            .withResolution(0.5)
                            .withRange(0, 60)
                            .withGainError(0.05)
                            .withOffsetError(0.5)
                            .withNoise(1),
                    Quantity.SUPPLY_VOLTAGE,
                    ChannelSensor.IDEAL
                            .withRateHz(100)
                            .withLowPass(LowPass.firstOrder(20))
                            .withResolution(0.01)
                            .withRange(0, 1.28)
                            .withGainError(0.02)
                            .withNoise(0.01),
                    Quantity.HOUSING_ACCELERATION,
                    ChannelSensor.IDEAL
                            .withLowPass(LowPass.firstOrder(400))
                            .withResolution(5)
                            .withRange(-160, 160)
                            .withGainError(0.05)
                            .withOffsetError(5)
                            .withNoise(5),
                    Quantity.ANVIL_ANGLE,
                    ChannelSensor.IDEAL
                            .withLatencyNs(1_000_000)
                            .withResolution(2 * DEGREE)
                            .withNoise(1 * DEGREE)
                            .withFaults(Faults.dropOuts(0.001, PIECE_NS).andStuck(0.001, FIRST_SECONDS_NS))),
            new BlowDetector(1_000_000, 2e-3, 0.03, 0.03, 6_000_000, 60),
            ARM,
            BATTERY_V,
            ACCELERATION_PER_TORQUE);

    private SensorPresets() {}

    /** All presets, the best first. */
    public static List<SensorSuite> all() {
        return List.of(IDEAL, GOOD_WITH_TORQUE, GOOD, CHEAP);
    }
}
