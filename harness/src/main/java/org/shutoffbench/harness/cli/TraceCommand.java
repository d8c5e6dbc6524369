package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.record.TraceFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.TraceContent;
import org.shutoffbench.harness.report.TracePicture;
import org.shutoffbench.harness.report.TraceRecorder;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.SampleLog;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.StrategyTrace;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.run.Trace;
import org.shutoffbench.harness.run.Trace.Blow;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.plant.ReferencePlant;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorChain;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code trace}: one joint, blow by blow. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = "Tightens one joint of a scenario and writes one row per blow; the end state is the last line.",
        footer = {
            "",
            "Example: shutoff-bench trace docs/examples/reference-joints.yaml --family A --joint 0 --brake-at-blow 40"
                    + " --out a.csv",
            "",
            Caution.TEXT
        })
final class TraceCommand implements Callable<Integer> {

    enum Solver {
        fast,
        reference
    }

    /** What ends the tightening; the scenario's first strategy where nothing is said. */
    static final class Ending {
        @Option(
                names = "--strategy",
                paramLabel = "NAME",
                description = "a strategy of the scenario (default: its first)")
        private @Nullable String strategy;

        @Option(
                names = "--drive-for",
                paramLabel = "2.5s",
                description = "drive for a time and end there, without run-on")
        private @Nullable String driveFor;

        @Option(
                names = "--brake-at-blow",
                paramLabel = "N",
                description = "brake at the first contact of blow N and follow the run-on")
        private @Nullable Integer brakeAtBlow;
    }

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init")
    private Path scenarioFile;

    @Option(names = "--family", paramLabel = "NAME", description = "family of joints (default: the first)")
    private @Nullable String family;

    @Option(names = "--joint", paramLabel = "K", required = true, description = "joint number in its family, from 0")
    private int joint;

    @Option(names = "--seed", paramLabel = "S", description = "root seed of all draws (default: the scenario's)")
    private @Nullable Long seed;

    @ArgGroup
    private Ending ending = new Ending();

    @Option(names = "--solver", description = "${COMPLETION-CANDIDATES} (default: fast)")
    private Solver solver = Solver.fast;

    @Option(names = "--out", paramLabel = "FILE.csv", required = true, description = "the blows")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--samples", paramLabel = "FILE.csv", description = "what the tool sensed, one row per sample")
    private @Nullable Path samples;

    @Option(
            names = "--picture",
            paramLabel = "FILE.svg",
            description = "torque, clamp force and angle over time and over each other; not with --drive-for")
    private @Nullable Path picture;

    private final SampleLog log = new SampleLog();
    private List<Blow> blows = new ArrayList<>();

    @Override
    public Integer call() throws IOException {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).read(scenarioFile);
        Bench bench = Bench.of(scenario, seed == null ? scenario.seed() : seed, catalogue);
        int familyIndex = Checks.family(scenario, family);
        if (joint < 0) {
            throw new InputException("--joint " + joint + ": joints count from 0");
        }
        if (picture != null && ending.driveFor != null) {
            throw new InputException("--picture shows a tightening that ends: not with --drive-for");
        }
        String end = ending.driveFor != null || ending.brakeAtBlow != null
                ? withoutStrategy(bench, familyIndex)
                : withStrategy(bench, familyIndex);
        TextFile.write(out, TraceFile.text(blows, end));
        if (samples != null) {
            TextFile.write(samples, log.text());
        }
        if (picture != null) {
            TextFile.write(picture, TracePicture.svg(content(bench, familyIndex)));
        }
        PrintWriter console = spec.commandLine().getOut();
        console.println(end);
        console.flush();
        return 0;
    }

    private TraceContent content(Bench bench, int familyIndex) {
        return ending.brakeAtBlow != null
                ? TraceRecorder.brakedAtBlow(bench, familyIndex, joint, ending.brakeAtBlow, newPlant())
                : TraceRecorder.ofStrategy(bench, strategyIndex(bench.scenario()), familyIndex, joint, this::newPlant);
    }

    private Plant newPlant() {
        return solver == Solver.fast ? new FastPlant() : new ReferencePlant();
    }

    private String withoutStrategy(Bench bench, int familyIndex) {
        DrawnCase drawn = bench.population().draw(familyIndex, joint);
        Plant plant = newPlant();
        plant.start(drawn.law(), drawn.impactTool(), drawn.supplyRatio());
        SensorChain sensors = new SensorChain(bench.suite());
        sensors.start(
                drawn.impactTool(),
                drawn.sensorErrors(),
                drawn.supplyRatio(),
                drawn.noiseKey(),
                samples == null ? 0 : Quantity.mask(bench.suite().quantities()));
        Trace trace = new Trace(
                plant,
                drawn.impactTool().hammer().inertiaKgM2(),
                drawn.law().clamp().snugAngleRad());
        Trace.SampleSink sink = samples == null ? (time, reading) -> {} : log;
        if (ending.driveFor != null) {
            trace.driveFor(Checks.seconds("--drive-for", ending.driveFor), sensors, sink);
        } else if (ending.brakeAtBlow != null) {
            if (ending.brakeAtBlow < 1) {
                throw new InputException("--brake-at-blow " + ending.brakeAtBlow + ": blows count from 1");
            }
            trace.brakeAtBlow(ending.brakeAtBlow, bench.scenario().timeLimitS(), sensors, sink);
        }
        blows = trace.blows();
        return end(plant.state(), drawn.law().clamp().snugAngleRad()) + (plant.state().fractured ? ", fractured" : "");
    }

    private static String end(PlantState state, double snugAngleRad) {
        return String.format(
                Locale.ROOT,
                "end: time_s=%.6f, nut_angle_deg=%.6f, clamp_force_N=%.3f, torque_to_move_Nm=%.5f, blows=%d",
                state.timeS,
                Math.toDegrees(state.nutAngleRad - snugAngleRad),
                state.clampForceN,
                state.torqueToMoveNm,
                state.blows);
    }

    private String withStrategy(Bench bench, int familyIndex) {
        int index = strategyIndex(bench.scenario());
        StrategyTrace trace = new StrategyTrace(bench, index, this::newPlant, samples == null ? null : log);
        TighteningRecord record = trace.tighten(familyIndex, joint);
        blows = trace.blows();
        if (trace.fault() != null) {
            PrintWriter err = spec.commandLine().getErr();
            err.println("ended by a fault: " + trace.fault());
            err.flush();
        }
        StrategyEntry entry = bench.scenario().strategies().get(index);
        return end(trace.endState(), trace.snugAngleRad())
                + String.format(
                        Locale.ROOT,
                        ", clamping_torque_Nm=%.4f, stop_command_s=%.6f, strategy=%s (%s), end_reason=%s, verdict=%s,"
                                + " outcome=%s",
                        record.clampingTorqueNm(),
                        record.timeS(),
                        entry.label(),
                        entry.settings(),
                        record.endReason().title(),
                        record.verdict(),
                        record.outcome().title());
    }

    private int strategyIndex(Scenario scenario) {
        if (scenario.strategies().isEmpty()) {
            throw new InputException(scenarioFile
                    + ": strategies: none is named; give --drive-for or --brake-at-blow, or name one in the scenario");
        }
        if (ending.strategy == null) {
            return 0;
        }
        return Checks.strategy(scenario, ending.strategy, scenarioFile);
    }
}
