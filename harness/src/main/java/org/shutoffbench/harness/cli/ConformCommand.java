package org.shutoffbench.harness.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.conformance.ConformanceSuite;
import org.shutoffbench.controller.conformance.Finding;
import org.shutoffbench.controller.strategy.Strategies;
import org.shutoffbench.harness.run.StrategyCatalogue;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code conform}: checks a strategy against the contract. */
@Command(
        name = "conform",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Checks a strategy against the contract between tool and strategy: yours, or one of ours by name.",
        footer = {"", "Example: shutoff-bench conform --class com.example.MyStrategy --jar my-strategy.jar"})
final class ConformCommand implements Callable<Integer> {

    /** Which strategy. */
    static final class Subject {
        @Option(
                names = "--class",
                paramLabel = "NAME",
                required = true,
                description = "class name of a strategy's factory")
        private @Nullable String className;

        @Option(names = "--jar", paramLabel = "FILE", required = true, description = "the jar that holds it")
        private @Nullable Path jar;
    }

    /** One of the two. */
    static final class Choice {
        @ArgGroup(exclusive = false)
        private @Nullable Subject external;

        @Option(names = "--strategy", paramLabel = "NAME", description = "one of ours, such as \"blow count\"")
        private @Nullable String ours;
    }

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @ArgGroup(multiplicity = "1")
    @SuppressWarnings("NullAway.Init")
    private Choice choice;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<Finding> failed = new ArrayList<>();
        ConformanceSuite.examine(factory(), finding -> {
            print(finding, out);
            if (finding.result() == Finding.Result.FAILED) {
                failed.add(finding);
            }
        });
        String checks = failed.size() == 1 ? " check failed." : " checks failed.";
        out.println(failed.isEmpty() ? "The strategy keeps the contract." : failed.size() + checks);
        out.flush();
        return failed.isEmpty() ? 0 : Failure.FAILED;
    }

    /** At once, so that a check that never ends can be told from the last line. */
    private static void print(Finding finding, PrintWriter out) {
        out.printf("%-10s %-26s %s%n", word(finding.result()), finding.check(), finding.found());
        if (finding.result() == Finding.Result.FAILED) {
            out.printf("%-10s %-26s remedy: %s%n", "", "", finding.remedy());
        }
        out.flush();
    }

    private static String word(Finding.Result result) {
        return result.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    private StrategyFactory factory() {
        Subject external = choice.external;
        try {
            if (external != null && external.className != null && external.jar != null) {
                return new StrategyCatalogue().externalFactory(external.className, external.jar);
            }
        } catch (IllegalArgumentException unusable) {
            throw new InputException(String.valueOf(unusable.getMessage()));
        }
        StrategyFactory factory = Strategies.byName().get(choice.ours);
        if (factory == null) {
            throw new InputException("--strategy \"" + choice.ours + "\": the strategies are "
                    + String.join(", ", Strategies.byName().keySet()));
        }
        return factory;
    }
}
