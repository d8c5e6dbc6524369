package org.shutoffbench.benchmarks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/**
 * Cost of one tick of every strategy at its default settings, over the first half second of reference joint A recorded from
 * noiseless sensors. The target is out of reach, so that strategies keep working instead of standing latched.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class TickBenchmark {

    static final int TICKS = 5_000;
    private static final int RATE_HZ = 10_000;
    private static final Target OUT_OF_REACH = new Target(1e6f, 0.15f);

    /** Every strategy of the catalogue. */
    @Param({
        "elapsed time",
        "operator feel",
        "blow count",
        "gated blow count",
        "angle from snug",
        "pulse torque threshold",
        "torque minus prevailing",
        "torque gradient",
        "energy per blow",
        "adaptive estimation",
        "learned regression"
    })
    public String strategy = "blow count";

    private final List<SensorFrame> frames = new ArrayList<>();
    private ShutoffStrategy instance = new Recorder(frames);

    /** Records the samples and makes the strategy. */
    @Setup
    public void record() {
        String noiseless = LoopWorkload.JOINT_A.replace("sensors: good", "sensors: ideal");
        new LoopWorkload(noiseless, List.of(new RecorderFactory(frames))).tightenNext();
        StrategyFactory factory = LoopWorkload.ours(strategy);
        instance = factory.create(
                Settings.of(factory.descriptor().settings(), Map.of()),
                new Provision(RATE_HZ, EnumSet.allOf(Channel.class)));
    }

    /** Half a second of ticks. */
    @Benchmark
    @OperationsPerInvocation(TICKS)
    public int tick() {
        instance.arm(OUT_OF_REACH);
        int stops = 0;
        for (SensorFrame frame : frames) {
            stops += instance.onSample(frame) == Command.FULL ? 0 : 1;
        }
        return stops;
    }

    private record RecorderFactory(List<SensorFrame> frames) implements StrategyFactory {
        @Override
        public StrategyDescriptor descriptor() {
            return new StrategyDescriptor(
                    "recorder", "keeps what it hears", Set.of(), EnumSet.allOf(Channel.class), List.of(), List.of(), 0);
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            return new Recorder(frames);
        }
    }

    private record Recorder(List<SensorFrame> frames) implements ShutoffStrategy {
        @Override
        public void arm(Target target) {
            frames.clear();
        }

        @Override
        public Command onSample(SensorFrame frame) {
            if (frames.size() == TICKS) {
                return Command.BRAKE;
            }
            frames.add(copy(frame));
            return Command.FULL;
        }

        private static SensorFrame copy(SensorFrame frame) {
            SensorFrame copy = new SensorFrame();
            copy.carrierAngleRad = frame.carrierAngleRad;
            copy.carrierSpeedRadPerS = frame.carrierSpeedRadPerS;
            copy.motorCurrentA = frame.motorCurrentA;
            copy.supplyRatio = frame.supplyRatio;
            copy.housingAccelerationMPerS2 = frame.housingAccelerationMPerS2;
            copy.blows = frame.blows;
            copy.anvilAngleRad = frame.anvilAngleRad;
            copy.housingRateRadPerS = frame.housingRateRadPerS;
            copy.torqueNm = frame.torqueNm;
            return copy;
        }

        @Override
        public Verdict verdict() {
            return Verdict.UNSURE;
        }

        @Override
        public int estimates(float[] into) {
            return 0;
        }
    }
}
