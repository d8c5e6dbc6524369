package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.ToolRecipe;
import org.shutoffbench.harness.study.calibrate.Calibration;
import org.shutoffbench.harness.study.calibrate.CalibrationCheck;
import org.shutoffbench.harness.study.calibrate.CalibrationFile;
import org.shutoffbench.tool.ImpactTool;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calibrate}: learns what a tool's blows do, on joints of its own. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Strikes plain joints of its own with the nominal tool and writes what strategies must know of it: energy of a"
                    + " blow against carrier speed, and the share of it that turns the nut.",
            "A scenario names the file under calibration."
        },
        footer = {"", "Example: shutoff-bench calibrate heavy --out heavy.json", "", Caution.TEXT})
final class CalibrateCommand implements Callable<Integer> {

    private static final int FEWEST_JOINTS = 30;
    private static final int MOST_JOINTS = 10_000;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(
            paramLabel = "TOOL",
            description = "light, heavy, or a scenario file: its tool with all scatter taken away")
    @SuppressWarnings("NullAway.Init")
    private String tool;

    @Option(names = "--out", paramLabel = "FILE.json", required = true, description = "the calibration")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(
            names = "--joints",
            paramLabel = "N",
            defaultValue = "240",
            description = "joints to strike, and as many again to check (default: ${DEFAULT-VALUE})")
    private int joints;

    /** A tool, and what the file calls it. */
    private record Nominal(String name, ImpactTool tool) {}

    @Override
    public Integer call() throws IOException {
        if (joints < FEWEST_JOINTS || joints > MOST_JOINTS) {
            throw new InputException(
                    "--joints " + joints + ": " + FEWEST_JOINTS + " to " + MOST_JOINTS + " are allowed");
        }
        Nominal nominal = nominal();
        Calibration calibration = Calibration.of(nominal.tool(), joints);
        CalibrationCheck check = CalibrationCheck.of(nominal.tool(), calibration, joints, joints);
        TextFile.write(out, CalibrationFile.text(nominal.name(), joints, calibration, check));
        PrintWriter console = spec.commandLine().getOut();
        console.printf(
                "On %d fresh joints, root mean square over %d blows: blow energy off by %.2f %%, transmission by %.2f %%"
                        + " (%.2f %% below 15 N*m).%n",
                check.joints(),
                check.blows(),
                100 * check.blowEnergyError(),
                100 * check.transmissionError(),
                100 * check.lowTorqueTransmissionError());
        console.println("Calibration: " + out.toAbsolutePath().normalize());
        console.flush();
        return 0;
    }

    private Nominal nominal() {
        if (ToolRecipe.REFERENCE.containsKey(tool)) {
            return new Nominal(tool, medianOf(ToolRecipe.of(tool)));
        }
        if (Files.exists(Path.of(tool))) {
            Scenario scenario = new ScenarioFile(new StrategyCatalogue()).readWithoutTables(Path.of(tool));
            return new Nominal("of the scenario " + scenario.name(), medianOf(scenario.tool()));
        }
        throw new InputException(
                "\"" + tool + "\" is neither a tool (light, heavy) nor a scenario file that can be read");
    }

    private static ImpactTool medianOf(ToolRecipe recipe) {
        return ToolRecipe.tool(key -> recipe.number(key).median());
    }
}
