package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.export.Condition;
import org.shutoffbench.harness.record.export.RecordSelection;
import org.shutoffbench.harness.record.export.RecordsExport;
import org.shutoffbench.harness.record.export.RecordsFormat;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.run.OutcomeRule;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.SummaryFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code records}: the outcomes of a finished run in another form. */
@Command(
        name = "records",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Writes the outcomes of a finished run in another form, without simulating again: csv with a table schema,"
                    + " parquet, or json with the field names of OPC 40450-1 (IsSimulated true).",
            "FILE.run.json beside it says where it comes from and its SHA-256; FILE.schema.json holds the schema of csv"
                    + " and json. Parquet needs shutoff-bench-parquet.jar beside shutoff-bench.jar."
        },
        footer = {
            "",
            "Example: shutoff-bench records walkway --format csv --out misses.csv --where verdict=REACHED"
                    + " --where \"clamping_torque_Nm<71.4\" --columns family,joint,strategy,clamping_torque_Nm",
            "",
            Caution.TEXT
        })
final class RecordsCommand implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "folder of a finished run")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Option(names = "--format", paramLabel = "F", required = true, description = "csv, parquet or json")
    @SuppressWarnings("NullAway.Init")
    private String format;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "file to write")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(
            names = "--columns",
            paramLabel = "C,C,...",
            description = "columns of outcomes.csv, in the order wanted (default: all)")
    private String columns = "";

    @Option(
            names = "--where",
            paramLabel = "CONDITION",
            description = "only records that meet it, such as \"family=lock nut\" or \"blows>=20\"; repeat for more")
    private List<String> where = new ArrayList<>();

    @Option(names = "--overwrite", description = "replace FILE")
    private boolean overwrite;

    @Override
    public Integer call() throws IOException {
        RecordsFormat form = RecordsFormat.titled(format)
                .orElseThrow(() -> new InputException("--format \"" + format + "\" is none of "
                        + Stream.of(RecordsFormat.values())
                                .map(RecordsFormat::title)
                                .collect(Collectors.joining(", "))));
        requireFinished();
        if (!form.isAvailable()) {
            throw new InputException("--format parquet needs a library that is not part of this jar: build it with"
                    + " mvn -Pparquet -pl harness -am -DskipTests package and put shutoff-bench-parquet.jar beside"
                    + " shutoff-bench.jar");
        }
        if (Files.isDirectory(out)) {
            throw new InputException(out + " is a folder, not a file; name a file with --out");
        }
        if (Files.exists(out) && !overwrite) {
            throw new InputException(out + " exists; name another file with --out, or replace it with --overwrite");
        }
        if (isOfTheRun()) {
            throw new InputException(out + " is a file of the run itself; name another with --out");
        }
        Scenario scenario = new ScenarioFile(new StrategyCatalogue()).read(folder.resolve(RunFolder.SCENARIO));
        OutcomesFormat outcomes =
                SummaryFile.read(folder.resolve(RunFolder.SUMMARY)).outcomesFormat();
        RecordSelection selection = selection(outcomes);
        long rows = RecordsExport.open(folder, outcomes, OutcomeRule.of(scenario.judgement()))
                .write(
                        out,
                        form,
                        selection,
                        List.copyOf(spec.commandLine().getParseResult().originalArgs()));
        spec.commandLine()
                .getOut()
                .println(rows + " records: " + out.toAbsolutePath().normalize());
        spec.commandLine().getOut().flush();
        return 0;
    }

    private void requireFinished() {
        for (String name : List.of(RunFolder.SUMMARY, RunFolder.PROVENANCE, RunFolder.SCENARIO, RunFolder.OUTCOMES)) {
            if (!Files.isRegularFile(folder.resolve(name))) {
                throw new InputException(folder + " holds no finished run: " + name
                        + " is missing; finish the run with the command that began it");
            }
        }
    }

    private boolean isOfTheRun() {
        Path target = out.toAbsolutePath().normalize();
        return RunFolder.OWN_FILES.stream()
                .anyMatch(name ->
                        folder.toAbsolutePath().normalize().resolve(name).equals(target));
    }

    private RecordSelection selection(OutcomesFormat outcomes) {
        List<OutcomeColumn> chosen = new ArrayList<>();
        try {
            if (columns.isEmpty()) {
                chosen.addAll(List.of(OutcomeColumn.values()));
            }
            for (String title : columns.isEmpty() ? List.<String>of() : Arrays.asList(columns.split(",", -1))) {
                chosen.add(Condition.column(title.strip()));
            }
        } catch (IllegalArgumentException unknown) {
            throw new InputException("--columns: " + unknown.getMessage());
        }
        List<Condition> conditions = new ArrayList<>();
        try {
            for (String text : where) {
                conditions.add(Condition.parse(text, outcomes));
            }
        } catch (IllegalArgumentException wrong) {
            throw new InputException("--where " + wrong.getMessage());
        }
        try {
            return new RecordSelection(chosen, conditions);
        } catch (IllegalArgumentException twice) {
            throw new InputException("--columns: " + twice.getMessage());
        }
    }
}
