package org.shutoffbench.benchmarks;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorChain;
import org.shutoffbench.sensor.SensorErrors;
import org.shutoffbench.sensor.SensorPresets;
import org.shutoffbench.sensor.SensorReading;
import org.shutoffbench.sensor.SensorSuite;
import org.shutoffbench.tool.ReferenceTools;

/**
 * Cost of a sample, in ns per tick of 0.1 ms over one second of reference joint A at full drive. The plant's own cost and
 * that of bare look-ups are measured beside it: what a chain adds is the difference to the look-ups.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class SensorBenchmark {

    private static final int TICKS = 10_000;
    private static final JointLaw JOINT_A = new JointLaw(
            TorqueTension.of(1.75e-3, 12e-3 - 0.64952 * 1.75e-3, 15.6e-3, 0.12, 0.12),
            new ClampLaw(312e6 * 1.75e-3 / (2 * Math.PI), 4 * Math.PI, Math.toRadians(8)),
            FreeTorque.of(0.2, List.of()),
            1,
            Yielding.OFF,
            Galling.NONE);

    private final FastPlant plant = new FastPlant();
    private final SensorSuite suite = SensorPresets.GOOD_WITH_TORQUE;
    private final SensorChain chain = new SensorChain(suite);
    private long run;

    /** No sample at all. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public double plantAlone() {
        plant.start(JOINT_A, ReferenceTools.LIGHT, 1);
        while (plant.plan() < chain.timeS(TICKS)) {
            plant.commit();
        }
        return plant.state().nutAngleRad;
    }

    /** The three look-ups of the three-channel chain and nothing else. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public double threeLookUps() {
        plant.start(JOINT_A, ReferenceTools.LIGHT, 1);
        double plannedEndS = plant.plan();
        double sum = 0;
        for (long tick = 0; tick < TICKS; tick++) {
            double timeS = chain.timeS(tick);
            while (plannedEndS < timeS) {
                plant.commit();
                plannedEndS = plant.plan();
            }
            sum += plant.carrierSpeedRadPerS(timeS) + plant.anvilAngleRad(timeS) + plant.motorTorqueNm(timeS);
        }
        return sum;
    }

    /** Carrier speed, anvil angle against the housing and blows. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public double threeChannels() {
        return sampled(Set.of(Quantity.CARRIER_SPEED, Quantity.ANVIL_ANGLE, Quantity.BLOWS));
    }

    /** The three channels and torque behind its low pass. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public double threeChannelsAndTorque() {
        return sampled(Set.of(Quantity.CARRIER_SPEED, Quantity.ANVIL_ANGLE, Quantity.BLOWS, Quantity.TORQUE));
    }

    /** Everything that a well-equipped tool senses. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public double allChannels() {
        return sampled(suite.quantities());
    }

    private double sampled(Set<Quantity> quantities) {
        plant.start(JOINT_A, ReferenceTools.LIGHT, 1);
        chain.start(ReferenceTools.LIGHT, SensorErrors.NONE, 1, run++, Quantity.mask(quantities));
        double plannedEndS = plant.plan();
        double sum = 0;
        for (long tick = 0; tick < TICKS; tick++) {
            double timeS = chain.timeS(tick);
            while (plannedEndS < timeS) {
                chain.beforeCommit(plant, plannedEndS);
                plant.commit();
                plannedEndS = plant.plan();
            }
            SensorReading reading = chain.sample(tick, plant);
            sum += reading.carrierSpeedRadPerS + reading.anvilAngleRad + reading.blows;
        }
        return sum;
    }
}
