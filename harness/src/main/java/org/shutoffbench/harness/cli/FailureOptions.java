package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.failure.FailureEvent;
import org.shutoffbench.harness.study.failure.FindingFile;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What {@code rare}, {@code sensitivity} and {@code weakest} have in common: one strategy, one family, one folder. */
final class FailureOptions {

    @Parameters(paramLabel = "SCENARIO", description = "scenario file")
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private Path scenarioFile;

    @Option(names = "--strategy", paramLabel = "NAME", required = true, description = "a strategy of the scenario")
    @SuppressWarnings("NullAway.Init")
    private String strategy;

    @Option(names = "--family", paramLabel = "NAME", description = "family of joints (default: the first)")
    private @Nullable String family;

    @Option(
            names = "--event",
            paramLabel = "E",
            description = "silent miss, false stop or out of window (default: silent miss)")
    private @Nullable String event;

    @Option(names = "--seed", paramLabel = "S", description = "root seed of all draws (default: the scenario's)")
    private @Nullable Long seed;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads (default: one per processor); changes no result")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "folder for what is found")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--overwrite", description = "replace an earlier finding in DIR")
    private boolean overwrite;

    /** What the options mean, checked. */
    record Resolved(
            Bench bench,
            long seed,
            int family,
            int strategy,
            @Nullable FailureEvent event,
            int threads) {

        /** The event, or a silent miss where none is named. */
        FailureEvent eventOrSilentMiss() {
            return event == null ? FailureEvent.SILENT_MISS : event;
        }
    }

    Resolved resolve(String findingName) {
        Checks.threads(threads);
        FailureEvent wanted = event == null ? null : event(event);
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).read(scenarioFile);
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new InputException(out + " is a file, not a folder; name another with --out");
        }
        if (!overwrite && Files.exists(out.resolve(findingName))) {
            throw new InputException(out + " holds an earlier " + findingName
                    + "; name another folder with --out, or replace it with --overwrite");
        }
        long rootSeed = seed == null ? scenario.seed() : seed;
        return new Resolved(
                Bench.of(scenario, rootSeed, catalogue),
                rootSeed,
                Checks.family(scenario, family),
                Checks.strategy(scenario, strategy, scenarioFile),
                wanted,
                threads);
    }

    void write(Object finding, String name, String words, PrintWriter console) throws IOException {
        TextFile.write(out.resolve(name), FindingFile.text(finding));
        TextFile.write(out.resolve(name.replace(".json", ".txt")), words + "\n" + Caution.TEXT + "\n");
        console.println(words);
        console.println("Finding: " + out.resolve(name).toAbsolutePath().normalize());
        console.flush();
    }

    Path out() {
        return out;
    }

    private static FailureEvent event(String name) {
        List<String> known = new ArrayList<>();
        for (FailureEvent candidate : FailureEvent.values()) {
            if (candidate.title().equals(name)) {
                return candidate;
            }
            known.add(candidate.title());
        }
        throw new InputException("--event \"" + name + "\" is none of " + String.join(", ", known));
    }
}
