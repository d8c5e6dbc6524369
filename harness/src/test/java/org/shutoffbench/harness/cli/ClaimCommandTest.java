package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The three commands on small joints and on the examples. */
class ClaimCommandTest {

    private static final Path EXAMPLES = Path.of("../docs/examples/claims");

    @TempDir
    private Path folder;

    private final CommandLineHarness shell = new CommandLineHarness();

    @Test
    void planWritesOnePage() throws IOException {
        Path page = folder.resolve("plan.html");
        assertThat(shell.run("claim", "plan", EXAMPLES.resolve("any-joint.yaml"), "--report", page))
                .isZero();
        assertThat(shell.out()).contains("try 913 joints and accept at most 4 failures");
        assertThat(Files.readString(page))
                .contains("<svg class=\"curve\"")
                .contains("Operating characteristic")
                .contains("not a tightening procedure")
                .doesNotContain("<script");
        assertThat(shell.run("claim", "plan", EXAMPLES.resolve("any-joint.yaml"), "--report", page))
                .isEqualTo(2);
    }

    @Test
    void trySetsStrategiesSideBySideOnTheSameJoints() throws IOException {
        Path claim = Files.writeString(
                folder.resolve("c.yaml"),
                Files.readString(EXAMPLES.resolve("silent-miss.yaml"))
                        .replace("[lock nut, fouled lock nut]", "[locked]"));
        Path scenario = CommandLineHarness.scenarioIn(folder);
        Object[] command = {
            "claim",
            "try",
            claim,
            scenario,
            "--strategy",
            "blow count",
            "--strategy",
            "energy per blow",
            "--bank",
            60,
            "--plans",
            200
        };
        assertThat(shell.run(command)).isZero();
        assertThat(shell.out()).contains("Side by side").contains("is refuted").contains("What was not tested");
        CommandLineHarness again = new CommandLineHarness();
        Object[] oneThread = java.util.Arrays.copyOf(command, command.length + 2);
        oneThread[command.length] = "--threads";
        oneThread[command.length + 1] = 1;
        assertThat(again.run(oneThread)).isZero();
        assertThat(again.out()).isEqualTo(shell.out());
    }

    @Test
    void aClaimOfAnotherTargetOrFamilyIsRefused() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(folder);
        Path other = Files.writeString(
                folder.resolve("o.yaml"),
                Files.readString(EXAMPLES.resolve("any-joint.yaml")).replace("84 N*m", "50 N*m"));
        assertThat(shell.run("claim", "try", other, scenario, "--strategy", "blow count", "--bank", 4))
                .isEqualTo(2);
        assertThat(shell.err()).contains("the claim's target is 50");
        assertThat(shell.run(
                        "claim", "try", EXAMPLES.resolve("silent-miss.yaml"), scenario, "--strategy", "blow count"))
                .isEqualTo(2);
        assertThat(shell.err()).contains("the family \"lock nut\", which the scenario does not have");
    }

    @Test
    void judgeRefusesWithoutWritingAnything() throws IOException {
        Path csv = Files.writeString(folder.resolve("m.csv"), "joint,family,torque_Nm\n1,hard,abc\n");
        Path page = folder.resolve("judge.html");
        assertThat(shell.run("claim", "judge", EXAMPLES.resolve("mean-shift.yaml"), csv, "--report", page))
                .isEqualTo(2);
        assertThat(shell.err()).contains("m.csv:2: torque_Nm").doesNotContain("\tat ");
        assertThat(page).doesNotExist();
        assertThat(shell.run("claim", "judge", EXAMPLES.resolve("any-joint.yaml"), csv))
                .isEqualTo(2);
        assertThat(shell.err()).contains("measured: {value:");
        assertThat(shell.run("claim", "judge", EXAMPLES.resolve("mean-shift.yaml"), folder.resolve("none.csv")))
                .isEqualTo(2);
    }
}
