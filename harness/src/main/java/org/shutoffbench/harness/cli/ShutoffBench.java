package org.shutoffbench.harness.cli;

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
        description = "Measures how repeatably shutoff strategies bring randomised bolted joints to their target.")
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
        return new CommandLine(new ShutoffBench());
    }

    /** Without a subcommand there is nothing to do: says so, with the usage, and the exit code of a usage error. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing command");
    }

    static final class Version implements IVersionProvider {
        /** {@return the version in the jar's manifest, or a word that says there is no jar} */
        @Override
        public String[] getVersion() {
            String version = ShutoffBench.class.getPackage().getImplementationVersion();
            return new String[] {"shutoff-bench " + (version == null ? "(unpackaged)" : version)};
        }
    }
}
