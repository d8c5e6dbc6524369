package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.SummaryFile;

/** Runs that end when they have shown enough. */
class StopRuleTest {

    @TempDir
    private Path folder;

    private final CommandLineHarness shell = new CommandLineHarness();

    private Path run(String name, String rule, int joints, int threads) throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(folder);
        Path out = folder.resolve(name);
        assertThat(shell.run("run", scenario, "--joints", joints, "--threads", threads, "--out", out, "--stop", rule))
                .isZero();
        return out;
    }

    @Test
    void endsAtTheFirstLookWhoseIntervalsAreNarrowEnough() throws IOException {
        Path out = run("narrow", "interval 18 %", 400, 2);
        StudySummary summary = SummaryFile.read(out.resolve("summary.json"));
        assertThat(summary.stopping().rule()).isEqualTo("intervals within 18.0 points");
        long n = summary.cell(0, 0).run();
        assertThat(n).isIn(64L, 128L, 256L);
        assertThat(summary.families().get(0).joints()).isEqualTo((int) n);
        assertThat(summary.cells()).allSatisfy(cell -> {
            assertThat(cell.run()).isEqualTo(n);
            assertThat(cell.rates()).isNotNull();
            assertThat(cell.rates().inWindow().high() - cell.rates().inWindow().low())
                    .isLessThanOrEqualTo(0.36);
        });
        // looking more than once costs confidence: the intervals are wider than those of a fixed number
        assertThat(summary.methods().confidence()).isBetween(0.95, 0.9999);
        assertThat(shell.out()).contains("Ended by: intervals within 18.0 points");
        assertThat(Files.readString(out.resolve("report.html"))).contains("every interval was narrow enough");
    }

    @Test
    void aRuleThatIsNotMetSaysSo() throws IOException {
        Path out = run("never", "interval 0.1 %", 70, 2);
        StudySummary summary = SummaryFile.read(out.resolve("summary.json"));
        assertThat(summary.stopping().rule()).isEqualTo("largest number of joints");
        assertThat(summary.stopping().looks()).isEqualTo(2);
        assertThat(summary.cell(1, 1).run()).isEqualTo(70);
    }

    @Test
    void aRankingIsDecidedOnceTheBestIsKnown() throws IOException {
        Path out = run("ranking", "ranking 30 %", 400, 2);
        StudySummary summary = SummaryFile.read(out.resolve("summary.json"));
        assertThat(summary.stopping().reason()).contains("was found best");
        assertThat(summary.cell(0, 0).run()).isLessThan(400);
    }

    @Test
    void threadsAndAnInterruptionChangeNoByte() throws IOException {
        Path one = run("one", "interval 18 %", 200, 1);
        Path two = run("two", "interval 18 %", 200, 2);
        assertThat(two.resolve("outcomes.csv")).hasSameBinaryContentAs(one.resolve("outcomes.csv"));
        assertThat(two.resolve("summary.json")).hasSameBinaryContentAs(one.resolve("summary.json"));
        Path cut = folder.resolve("cut");
        Files.createDirectories(cut);
        String rows = Files.readString(one.resolve("outcomes.csv"));
        Files.writeString(cut.resolve("outcomes.csv.part"), rows.substring(0, rows.length() * 2 / 5));
        Path unfinished = folder.resolve("note");
        assertThat(shell.run("run", folder.resolve("small.yaml"), "--joints", 200, "--out", unfinished, "--stop", "x"))
                .isEqualTo(2);
        Files.writeString(
                cut.resolve("unfinished.json"),
                "{\"version\":\"(unpackaged)\",\"scenarioHash\":\""
                        + org.shutoffbench.harness.scenario.ScenarioFile.hash(
                                new org.shutoffbench.harness.scenario.ScenarioFile(
                                                new org.shutoffbench.harness.run.StrategyCatalogue())
                                        .read(folder.resolve("small.yaml")))
                        + "\",\"seed\":1,\"jointsPerFamily\":200,\"stop\":\"intervals within 18.0 points\"}");
        assertThat(shell.run(
                        "run", folder.resolve("small.yaml"), "--joints", 200, "--out", cut, "--stop", "interval 18 %"))
                .as(shell.err())
                .isZero();
        assertThat(cut.resolve("outcomes.csv")).hasSameBinaryContentAs(one.resolve("outcomes.csv"));
        assertThat(cut.resolve("summary.json")).hasSameBinaryContentAs(one.resolve("summary.json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"interval", "interval 1", "interval 60 %", "ranking -1 %", "time 3 s", ""})
    void aRuleThatIsNoneIsRefused(String rule) throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(folder);
        assertThat(shell.run("run", scenario, "--out", folder.resolve("x"), "--stop", rule))
                .isEqualTo(2);
        assertThat(shell.err()).contains("--stop").contains("interval 1 %");
        assertThat(folder.resolve("x")).doesNotExist();
    }
}
