package org.shutoffbench.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shutoffbench.plant.FastPlant;

/** Cost of one planned and committed step of the plant, over tightenings of 40 blows one after the other. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class PlantStepBenchmark {

    private static final int BLOWS = 40;

    /** Reference joints. */
    @Param({"A", "C", "D"})
    public String workload = "A";

    private final FastPlant plant = new FastPlant();
    private ReferenceJoint joint = ReferenceJoint.A;

    /** Starts the first tightening. */
    @Setup
    public void startFirst() {
        joint = ReferenceJoint.of(workload);
        plant.start(joint.law(), joint.tool(), 1);
    }

    /** One step. */
    @Benchmark
    public double step() {
        if (plant.blows() == BLOWS) {
            plant.start(joint.law(), joint.tool(), 1);
        }
        double end = plant.plan();
        plant.commit();
        return end;
    }
}
