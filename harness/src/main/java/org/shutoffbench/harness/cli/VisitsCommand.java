package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.audit.AuditCount;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.record.OutcomesFile;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.RunSeed;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.AuditRecipe;
import org.shutoffbench.harness.scenario.Costs;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.SummaryFile;
import org.shutoffbench.harness.study.failure.FindingFile;
import org.shutoffbench.harness.visits.VisitsReport;
import org.shutoffbench.harness.visits.VisitsWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code visits}: whether one visit is enough. */
@Command(
        name = "visits",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "One visit or two: audits the tightened joints by hand, in simulation, and says what one pass, one pass with"
                    + " every joint audited, and one pass with a sample audited cost and leave low, and whether leaving out"
                    + " the audit is defensible.",
            "Needs the sections audit and costs in the scenario. Of a finished run it reads the rows and tightens nothing."
        },
        footer = {
            "",
            "Example: shutoff-bench visits docs/examples/visits/not-yet.yaml --strategy \"adaptive estimation (all)\""
                    + " --job 20000",
            "",
            "A saving here is no permission: where a code or a designer asks for an audit, it stays.",
            Caution.TEXT
        })
final class VisitsCommand implements Callable<Integer> {

    private static final int JOINTS_PER_CHUNK = 16;
    private static final String JSON = "visits.json";
    private static final String TEXT = "visits.txt";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO|DIR", description = "scenario file, or folder of a finished run")
    @SuppressWarnings("NullAway.Init")
    private Path source;

    @Option(names = "--strategy", paramLabel = "NAME", required = true, description = "a strategy of the scenario")
    @SuppressWarnings("NullAway.Init")
    private String strategy;

    @Option(
            names = "--job",
            paramLabel = "N",
            description = "joints of the job whose labour and risk are told (default: ${DEFAULT-VALUE})")
    private long job = 1000;

    @Option(
            names = "--joints",
            paramLabel = "N",
            description = "joints per family, of a scenario (default: the scenario's)")
    private @Nullable Integer joints;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "root seed of all draws, of a scenario (default: the scenario's)")
    private @Nullable Long seed;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads (default: one per processor); changes no result")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--out", paramLabel = "DIR", description = "folder for visits.txt and visits.json")
    private @Nullable Path out;

    @Option(names = "--overwrite", description = "replace visits.txt and visits.json in DIR")
    private boolean overwrite;

    @Override
    public Integer call() throws IOException, InterruptedException {
        Checks.threads(threads);
        if (job < 1 || job > MOST_OF_A_JOB) {
            throw new InputException("--job " + job + ": give 1 to " + MOST_OF_A_JOB + " joints");
        }
        checkOut();
        VisitsReport report = Files.isDirectory(source) ? ofRun() : ofScenario();
        String words = new VisitsWords(report).text() + Caution.TEXT + "\n";
        PrintWriter console = spec.commandLine().getOut();
        console.print(words);
        if (out != null) {
            TextFile.write(out.resolve(JSON), FindingFile.text(report));
            TextFile.write(out.resolve(TEXT), words);
            console.println("Finding: " + out.resolve(JSON).toAbsolutePath().normalize());
        }
        console.flush();
        return 0;
    }

    private static final long MOST_OF_A_JOB = 1_000_000_000L;

    private void checkOut() {
        if (out == null) {
            return;
        }
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new InputException(out + " is a file, not a folder; name another with --out");
        }
        if (!overwrite && (Files.exists(out.resolve(JSON)) || Files.exists(out.resolve(TEXT)))) {
            throw new InputException(out + " holds an earlier " + JSON
                    + "; name another folder with --out, or replace it with --overwrite");
        }
    }

    private VisitsReport ofRun() throws IOException {
        for (String name : List.of(RunFolder.SUMMARY, RunFolder.PROVENANCE, RunFolder.SCENARIO, RunFolder.OUTCOMES)) {
            if (!Files.isRegularFile(source.resolve(name))) {
                throw new InputException(source + " holds no finished run: " + name
                        + " is missing; finish the run with the command that began it");
            }
        }
        if (joints != null || seed != null) {
            throw new InputException("--joints and --seed belong to a scenario; the run in " + source + " has its own");
        }
        Scenario scenario = new ScenarioFile(new StrategyCatalogue()).read(source.resolve(RunFolder.SCENARIO));
        Asked asked = asked(scenario);
        Population population = new Population(scenario, RunSeed.read(source.resolve(RunFolder.PROVENANCE)));
        OutcomesFormat format =
                SummaryFile.read(source.resolve(RunFolder.SUMMARY)).outcomesFormat();
        AuditCount count =
                new AuditCount(population, asked.audit(), scenario.strategies().size());
        OutcomesFile.read(source.resolve(RunFolder.OUTCOMES), format, row -> {
            if (row.strategy() == asked.strategy()) {
                count.add(row);
            }
        });
        return VisitsReport.of(scenario, asked.costs(), count, asked.name(), asked.strategy(), job);
    }

    private VisitsReport ofScenario() throws InterruptedException {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Scenario scenario = new ScenarioFile(catalogue).read(source);
        Asked asked = asked(scenario);
        int perFamily = Checks.joints(joints == null ? scenario.jointsPerFamily() : joints);
        Bench all = Bench.of(scenario, seed == null ? scenario.seed() : seed, catalogue);
        Bench bench = all.with(List.of(all.contestants().get(asked.strategy())));
        AuditCount count = new AuditCount(bench.population(), asked.audit(), 1);
        long total = (long) perFamily * scenario.families().size();
        try (Progress progress = Progress.of("joints", total)) {
            OrderedWork.run(
                    0,
                    (total + JOINTS_PER_CHUNK - 1) / JOINTS_PER_CHUNK,
                    threads,
                    () -> {
                        ClosedLoop loop = bench.newLoop();
                        return chunk -> tighten(bench, loop, perFamily, chunk * JOINTS_PER_CHUNK, total);
                    },
                    rows -> {
                        rows.forEach(count::add);
                        progress.to(progress.done() + rows.size());
                    });
        }
        return VisitsReport.of(scenario, asked.costs(), count, asked.name(), 0, job);
    }

    private static List<TighteningRecord> tighten(Bench bench, ClosedLoop loop, int perFamily, long from, long total) {
        List<TighteningRecord> rows = new ArrayList<>();
        for (long unit = from; unit < Math.min(from + JOINTS_PER_CHUNK, total); unit++) {
            rows.add(bench.tighten(loop, (int) (unit / perFamily), (int) (unit % perFamily))[0]);
        }
        return rows;
    }

    /** What the scenario says to the question. */
    private record Asked(AuditRecipe audit, Costs costs, int strategy, String name) {}

    private Asked asked(Scenario scenario) {
        AuditRecipe audit = scenario.audit();
        Costs costs = scenario.costs();
        if (audit == null || costs == null) {
            throw new InputException(source + " has no section " + (audit == null ? "audit" : "costs")
                    + "; docs/audit.md and docs/visits.md say what belongs there, docs/examples/visits has examples");
        }
        int index = Checks.strategy(scenario, strategy, source);
        var entry = scenario.strategies().get(index);
        return new Asked(audit, costs, index, entry.label() + " (" + entry.settings() + ")");
    }
}
