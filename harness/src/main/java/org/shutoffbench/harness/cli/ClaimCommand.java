package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.claim.Claim;
import org.shutoffbench.harness.claim.ClaimDesk;
import org.shutoffbench.harness.claim.ClaimFile;
import org.shutoffbench.harness.claim.ClaimPage;
import org.shutoffbench.harness.claim.ClaimPlan;
import org.shutoffbench.harness.claim.ClaimReport;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code claim}: what a seller promises, from a sentence to a decision. */
@Command(
        name = "claim",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description =
                "Plans a test of what a seller promises, tries it on simulated joints, or judges it by measured ones.",
        subcommands = {ClaimCommand.Plan.class, ClaimCommand.Try.class, ClaimCommand.Judge.class},
        footer = {"", "Example: shutoff-bench claim plan docs/examples/claims/any-joint.yaml", "", Caution.TEXT})
final class ClaimCommand implements Runnable {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    /** Without plan, try or judge there is nothing to do. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing command: plan, try or judge");
    }

    /** Where the page goes. */
    static final class PageOption {
        @Option(names = "--report", paramLabel = "FILE.html", description = "one page to print")
        private @Nullable Path report;

        @Option(names = "--overwrite", description = "replace FILE.html")
        private boolean overwrite;

        void check() {
            if (report != null && Files.isDirectory(report)) {
                throw new InputException(report + " is a folder, not a file; name a file with --report");
            }
            if (report != null && Files.exists(report) && !overwrite) {
                throw new InputException(
                        report + " exists; name another file with --report, or replace it with --overwrite");
            }
        }

        void show(ClaimPage page, String source, PrintWriter console) throws IOException {
            console.print(page.text());
            console.println();
            console.println(Caution.TEXT);
            if (report != null) {
                ClaimReport.write(report, page, source);
                console.println("Report: " + report.toAbsolutePath().normalize());
            }
            console.flush();
        }
    }

    /** {@code claim plan}. */
    @Command(
            name = "plan",
            mixinStandardHelpOptions = true,
            versionProvider = ShutoffBench.Version.class,
            description = "Sample sizes, acceptance numbers, risks and cost of a test that would show the claim.",
            footer = {
                "",
                "Example: shutoff-bench claim plan docs/examples/claims/any-joint.yaml --report plan.html",
                "",
                Caution.TEXT
            })
    static final class Plan implements Callable<Integer> {

        @Spec
        @SuppressWarnings("NullAway.Init")
        private CommandSpec spec;

        @Parameters(paramLabel = "CLAIM", description = "claim file")
        @SuppressWarnings("NullAway.Init")
        private Path file;

        @picocli.CommandLine.Mixin
        private PageOption page = new PageOption();

        @Override
        public Integer call() throws IOException {
            page.check();
            Claim claim = ClaimFile.read(file);
            page.show(
                    ClaimPlan.of(claim).page(),
                    file.toString(),
                    spec.commandLine().getOut());
            return 0;
        }
    }

    /** {@code claim try}. */
    @Command(
            name = "try",
            mixinStandardHelpOptions = true,
            versionProvider = ShutoffBench.Version.class,
            description = {
                "Tightens a bank of simulated joints and draws thousands of acceptance tests from it.",
                "Name several strategies, or a second claim with --and, to see them side by side on the same joints."
            },
            footer = {
                "",
                "Example: shutoff-bench claim try docs/examples/claims/any-joint.yaml docs/examples/harbour-walkway.yaml"
                        + " --strategy \"blow count (home)\" --strategy \"adaptive estimation (all)\"",
                "",
                Caution.TEXT
            })
    static final class Try implements Callable<Integer> {

        @Spec
        @SuppressWarnings("NullAway.Init")
        private CommandSpec spec;

        @Parameters(index = "0", paramLabel = "CLAIM", description = "claim file")
        @SuppressWarnings("NullAway.Init")
        private Path file;

        @Parameters(index = "1", paramLabel = "SCENARIO", description = "scenario file")
        @SuppressWarnings("NullAway.Init")
        private Path scenarioFile;

        @Option(names = "--and", paramLabel = "CLAIM", description = "a second claim, tried on the same joints")
        private @Nullable Path second;

        @Option(
                names = "--strategy",
                paramLabel = "NAME",
                required = true,
                description = "a strategy of the scenario; repeat for more")
        private List<String> strategies = new ArrayList<>();

        @Option(names = "--bank", paramLabel = "N", description = "tightenings of each strategy (default: 50000)")
        private int bank = 50_000;

        @Option(names = "--plans", paramLabel = "N", description = "acceptance tests drawn (default: 10000)")
        private int plans = 10_000;

        @Option(names = "--seed", paramLabel = "S", description = "root seed of all draws (default: the scenario's)")
        private @Nullable Long seed;

        @Option(
                names = "--threads",
                paramLabel = "T",
                description = "threads (default: one per processor); changes no result")
        private int threads = Runtime.getRuntime().availableProcessors();

        @picocli.CommandLine.Mixin
        private PageOption page = new PageOption();

