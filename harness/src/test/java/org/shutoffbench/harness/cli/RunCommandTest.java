package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    private Path scenario;

    @BeforeEach
    void writeScenario() throws IOException {
        scenario = CommandLineHarness.scenarioIn(temporary);
    }

    private Path run(String name, Object... options) {
        Path out = temporary.resolve(name);
        Object[] args = new Object[options.length + 4];
        args[0] = "run";
        args[1] = scenario;
        args[2] = "--out";
        args[3] = out;
        System.arraycopy(options, 0, args, 4, options.length);
        assertThat(command.run(args)).as(command.err()).isZero();
        return out;
    }

    private static void assertSameResults(Path one, Path other) {
        for (String file : List.of("outcomes.csv", "summary.json")) {
            assertThat(one.resolve(file)).hasSameBinaryContentAs(other.resolve(file));
        }
    }

    @Test
    void oneThreadAndTwoGiveTheSameBytes() {
        assertSameResults(run("one", "--threads", 1), run("two", "--threads", 2));
    }

    @Test
    void aRunLeavesItsFilesAndSaysWhereTheReportIs() throws IOException {
        Path out = run("run");
        assertThat(out.resolve("report.html")).isNotEmptyFile();
        assertThat(out.resolve("outcomes.csv.part")).doesNotExist();
        assertThat(out.resolve("unfinished.json")).doesNotExist();
        assertThat(Files.readAllLines(out.resolve("outcomes.csv"))).hasSize(1 + 2 * 9 * 2);
        assertThat(Files.readString(out.resolve("run.json"))).contains("\"seed\" : 1", "\"jointsPerFamily\" : 9");
        assertThat(command.out()).contains("blow count", "report.html");
    }

    @Test
    void anInterruptedRunGoesOnToTheSameBytes() throws IOException {
        Path whole = run("whole");
        Path cut = run("cut");
        List<String> rows = Files.readAllLines(cut.resolve("outcomes.csv"));
        // as if killed in the middle of the sixth joint's second row
        String kept =
                String.join("\n", rows.subList(0, 12)) + "\n" + rows.get(12).substring(0, 20);
        Files.writeString(cut.resolve("outcomes.csv.part"), kept);
        String version = ShutoffBench.version();
        String hash =
                Files.readString(cut.resolve("run.json")).replaceAll("(?s).*scenarioSha256\" : \"([0-9a-f]+).*", "$1");
        Files.writeString(
                cut.resolve("unfinished.json"),
                "{\"version\":\"" + version + "\",\"scenarioHash\":\"" + hash
                        + "\",\"seed\":1,\"jointsPerFamily\":9,\"stop\":\"fixed number of joints\"}");
        for (String file : List.of("outcomes.csv", "summary.json", "run.json", "report.html")) {
            Files.delete(cut.resolve(file));
        }
        run("cut");
        assertSameResults(whole, cut);
        assertThat(Files.readString(cut.resolve("run.json"))).contains("\"resumedAtJoint\" : 5");
    }

    @Test
    void anotherStrategySetDoesNotChangeTheJoints() throws IOException {
        List<String> both = Files.readAllLines(run("both").resolve("outcomes.csv"));
        Files.writeString(
                scenario, CommandLineHarness.SCENARIO.replace("[blow count, energy per blow]", "[energy per blow]"));
        List<String> alone = Files.readAllLines(run("alone").resolve("outcomes.csv"));
        assertThat(both).containsAll(alone);
    }

    @Test
    void aFinishedRunIsNotOverwrittenUnlessAsked() {
        Path out = run("run");
        assertThat(command.run("run", scenario, "--out", out)).isEqualTo(2);
        assertThat(command.err()).contains("--overwrite");
        assertThat(command.run("run", scenario, "--out", out, "--overwrite")).isZero();
    }

    @Test
    void aScenarioWithoutStrategiesSaysWhatToAdd() throws IOException {
        Files.writeString(
                scenario, CommandLineHarness.SCENARIO.replace("strategies: [blow count, energy per blow]", ""));
        assertThat(command.run("run", scenario, "--out", temporary.resolve("none")))
                .isEqualTo(2);
        assertThat(command.err()).contains("strategies");
        assertThat(temporary.resolve("none")).doesNotExist();
    }

    @Test
    void impossibleNumbersOfJointsAndThreadsAreRefused() {
        assertThat(command.run("run", scenario, "--joints", 0)).isEqualTo(2);
        assertThat(command.run("run", scenario, "--threads", 0)).isEqualTo(2);
        assertThat(command.err()).contains("--joints 0", "--threads 0").doesNotContain("\tat ");
    }
}
