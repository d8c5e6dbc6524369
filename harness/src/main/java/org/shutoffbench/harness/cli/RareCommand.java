package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.study.failure.FindingFile;
import org.shutoffbench.harness.study.failure.RareEstimate;
import org.shutoffbench.harness.study.failure.RareStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code rare}: how rarely a strategy fails. */
@Command(
        name = "rare",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = "Measures a failure too rare to be seen by plain sampling, by subset simulation and by importance"
                + " sampling, and checks both against plain sampling.",
        footer = {
            "",
            "Example: shutoff-bench rare docs/examples/harbour-walkway.yaml --strategy \"adaptive estimation\""
                    + " --family \"lock nut\" --out rare",
            "",
            Caution.TEXT
        })
final class RareCommand implements Callable<Integer> {

    private static final double CONFIDENCE = 0.95;
    private static final int LEAST_SAMPLES = 100;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Mixin
    private final FailureOptions options = new FailureOptions();

    @Option(
            names = "--samples",
            paramLabel = "N",
            description = "samples of each level of subset simulation, a multiple of 10 (default: ${DEFAULT-VALUE})")
    private int samples = 2000;

    @Option(
            names = "--importance",
            paramLabel = "N",
            description = "draws round the design point, 0 for none (default: ${DEFAULT-VALUE})")
    private int importance = 5000;

    @Option(
            names = "--plain",
            paramLabel = "N",
            description = "joints of plain sampling, 0 for none (default: ${DEFAULT-VALUE})")
    private int plain = 20_000;

    @Override
    public Integer call() throws IOException {
        if (samples < LEAST_SAMPLES || samples % 10 != 0) {
            throw new InputException("--samples " + samples + ": give a multiple of 10, at least " + LEAST_SAMPLES);
        }
        if (importance < 0 || importance == 1 || plain < 0) {
            throw new InputException("--importance and --plain: give 0 for none, or a number of joints");
        }
        FailureOptions.Resolved resolved = options.resolve(FindingFile.RARE);
        RareStudy.Result result = new RareStudy(samples, importance, plain, CONFIDENCE, resolved.seed())
                .run(
                        resolved.bench(),
                        resolved.family(),
                        resolved.strategy(),
                        resolved.eventOrSilentMiss(),
                        resolved.threads());
        options.write(
                result, FindingFile.RARE, words(result), spec.commandLine().getOut());
        return 0;
    }

    private static String words(RareStudy.Result result) {
        StringBuilder text = new StringBuilder(
                "Probability of a " + result.event() + ", " + result.strategy() + " on " + result.family() + ":\n");
        for (RareEstimate estimate : result.estimates()) {
            text.append(String.format(
                    Locale.ROOT,
                    "  %-20s %.3g (95 %% %.3g to %.3g), %d tightenings%s%n",
                    estimate.method(),
                    estimate.estimate(),
                    estimate.interval().low(),
                    estimate.interval().high(),
                    estimate.tightenings(),
                    estimate.effectiveSamples() == null
                            ? ""
                            : String.format(Locale.ROOT, ", worth %.3g samples", estimate.effectiveSamples())));
        }
        return text.append("  ").append(result.agreement()).toString();
    }
}