        @Override
        public Integer call() throws IOException, InterruptedException {
            page.check();
            Checks.threads(threads);
            if (bank < 1 || bank > Scenario.MOST_JOINTS) {
                throw new InputException("--bank " + bank + ": give 1 to " + Scenario.MOST_JOINTS + " tightenings");
            }
            if (plans < 1 || plans > 10_000_000) {
                throw new InputException("--plans " + plans + ": give 1 to 10000000");
            }
            List<Claim> claims = new ArrayList<>(List.of(ClaimFile.read(file)));
            if (second != null) {
                claims.add(ClaimFile.read(second));
            }
            StrategyCatalogue catalogue = new StrategyCatalogue();
            Scenario scenario = new ScenarioFile(catalogue).read(scenarioFile);
            List<Integer> chosen = new ArrayList<>();
            for (String name : strategies) {
                chosen.add(Checks.strategy(scenario, name, scenarioFile));
            }
            long rootSeed = seed == null ? scenario.seed() : seed;
            ClaimPage found;
            try (Progress progress = Progress.of("joints", bank)) {
                found = ClaimDesk.tryOn(
                        claims,
                        Bench.of(scenario, rootSeed, catalogue),
                        chosen,
                        bank,
                        plans,
                        rootSeed,
                        threads,
                        progress::to);
            } catch (ClaimDesk.NotComparableException apart) {
                throw new InputException(file + ": " + apart.getMessage());
            }
            page.show(
                    found,
                    file + (second == null ? "" : " and " + second) + " on " + scenarioFile + ", seed " + rootSeed
                            + ", " + bank + " tightenings",
                    spec.commandLine().getOut());
            return 0;
        }
    }

    /** {@code claim judge}. */
    @Command(
            name = "judge",
            mixinStandardHelpOptions = true,
            versionProvider = ShutoffBench.Version.class,
            description = {
                "Holds measured joints against the claim, which says how the file is laid out.",
                "Name several files, or a second claim with --and, to see them side by side."
            },
            footer = {
                "",
                "Example: shutoff-bench claim judge docs/examples/claims/mean-shift.yaml"
                        + " docs/examples/claims/mean-shift.csv",
                "",
                Caution.TEXT
            })
    static final class Judge implements Callable<Integer> {

        @Spec
        @SuppressWarnings("NullAway.Init")
        private CommandSpec spec;

        @Parameters(index = "0", paramLabel = "CLAIM", description = "claim file")
        @SuppressWarnings("NullAway.Init")
        private Path file;

        @Parameters(
                index = "1..*",
                arity = "1..*",
                paramLabel = "MEASURED.csv",
                description = "one row per reading; several files, of two tools for example, stand side by side")
        private List<Path> measured = new ArrayList<>();

        @Option(names = "--and", paramLabel = "CLAIM", description = "a second claim, judged by the same joints")
        private @Nullable Path second;

        @Option(
                names = "--by",
                paramLabel = "LAW",
                description = "counts: failing joints decide; variables: mean and spread of values that look normal may"
                        + " support the claim (default: counts)")
        private Law law = Law.counts;

        /** What may support a claim, as the command line writes it. */
        enum Law {
            counts,
            variables
        }

        @Option(
                names = "--simulated",
                paramLabel = "DIR",
                description = "a finished run whose joints are shown beside the measured ones")
        private @Nullable Path simulated;

        @Option(names = "--strategy", paramLabel = "NAME", description = "its strategy, such as \"blow count (home)\"")
        private @Nullable String strategy;

        @Option(
                names = "--simulated-weight",
                paramLabel = "W",
                description = "weight of a simulated joint in the verdict, 0 to 1 (default: 0)")
        private double weight;

        @picocli.CommandLine.Mixin
        private PageOption page = new PageOption();

        @Override
        public Integer call() throws IOException {
            page.check();
            if (!(weight >= 0 && weight <= 1)) {
                throw new InputException("--simulated-weight " + weight + ": give a weight from 0 to 1");
            }
            if ((simulated == null) != (strategy == null)) {
                throw new InputException("--simulated and --strategy go together: a run, and which of its strategies");
            }
            if (simulated == null && weight > 0) {
                throw new InputException("--simulated-weight needs --simulated DIR");
            }
            if (law == Law.variables && weight > 0) {
                throw new InputException(
                        "--by variables and --simulated-weight do not go together: simulated joints can"
                                + " only be counted");
            }
            for (Path one : measured) {
                if (!Files.isRegularFile(one)) {
                    throw new InputException(one + " is no file that can be read; name the file of measurements");
                }
            }
            List<Claim> claims = new ArrayList<>(List.of(ClaimFile.read(file)));
            if (second != null) {
                claims.add(ClaimFile.read(second));
            }
            ClaimDesk.SimulatedRun run = simulated == null || strategy == null
                    ? null
                    : new ClaimDesk.SimulatedRun(simulated, strategy, weight);
            ClaimPage found;
            try {
                found = ClaimDesk.judge(claims, measured, run, law == Law.variables);
            } catch (ClaimDesk.NotComparableException apart) {
                throw new InputException(file + ": " + apart.getMessage());
            }
            page.show(
                    found,
                    file + (second == null ? "" : " and " + second) + " by "
                            + measured.stream().map(Path::toString).collect(Collectors.joining(", ")),
                    spec.commandLine().getOut());
            return 0;
        }
    }
}
