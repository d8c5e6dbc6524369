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
import org.shutoffbench.plant.Run;

/**
 * The plant alone: tightenings per second and core. A joint is driven at full level, braked at the first contact of blow 40
 * and followed until the nut is settled.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class TighteningBenchmark {

    private static final double TIME_LIMIT_S = 10;

    /** Reference joints A to D with the light tool, or A with the heavy one. */
    @Param({"A", "B", "C", "D", "A_HEAVY"})
    public String workload = "A";

    /** Blow at whose first contact the tool brakes. */
    @Param("40")
    public int blows = 40;

    private final Run run = new Run(new FastPlant());
    private ReferenceJoint joint = ReferenceJoint.A;

    /** Picks the joint. */
    @Setup
    public void pickJoint() {
        joint = ReferenceJoint.of(workload);
    }

    /** One tightening. */
    @Benchmark
    public double tightening() {
        return run.start(joint.law(), joint.tool(), 1).brakedAtBlow(blows, TIME_LIMIT_S).clampForceN;
    }
}
