package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordsCommandTest {

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    private Path run;

    @BeforeEach
    void runTheScenario() throws IOException {
        run = temporary.resolve("run");
        assertThat(command.run(
                        "run", CommandLineHarness.scenarioIn(temporary), "--joints", 3, "--threads", 1, "--out", run))
                .as(command.err())
                .isZero();
    }

    @Test
    void aRunLeavesASchemaBesideItsOutcomesAndTheirHashInItsProvenance() throws IOException {
        assertThat(run.resolve("outcomes.csv.schema.json")).content().contains("\"clamp_force_N\"", "\"locked\"");
        assertThat(Files.readString(run.resolve("run.json"))).containsPattern("outcomesSha256\" : \"[0-9a-f]{64}\"");
    }

    @Test
    void theRecordsLeaveInEveryFormWithoutSimulating() {
        for (String format : new String[] {"csv", "parquet", "json"}) {
            Path out = temporary.resolve("records." + format);
            assertThat(command.run("records", run, "--format", format, "--out", out))
                    .as(command.err())
                    .isZero();
            assertThat(out).isNotEmptyFile();
            assertThat(temporary.resolve("records." + format + ".run.json")).isNotEmptyFile();
        }
        assertThat(command.out()).contains("12 records");
        assertThat(temporary.resolve("records.csv")).hasSameBinaryContentAs(run.resolve("outcomes.csv"));
    }

    @Test
    void columnsAndConditionsAreTakenFromTheCommandLine() throws IOException {
        Path out = temporary.resolve("few.csv");
        assertThat(command.run(
                        "records",
                        run,
                        "--format",
                        "csv",
                        "--out",
                        out,
                        "--columns",
                        "joint,blows",
                        "--where",
                        "family=locked",
                        "--where",
                        "strategy=blow count"))
                .as(command.err())
                .isZero();
        assertThat(Files.readAllLines(out)).hasSize(4).first().isEqualTo("joint,blows");
    }

    @Test
    void whatCannotBeDoneIsRefusedAndNothingIsWritten() throws IOException {
        Path out = temporary.resolve("refused.csv");
        Object[][] wrong = {
            {run, "--format", "xml", "--out", out},
            {run, "--format", "csv", "--out", out, "--columns", "joint,colour"},
            {run, "--format", "csv", "--out", out, "--columns", "joint,joint"},
            {run, "--format", "csv", "--out", out, "--where", "family=lock nut"},
            {temporary, "--format", "csv", "--out", out},
            {run, "--format", "csv", "--out", run.resolve("outcomes.csv"), "--overwrite"},
            {run, "--format", "csv", "--out", run},
            {run, "--format", "csv", "--out", run.resolve("scenario.yaml")},
        };
        String before = Files.readString(run.resolve("outcomes.csv"));
        for (Object[] options : wrong) {
            Object[] args = new Object[options.length + 1];
            args[0] = "records";
            System.arraycopy(options, 0, args, 1, options.length);
            assertThat(command.run(args)).as(java.util.Arrays.toString(options)).isEqualTo(2);
        }
        assertThat(command.err())
                .contains("xml", "colour", "twice", "hard, locked", "no finished run", "of the run itself", "a folder")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
        assertThat(run.resolve("outcomes.csv")).hasContent(before);
    }
}
