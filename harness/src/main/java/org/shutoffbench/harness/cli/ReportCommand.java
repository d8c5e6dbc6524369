package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.FinishedRun;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.failure.FindingFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code report}: writes the page of a finished run again. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Writes report.html of a finished run again, from the files in its folder; says what rare, sensitivity and"
                        + " weakest found there.",
        footer = {"", "Example: shutoff-bench report walkway", "", Caution.TEXT})
final class ReportCommand implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "folder of a finished run")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Override
    public Integer call() throws IOException {
        boolean findings = printFindings();
        if (findings && !Files.isRegularFile(folder.resolve(RunFolder.SUMMARY))) {
            return 0;
        }
        if (!Files.isRegularFile(folder.resolve(RunFolder.SUMMARY))) {
            throw new InputException(folder + " holds no finished run: " + RunFolder.SUMMARY
                    + " is missing; finish the run with the command that began it");
        }
        Path page = FinishedRun.open(folder, new ScenarioFile(new StrategyCatalogue()))
                .writeReport();
        spec.commandLine().getOut().println("Report: " + page.toAbsolutePath().normalize());
        spec.commandLine().getOut().flush();
        return 0;
    }

    /** What {@code rare}, {@code sensitivity} and {@code weakest} left in the folder, in words. */
    private boolean printFindings() throws IOException {
        boolean found = false;
        for (String finding : List.of(FindingFile.RARE, FindingFile.SENSITIVITY, FindingFile.WEAKEST)) {
            Path words = folder.resolve(finding.replace(".json", ".txt"));
            if (Files.isRegularFile(words)) {
                spec.commandLine().getOut().println(Files.readString(words));
                found = true;
            }
        }
        spec.commandLine().getOut().flush();
        return found;
    }
}
