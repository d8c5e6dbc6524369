package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OtherCommandsTest {

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    @Test
    void checkSaysThatAScenarioCanBeRun() throws IOException {
        assertThat(command.run("check", CommandLineHarness.scenarioIn(temporary)))
                .isZero();
        assertThat(command.out()).contains("2 families, 2 strategies, 9 joints");
    }

    @Test
    void theResolvedScenarioIsAScenario() throws IOException {
        assertThat(command.run("check", "--resolved", CommandLineHarness.scenarioIn(temporary)))
                .isZero();
        Path resolved = Files.writeString(temporary.resolve("resolved.yaml"), command.out());
        assertThat(command.run("check", resolved)).as(command.err()).isZero();
    }

    @Test
    void aMissingFileIsAnInputErrorWithoutAStackTrace() {
        assertThat(command.run("check", temporary.resolve("missing.yaml"))).isEqualTo(2);
        assertThat(command.err()).contains("missing.yaml").doesNotContain("\tat ");
    }

    @Test
    void oneOfOurStrategiesKeepsTheContract() {
        assertThat(command.run("conform", "--strategy", "blow count"))
                .as(command.out())
                .isZero();
        assertThat(command.out()).contains("The strategy keeps the contract.");
    }

    @Test
    void whatIsNoStrategyIsRefused() throws IOException {
        Path jar = Files.write(temporary.resolve("empty.jar"), new byte[0]);
        assertThat(command.run("conform", "--strategy", "odd")).isEqualTo(2);
        assertThat(command.run("conform", "--class", "odd.Strategy", "--jar", temporary.resolve("no.jar")))
                .isEqualTo(2);
        assertThat(command.run("conform", "--class", "odd.Strategy", "--jar", jar))
                .isEqualTo(2);
        assertThat(command.run("conform", "--class", "java.lang.Object", "--jar", jar))
                .isEqualTo(2);
        assertThat(command.run("conform", "--class", "java.lang.Integer", "--jar", jar))
                .isEqualTo(2);
        assertThat(command.err())
                .contains(
                        "blow count",
                        "cannot be read",
                        "has no class odd.Strategy",
                        "java.lang.Object is no factory",
                        "java.lang.Integer is no factory")
                .doesNotContain("\tat ");
    }

    @Test
    void tuneRefusesWhatContradictsItself() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path out = temporary.resolve("all.yaml");
        assertThat(command.run("tune", scenario, "--settings", "all", "--family", "hard", "--out", out))
                .isEqualTo(2);
        assertThat(command.run("tune", scenario, "--settings", "home", "--family", "odd", "--out", out))
                .isEqualTo(2);
        assertThat(command.err()).contains("--settings home", "hard, locked");
        assertThat(out).doesNotExist();
    }
}
