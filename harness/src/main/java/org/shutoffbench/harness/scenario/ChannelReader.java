package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.sensor.BlowDetector;
import org.shutoffbench.sensor.ChannelSensor;
import org.shutoffbench.sensor.Faults;
import org.shutoffbench.sensor.LowPass;
import org.shutoffbench.sensor.Quantity;

/** Reads the numbers of one sensor; what is not given keeps its value. */
final class ChannelReader {

    private static final Range SHARE = Range.of(Dimension.PURE, "0 %", "100 %");
    private static final Range RATE = Range.of(Dimension.FREQUENCY, "1 Hz", "100 kHz");
    private static final Range CUTOFF = Range.of(Dimension.FREQUENCY, "0.1 Hz", "1000 kHz");
    private static final Range LATENCY = Range.of(Dimension.TIME, "0 s", "1 s");
    private static final Range SHORT = Range.of(Dimension.TIME, "0 s", "100 ms");
    private static final Range JITTER = Range.of(Dimension.TIME, "0 s", "10 ms");
    private static final Range PIECE = Range.of(Dimension.TIME, "0.001 us", "1000 s");
    private static final Range HAMMER_SPEED = Range.of(Dimension.ANGULAR_SPEED, "0 rad/s", "10000 rad/s");
    private static final String OFF = "off";

    private final Section section;
    private final SensorNumbers numbers;

    ChannelReader(Section section) {
        this.section = section;
        this.numbers = new SensorNumbers(section);
    }

    /** Units in which a sensor's readings are told. */
    static Dimension dimension(Quantity quantity) {
        return switch (quantity) {
            case CARRIER_ANGLE, ANVIL_ANGLE -> Dimension.ANGLE;
            case CARRIER_SPEED, HOUSING_RATE -> Dimension.ANGULAR_SPEED;
            case MOTOR_CURRENT -> Dimension.CURRENT;
            case SUPPLY_VOLTAGE, BLOWS -> Dimension.PURE;
            case HOUSING_ACCELERATION -> Dimension.ACCELERATION;
            case TORQUE -> Dimension.TORQUE;
        };
    }

    ChannelSensor channel(Quantity quantity, ChannelSensor basis) {
        Dimension dimension = dimension(quantity);
        Range size = in(dimension, "0", "1e9");
        double[] range = range(dimension, basis);
        ChannelSensor read = basis.withRateHz(isOff("rate") ? 0 : rate(basis))
                .withLatencyNs(numbers.nanoseconds("latency", LATENCY, basis.latencyNs()))
                .withLowPass(lowPass(basis.lowPass()))
                .withResolution(numbers.value("resolution", dimension, size, basis.resolution()))
                .withRange(range[0], range[1])
                .withGainError(numbers.value("gain_error", Dimension.PURE, SHARE, basis.gainError()))
                .withOffsetError(numbers.value("offset_error", dimension, size, basis.offsetError()))
                .withNoise(numbers.value("noise", dimension, size, basis.noise()))
                .withFaults(faults(basis.faults()));
        section.finish();
        return read;
    }

    BlowDetector blowDetector(BlowDetector basis) {
        long latency = numbers.nanoseconds("latency", SHORT, basis.latencyNs());
        double jitter = numbers.value("jitter", Dimension.TIME, JITTER, basis.jitterS());
        double missed = numbers.value("missed", Dimension.PURE, SHARE, basis.missedShare());
        double doubled = numbers.value("doubled", Dimension.PURE, SHARE, basis.doubledShare());
        long after = numbers.nanoseconds("doubled_after", SHORT, basis.doubledAfterNs());
        double speed = numbers.value(
                "least_hammer_speed", Dimension.ANGULAR_SPEED, HAMMER_SPEED, basis.leastHammerSpeedRadPerS());
        section.finish();
        if (missed + doubled > 1) {
            section.refuse("missed", "missed and doubled blows are more than all blows", "together at most 100 %");
            return basis;
        }
        return new BlowDetector(latency, jitter, missed, doubled, after, speed);
    }

    private int rate(ChannelSensor basis) {
        return (int) Math.rint(numbers.value("rate", Dimension.FREQUENCY, RATE, basis.rateHz()));
    }

    private static Range in(Dimension dimension, String least, String most) {
        String unit = dimension.isPure() ? "" : " " + dimension.siUnit();
        return Range.of(dimension, least + unit, most + unit);
    }

    /** {@code off}, or two ends; the readings saturate there. */
    private double[] range(Dimension dimension, ChannelSensor basis) {
        if (isOff("range")) {
            return new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        }
        double[] ends = {basis.minimum(), basis.maximum()};
        Tree value = section.take("range");
        if (value instanceof Tree.Sequence list && list.items().size() == 2) {
            AmountReader reader =
                    new AmountReader(dimension, in(dimension, "-1e9", "1e9"), List.of(Level.TOOL), section.problems());
            for (int i = 0; i < 2; i++) {
                Amount end = reader.read(list.items().get(i), section.path("range[" + i + "]"));
                ends[i] = end == null ? ends[i] : end.median();
            }
            if (!(ends[0] < ends[1])) {
                section.refuse("range", "its ends are not in order", "the first end is the lower one");
                return new double[] {basis.minimum(), basis.maximum()};
            }
        } else if (value != null) {
            section.problem("range", "two ends belong here, [least, greatest], or off");
        }
        return ends;
    }

    private LowPass lowPass(LowPass basis) {
        if (isOff("low_pass")) {
            return LowPass.NONE;
        }
        Section map = section.section("low_pass");
        if (map == null) {
            return basis;
        }
        int order = (int) map.wholeNumber("order", 1, 2, basis.order() == 0 ? 1 : basis.order());
        double cutoff =
                new SensorNumbers(map).value("cutoff", Dimension.FREQUENCY, CUTOFF, Math.min(basis.cutoffHz(), 1e9));
        boolean open = !map.has("cutoff") && basis.order() == 0;
        if (open) {
            map.missing("cutoff", "give the frequency at which the amplitude falls to 0.71");
        }
        map.finish();
        if (open) {
            return basis;
        }
        return new LowPass(order, cutoff);
    }

    private Faults faults(Faults basis) {
        double share = basis.dropOutShare();
        long piece = basis.dropOutNs();
        double stuck = basis.stuckProbability();
        long within = basis.stuckWithinNs();
        Section dropOuts = isOff("drop_outs") ? null : section.section("drop_outs");
        if (dropOuts != null) {
            share = new SensorNumbers(dropOuts).value("share", Dimension.PURE, SHARE, share);
            piece = new SensorNumbers(dropOuts).nanoseconds("length", PIECE, piece);
            dropOuts.finish();
        }
        Section sticking = isOff("stuck") ? null : section.section("stuck");
        if (sticking != null) {
            stuck = new SensorNumbers(sticking).value("probability", Dimension.PURE, SHARE, stuck);
            within = new SensorNumbers(sticking).nanoseconds("within", PIECE, within);
            sticking.finish();
        }
        return new Faults(isOff("drop_outs") ? 0 : share, piece, isOff("stuck") ? 0 : stuck, within);
    }

    private boolean isOff(String key) {
        return section.take(key) instanceof Tree.Text text && text.value().equals(OFF);
    }
}
