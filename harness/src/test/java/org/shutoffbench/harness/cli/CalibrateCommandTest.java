package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    @Test
    void whatItWritesAScenarioCanName() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path out = temporary.resolve("tool.json");
        assertThat(command.run("calibrate", scenario, "--joints", "30", "--out", out))
                .as(command.err())
                .isZero();
        assertThat(command.out()).contains("fresh joints", "blow energy off by", out.toString());
        assertThat(out).content().contains("of the scenario small").doesNotContain(temporary.toString());
        Path calibrated = Files.writeString(
                temporary.resolve("calibrated.yaml"),
                CommandLineHarness.SCENARIO.replace("energy per blow", "adaptive estimation")
                        + "calibration: tool.json\n");
        assertThat(command.run("check", "--resolved", calibrated))
                .as(command.err())
                .isZero();
        assertThat(command.out()).contains("first blow energy");
    }

    @Test
    void whatIsNoToolIsRefusedAndNothingWritten() {
        Path out = temporary.resolve("tool.json");
        assertThat(command.run("calibrate", "odd", "--out", out)).isEqualTo(2);
        assertThat(command.run("calibrate", "light", "--joints", "3", "--out", out))
                .isEqualTo(2);
        assertThat(command.err())
                .contains("neither a tool (light, heavy)", "30 to 10000")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }

    @Test
    void aCalibrationHoldsLearnedSettingsOfKnownStrategiesOnly() throws IOException {
        Path wrong = Files.writeString(
                temporary.resolve("wrong.yaml"),
                CommandLineHarness.SCENARIO.replace("energy per blow", "adaptive estimation") + """
                        calibration:
                          strategies:
                            adaptive estimation: {aim: 1.1, run-down spread: 7, first blow: 3 J}
                            odd: {a: 1}
                        """);
        assertThat(command.run("check", wrong)).isEqualTo(2);
        assertThat(command.err())
                .contains("calibration.adaptive estimation.aim", "run-down spread", "first blow", "calibration.odd");
    }

    @Test
    void aMissingCalibrationIsToldWithItsKey() throws IOException {
        Path wrong = Files.writeString(
                temporary.resolve("wrong.yaml"), CommandLineHarness.SCENARIO + "calibration: missing.json\n");
        assertThat(command.run("check", wrong)).isEqualTo(2);
        assertThat(command.err()).contains("calibration", "missing.json").doesNotContain("\tat ");
    }
}
