package org.shutoffbench.harness.cli;

import org.shutoffbench.harness.report.Caution;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code shutoff-bench}. */
@Command(
        name = "shutoff-bench",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Measures how repeatably shutoff strategies bring randomised bolted joints to their target, and how"
                        + " often they say done when the joint is not.",
        subcommands = {
            RunCommand.class,
            ReportCommand.class,
            RecordsCommand.class,
            ClaimCommand.class,
            LessonCommand.class,
            TraceCommand.class,
            CheckCommand.class,
            JointCommand.class,
            TuneCommand.class,
            TrainCommand.class,
            CalibrateCommand.class,
            ConformCommand.class,
            VisitsCommand.class,
            RareCommand.class,
            SensitivityCommand.class,
            WeakestCommand.class
        },
        footer = {"", "Example: shutoff-bench run docs/examples/harbour-walkway.yaml --out walkway", "", Caution.TEXT})
public final class ShutoffBench implements Runnable {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param args the command line
     */
    public static void main(String... args) {
        System.exit(commandLine().execute(args));
    }

    static CommandLine commandLine() {
        return new CommandLine(new ShutoffBench()).setExecutionExceptionHandler(new Failure());
    }

    /** Without a subcommand there is nothing to do: says so, with the usage, and the exit code of a usage error. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing command");
    }

    /** The version in the jar's manifest, or a word that says there is no jar. */
    static String version() {
        String version = ShutoffBench.class.getPackage().getImplementationVersion();
        return version == null ? "(unpackaged)" : version;
    }

    static final class Version implements IVersionProvider {
        /** {@return the version in the jar's manifest, or a word that says there is no jar} */
        @Override
        public String[] getVersion() {
            return new String[] {"shutoff-bench " + version()};
        }
    }
}
