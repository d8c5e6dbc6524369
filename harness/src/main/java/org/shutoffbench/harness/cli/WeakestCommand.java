package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.scenario.JarCopies;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.failure.FindingFile;
import org.shutoffbench.harness.study.failure.WeakestStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code weakest}: the most likely joint on which a strategy fails. */
@Command(
        name = "weakest",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Finds the joint nearest to the mild one, all draws at their medians, on which a strategy fails, and"
                        + " writes it as a scenario of its own.",
        footer = {
            "",
            "Example: shutoff-bench weakest docs/examples/harbour-walkway.yaml --strategy \"blow count\" --family"
                    + " \"lock nut\" --out weakest",
            "",
            Caution.TEXT
        })
final class WeakestCommand implements Callable<Integer> {

    private static final double CONFIDENCE = 0.95;
    private static final int NOISE_RUNS = 1000;
    private static final int SAMPLES_PER_LEVEL = 1000;
    private static final String JOINT = "weakest.yaml";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Mixin
    private final FailureOptions options = new FailureOptions();

    @Option(
            names = "--probes",
            paramLabel = "N",
            description = "random joints nearer than the one found that must all hold (default: ${DEFAULT-VALUE})")
    private int probes = 100_000;

    @Option(
            names = "--noises",
            paramLabel = "N",
            description =
                    "fixed noises, an odd number; a joint fails where it fails under most of them, so that a fluke of"
                            + " one noise counts less (default: ${DEFAULT-VALUE})")
    private int noises = 1;

    @Override
    public Integer call() throws IOException {
        if (probes < 0) {
            throw new InputException("--probes " + probes + ": give 0 or more");
        }
        if (noises < 1 || noises % 2 == 0) {
            throw new InputException("--noises " + noises + ": give an odd number");
        }
        FailureOptions.Resolved resolved = options.resolve(FindingFile.WEAKEST);
        if (resolved.bench().scenario().judgement().quantity() == JudgedQuantity.CLAMP_FORCE) {
            throw new InputException(
                    "judge: clamp force: the tool is set on the median joint of a family, which a scenario"
                            + " of one joint does not have; judge by clamping torque to search for the weakest joint");
        }
        WeakestStudy.Found found = new WeakestStudy(
                        probes, noises, NOISE_RUNS, SAMPLES_PER_LEVEL, CONFIDENCE, resolved.seed())
                .run(
                        resolved.bench(),
                        resolved.seed(),
                        resolved.family(),
                        resolved.strategy(),
                        resolved.eventOrSilentMiss(),
                        resolved.threads());
        if (found.joint() != null) {
            TextFile.write(
                    options.out().resolve(JOINT),
                    ScenarioFile.resolved(JarCopies.beside(found.joint(), options.out())));
        }
        options.write(
                found.result(),
                FindingFile.WEAKEST,
                words(found.result()),
                spec.commandLine().getOut());
        return 0;
    }

    private String words(WeakestStudy.Result result) {
        if (result.beta() == null) {
            return result.words();
        }
        StringBuilder text = new StringBuilder(result.words()).append('\n');
        text.append(String.format(Locale.ROOT, "  beta %.4f, Phi(-beta) %.3g%n", result.beta(), result.probability()));
        for (WeakestStudy.Change change : result.changes()) {
            text.append(String.format(Locale.ROOT, "  %-36s %+.4f sigma%n", change.source(), change.sigma()));
        }
        text.append(String.format(
                Locale.ROOT,
                "  fails in %.1f %% of runs with other noise; none of %d random joints nearer than it fails; %d"
                        + " tightenings%n",
                100 * result.failsOverNoise(),
                result.probes(),
                result.tightenings()));
        return text.append("  Joint: ")
                .append(options.out().resolve(JOINT).toAbsolutePath().normalize())
                .toString();
    }
}
