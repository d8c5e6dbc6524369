package org.shutoffbench.harness.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code check}: reads a scenario and says whether it can be run. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = "Reads a scenario and says whether it can be run. Writes nothing.")
final class CheckCommand implements Callable<Integer> {

    private static final int JOINTS_DRAWN = 1000;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init")
    private Path scenarioFile;

    @Option(names = "--resolved", description = "print the scenario with every key resolved: itself a scenario file")
    private boolean resolved;

    @Override
    public Integer call() {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).read(scenarioFile);
        Bench bench = Bench.of(scenario, scenario.seed(), catalogue);
        int drawn = Math.min(scenario.jointsPerFamily(), JOINTS_DRAWN);
        bench.population().firstImpossible(drawn).ifPresent(impossible -> {
            throw impossible;
        });
        PrintWriter out = spec.commandLine().getOut();
        if (resolved) {
            out.print(ScenarioFile.resolved(scenario));
            out.flush();
        } else {
            out.printf(
                    "%s can be run: %d families, %d strategies, %d joints per family%n",
                    scenarioFile,
                    scenario.families().size(),
                    scenario.strategies().size(),
                    scenario.jointsPerFamily());
            bench.population().warnings().forEach(warning -> out.println("warning: " + warning));
        }
        return 0;
    }
}
