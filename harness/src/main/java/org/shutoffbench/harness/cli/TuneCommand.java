package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.SettingsTable;
import org.shutoffbench.harness.study.tuning.Tuning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tune}: sets the strategies of a scenario up. */
@Command(
        name = "tune",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Looks for the best settings of every strategy of a scenario, on joints of its own, and writes a settings table"
                    + " that scenarios can name.",
            "Every strategy gets the same budget: 100 evaluations of 200 joints per family."
        },
        footer = {
            "",
            "Example: shutoff-bench tune docs/examples/harbour-walkway.yaml --settings all --out all.yaml",
            "",
            Caution.TEXT
        })
final class TuneCommand implements Callable<Integer> {

    enum Kind {
        home,
        all
    }

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init")
    private Path scenarioFile;

    @Option(
            names = "--settings",
            required = true,
            description =
                    "home: tuned on one family, as a user sets a tool up on one joint; all: on all families pooled")
    @SuppressWarnings("NullAway.Init")
    private Kind kind;

    @Option(names = "--family", paramLabel = "NAME", description = "the family of --settings home (default: the first)")
    private @Nullable String family;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads (default: one per processor); changes no result")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--out", paramLabel = "FILE.yaml", required = true, description = "the settings table")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--log", paramLabel = "FILE", description = "every evaluation, one line each")
    private @Nullable Path logFile;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (kind == Kind.all && family != null) {
            throw new InputException("--family goes with --settings home: all means all families");
        }
        Checks.threads(threads);
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).readWithoutTables(scenarioFile);
        List<Integer> families =
                kind == Kind.all ? Tuning.allFamilies(scenario) : List.of(Checks.family(scenario, family));
        StringBuilder log = new StringBuilder();
        PrintWriter console = spec.commandLine().getOut();
        Tuning tuning = new Tuning(scenario, catalogue, families, Tuning.Budget.STANDARD, threads, line -> {
            log.append(line).append('\n');
            if (!line.contains(", evaluation ")) {
                console.println(line);
                console.flush();
            }
        });
        SettingsTable table = tuning.table(kind.name());
        TextFile.write(out, table.text());
        if (logFile != null) {
            TextFile.write(logFile, log.toString());
        }
        console.println("Settings table: " + out.toAbsolutePath().normalize());
        console.flush();
        return 0;
    }
}
