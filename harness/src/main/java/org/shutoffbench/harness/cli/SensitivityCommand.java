package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.study.failure.FindingFile;
import org.shutoffbench.harness.study.failure.SensitivityStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code sensitivity}: what to fix first. */
@Command(
        name = "sensitivity",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Shares the scatter of the judged quantity, or of a failure named with --event, among its sources:"
                        + " alone, and with all interactions.",
        footer = {
            "",
            "Example: shutoff-bench sensitivity docs/examples/harbour-walkway.yaml --strategy \"blow count\""
                    + " --out sensitivity",
            "",
            Caution.TEXT
        })
final class SensitivityCommand implements Callable<Integer> {

    private static final double CONFIDENCE = 0.95;
    private static final int LEAST_ROWS = 100;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Mixin
    private final FailureOptions options = new FailureOptions();

    @Option(
            names = "--rows",
            paramLabel = "N",
            description = "rows of each sample matrix; each costs a tightening for every source and two more (default:"
                    + " ${DEFAULT-VALUE})")
    private int rows = 1000;

    @Override
    public Integer call() throws IOException {
        if (rows < LEAST_ROWS) {
            throw new InputException("--rows " + rows + ": give at least " + LEAST_ROWS);
        }
        FailureOptions.Resolved resolved = options.resolve(FindingFile.SENSITIVITY);
        SensitivityStudy.Result result = new SensitivityStudy(rows, CONFIDENCE, resolved.seed())
                .run(resolved.bench(), resolved.family(), resolved.strategy(), resolved.event(), resolved.threads());
        options.write(
                result,
                FindingFile.SENSITIVITY,
                words(result),
                spec.commandLine().getOut());
        return 0;
    }

    private static String words(SensitivityStudy.Result result) {
        StringBuilder text = new StringBuilder("Scatter of " + result.of() + ", " + result.strategy() + " on "
                + result.family() + ", share alone and with interactions (95 %):\n");
        for (SensitivityStudy.Share share : result.shares()) {
            text.append(String.format(
                    Locale.ROOT,
                    "  %-28s %5.1f %% (%.1f to %.1f)   %5.1f %% (%.1f to %.1f)%n",
                    share.name(),
                    100 * share.first(),
                    100 * share.firstInterval().low(),
                    100 * share.firstInterval().high(),
                    100 * share.total(),
                    100 * share.totalInterval().low(),
                    100 * share.totalInterval().high()));
        }
        text.append("  ").append(result.tightenings()).append(" tightenings");
        if (result.impossible() > 0) {
            text.append(", of them ").append(result.impossible()).append(" on joints that cannot be, counted as 0");
        }
        return text.toString();
    }
}
