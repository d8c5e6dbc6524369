package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.record.Provenance;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.RunIdentity;
import org.shutoffbench.harness.record.export.RecordSelection;
import org.shutoffbench.harness.record.export.TableSchema;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.FinishedRun;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.JarCopies;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.StopRule;
import org.shutoffbench.harness.study.StudyRun;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.SummaryFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code run}: every strategy of a scenario on every joint. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Runs every strategy of a scenario on the same randomised joints and writes outcomes.csv, summary.json,"
                    + " run.json and report.html.",
            "An interrupted run is taken up by the same command."
        },
        footer = {"", "Example: shutoff-bench run docs/examples/harbour-walkway.yaml --out walkway", "", Caution.TEXT})
final class RunCommand implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init")
    private Path scenarioFile;

    @Option(names = "--joints", paramLabel = "N", description = "joints per family (default: the scenario's)")
    private @Nullable Integer joints;

    @Option(
            names = "--stop",
            paramLabel = "RULE",
            description =
                    "end before --joints: \"interval 1 %%\" when every in-window and silent-miss interval lies within"
                            + " +- 1 point, \"ranking 2 %%\" when the best strategy is decided and leads below 2 points do not matter"
                            + " (default: run all joints)")
    private @Nullable String stop;

    @Option(names = "--seed", paramLabel = "S", description = "root seed of all draws (default: the scenario's)")
    private @Nullable Long seed;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads (default: one per processor); changes no result")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "folder to write (default: the scenario's file name + -run)")
    private @Nullable Path out;

    @Option(names = "--overwrite", description = "replace the run that lies in the folder")
    private boolean overwrite;

    @Override
    public Integer call() throws IOException, InterruptedException {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).read(scenarioFile);
        if (scenario.strategies().isEmpty()) {
            throw new InputException(
                    scenarioFile + ": strategies: none is named, so there is nothing to compare; add a list"
                            + " such as [blow count, adaptive estimation]");
        }
        int jointsPerFamily = Checks.joints(joints == null ? scenario.jointsPerFamily() : joints);
        Checks.threads(threads);
        long rootSeed = seed == null ? scenario.seed() : seed;
        Bench bench = Bench.of(scenario, rootSeed, catalogue);
        StopRule rule = Checks.stopRule(stop);
        StudyRun study = new StudyRun(bench, jointsPerFamily, rule);
        RunIdentity identity = new RunIdentity(
                ShutoffBench.version(), ScenarioFile.hash(scenario), rootSeed, jointsPerFamily, rule.title());
        RunFolder folder = RunFolder.open(out == null ? defaultFolder() : out, identity, overwrite);
        folder.write(RunFolder.SCENARIO, ScenarioFile.resolved(JarCopies.beside(scenario, folder.path())));
        run(scenario, study, identity, folder);
        return 0;
    }

    private Path defaultFolder() {
        String name = scenarioFile.getFileName().toString().replaceFirst("\\.ya?ml$", "");
        return Path.of(name + "-run");
    }

    private void run(Scenario scenario, StudyRun study, RunIdentity identity, RunFolder folder)
            throws IOException, InterruptedException {
        Instant started = Instant.now();
        AtomicLong kept = new AtomicLong(-1);
        StudySummary summary;
        try (Progress progress = Progress.of("joints", study.joints())) {
            Interruption interruption = Interruption.say(
                    spec.commandLine().getErr(),
                    () -> progress.done() + " joints are kept in " + folder.path()
                            + "; the same command goes on from there");
            summary = study.execute(folder, threads, done -> {
                kept.compareAndSet(-1, done);
                progress.to(done);
            });
            interruption.forget();
        }
        folder.write(
                RunFolder.OUTCOMES_SCHEMA, TableSchema.text(summary.outcomesFormat(), RecordSelection.ALL.columns()));
        folder.write(RunFolder.SUMMARY, SummaryFile.text(summary));
        Provenance provenance = provenance(scenario, identity, folder, started, kept.get());
        folder.write(RunFolder.PROVENANCE, provenance.json());
        folder.finish();
        FinishedRun.open(folder.path(), new ScenarioFile(new StrategyCatalogue()))
                .writeReport();
        print(folder, summary);
    }

    private Provenance provenance(Scenario scenario, RunIdentity identity, RunFolder folder, Instant started, long kept)
            throws IOException {
        Map<String, Map<String, String>> tables = new TreeMap<>();
        scenario.tables().forEach((name, table) -> tables.put(name, table.provenance()));
        return new Provenance(
                identity.version(),
                List.copyOf(spec.commandLine().getParseResult().originalArgs()),
                scenario.name(),
                identity.scenarioHash(),
                folder.outcomesSha256(),
                identity.seed(),
                identity.jointsPerFamily(),
                tables,
                Provenance.text(started),
                Duration.between(started, Instant.now()).toMillis() / 1000.0,
                kept,
                Provenance.Host.here(threads));
    }

    private void print(RunFolder folder, StudySummary summary) {
        PrintWriter console = spec.commandLine().getOut();
        console.println(new SummaryTable(summary));
        if (!summary.stopping().rule().equals(new StopRule.FixedNumber().title())) {
            console.println("Ended by: " + summary.stopping().rule() + ": "
                    + summary.stopping().reason());
        }
        console.println("Report: "
                + folder.path().resolve(RunFolder.REPORT).toAbsolutePath().normalize());
        console.flush();
    }
}
