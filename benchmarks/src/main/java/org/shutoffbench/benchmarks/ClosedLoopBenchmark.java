package org.shutoffbench.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The closed loop: joints per second and core, and what sharing a plant run saves. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 6, time = 2)
@Fork(2)
public class ClosedLoopBenchmark {

    private final LoopWorkload trivialOnA =
            new LoopWorkload(LoopWorkload.JOINT_A, List.of(new LoopWorkload.Trivial(40)));
    private final LoopWorkload adaptiveOnDemo =
            new LoopWorkload(LoopWorkload.DEMO, List.of(LoopWorkload.ours("adaptive estimation")));
    private final LoopWorkload oneConstant =
            new LoopWorkload(LoopWorkload.DEMO, List.of(LoopWorkload.ours("energy per blow")));
    private final LoopWorkload sixConstant = new LoopWorkload(LoopWorkload.DEMO, LoopWorkload.constantDrive());

    /** A trivial strategy on reference joint A, braked at blow 40. */
    @Benchmark
    public Object trivialOnJointA() {
        return trivialOnA.tightenNext();
    }

    /** Adaptive estimation on the demo families, each to its own stop. */
    @Benchmark
    public Object adaptiveOnDemoFamilies() {
        return adaptiveOnDemo.tightenNext();
    }

    /** One constant-drive strategy alone. */
    @Benchmark
    public Object oneConstantDriveStrategy() {
        return oneConstant.tightenNext();
    }

    /** Six constant-drive strategies that share their plant runs. */
    @Benchmark
    public Object sixConstantDriveStrategies() {
        return sixConstant.tightenNext();
    }
}
