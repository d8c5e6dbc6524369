package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.training.TrainedModel;
import org.shutoffbench.harness.study.training.Training;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code train}: fits the learned strategy. */
@Command(
        name = "train",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Fits learned regression to a scenario's joints: training joints and validation joints of their own, never the"
                    + " joints that a run judges.",
            "Writes a JSON file that scenarios name under settings, and beside it a C header with the same numbers."
        },
        footer = {
            "",
            "Example: shutoff-bench train docs/examples/harbour-walkway.yaml --out trained.json",
            "",
            Caution.TEXT
        })
final class TrainCommand implements Callable<Integer> {

    private static final int FEWEST_JOINTS = 20;
    private static final int MOST_JOINTS = 100_000;
    private static final String JSON = ".json";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init")
    private Path scenarioFile;

    @Option(names = "--out", paramLabel = "FILE.json", required = true, description = "what was learned")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(
            names = "--joints",
            paramLabel = "N",
            defaultValue = "500",
            description = "joints per family to train on, and as many to validate (default: ${DEFAULT-VALUE})")
    private int joints;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads (default: one per processor); changes no result")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (joints < FEWEST_JOINTS || joints > MOST_JOINTS) {
            throw new InputException(
                    "--joints " + joints + ": " + FEWEST_JOINTS + " to " + MOST_JOINTS + " are allowed");
        }
        Checks.threads(threads);
        String name = out.getFileName().toString();
        if (!name.endsWith(JSON)) {
            throw new InputException("--out " + out + ": the name ends in " + JSON + "; the C header lies beside it");
        }
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).readWithoutTables(scenarioFile);
        TrainedModel model = model(scenario, catalogue);
        Path header = out.resolveSibling(name.substring(0, name.length() - JSON.length()) + ".h");
        TextFile.write(out, model.json());
        TextFile.write(header, model.header());
        PrintWriter console = spec.commandLine().getOut();
        model.made().forEach((key, value) -> console.println(key + ": " + value));
        console.println("Learned: " + out.toAbsolutePath().normalize() + ", " + TrainedModel.bytes()
                + " bytes of numbers; C header: " + header.toAbsolutePath().normalize());
        console.flush();
        return 0;
    }

    private TrainedModel model(Scenario scenario, StrategyCatalogue catalogue) throws InterruptedException {
        try {
            return new Training(scenario, catalogue, joints, threads).train();
        } catch (IllegalArgumentException unusable) {
            throw new InputException(scenarioFile + ": " + unusable.getMessage());
        }
    }
}
