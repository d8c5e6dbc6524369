package org.shutoffbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.RunIdentity;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.StudyRun;
import org.shutoffbench.harness.study.StudySummary;

/**
 * A whole study: five constant-drive strategies on the demo's four families, rows written, figures summarised. Joints per
 * second, all threads together.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class StudyBenchmark {

    private static final int JOINTS_PER_FAMILY = 128;
    private static final int JOINTS = 4 * JOINTS_PER_FAMILY;

    /** Worker threads. */
    @Param({"1", "2"})
    public int threads = 1;

    private final Bench bench = bench();
    private Path folder = Path.of("");
    private int studies;

    private static Bench bench() {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        String scenario = LoopWorkload.DEMO
                + "strategies: [energy per blow, elapsed time, blow count, gated blow count, angle from snug]\n";
        return Bench.of(new ScenarioFile(catalogue).parse("benchmark.yaml", scenario), 1, catalogue);
    }

    /** Makes a place for the rows. */
    @Setup
    public void makeFolder() throws IOException {
        folder = Files.createTempDirectory("study");
    }

    /** Removes it. */
    @TearDown
    public void removeFolder() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** One study. */
    @Benchmark
    @OperationsPerInvocation(JOINTS)
    public StudySummary study() throws IOException, InterruptedException {
        RunIdentity identity = new RunIdentity("benchmark", "benchmark", 1, JOINTS_PER_FAMILY, "fixed");
        RunFolder rows = RunFolder.open(folder.resolve("run-" + studies++), identity, true);
        return new StudyRun(bench, JOINTS_PER_FAMILY).execute(rows, threads, done -> {});
    }
}
