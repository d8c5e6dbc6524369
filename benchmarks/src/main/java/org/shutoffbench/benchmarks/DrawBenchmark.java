package org.shutoffbench.benchmarks;

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
import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.draw.NoiseStream;
import org.shutoffbench.draw.Stream;

/** Cost of one random number, ns: keyed draws, the cheap noise stream, and the platform's own generator beside them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class DrawBenchmark {

    private static final int COUNT = 1000;

    private final DrawKey key = DrawKey.of(1, "benchmark", "draws");
    private final long noiseKey = key.noiseKey(Stream.SENSOR, 0, 0);
    private final java.util.SplittableRandom platform = new java.util.SplittableRandom(1);
    private long next;

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double keyedUniform() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += key.uniform(Stream.PIECE, next++, 0);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double keyedNormal() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += key.normal(Stream.PIECE, next++, 0);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double noiseUniform() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += NoiseStream.uniform(noiseKey, next++);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double noiseNormal() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += NoiseStream.normal(noiseKey, next++);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double platformGaussian() {
        double sum = 0;
        for (int i = 0; i < COUNT; i++) {
            sum += platform.nextGaussian();
        }
        return sum;
    }
}
