package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrainCommandTest {

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    @Test
    void whatWasLearnedIsNamedByAScenarioAndItsSeedsStandInTheRun() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path json = temporary.resolve("trained.json");
        assertThat(command.run("train", scenario, "--joints", 20, "--out", json))
                .as(command.err())
                .isZero();
        Path judged = Files.writeString(temporary.resolve("judged.yaml"), """
                based on: small.yaml
                name: judged
                settings: {trained: trained.json}
                strategies: [{name: learned regression, settings: trained}]
                """);
        Path run = temporary.resolve("run");
        assertThat(command.run("run", judged, "--joints", 4, "--out", run))
                .as(command.err())
                .isZero();
        assertThat(Files.readString(run.resolve("run.json")))
                .contains("\"training seed\"", "\"validation seed\"", "\"joints in validation\"");
        assertThat(Files.readString(run.resolve("report.html"))).contains("joints in training", "joints in validation");
    }

    @Test
    void theHeaderHoldsTheNumbersOfTheJsonFile() throws IOException {
        Path json = temporary.resolve("trained.json");
        command.run("train", CommandLineHarness.scenarioIn(temporary), "--joints", 20, "--out", json);
        String header = Files.readString(temporary.resolve("trained.h"));
        assertThat(header).contains("learned_mean[9]", "learned_scale[9]", "learned_coefficient[55]");
        Matcher first =
                Pattern.compile("learned_coefficient\\[55] = \\{\\s*([^f]+)f,").matcher(header);
        Matcher same = Pattern.compile("\"coefficient 0\" : \"([^\"]+)\"").matcher(Files.readString(json));
        assertThat(first.find() && same.find()).isTrue();
        assertThat(Float.parseFloat(first.group(1))).isEqualTo(Float.parseFloat(same.group(1)));
    }

    @Test
    void whatCannotBeTrainedIsRefused() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path json = temporary.resolve("trained.json");
        assertThat(command.run("train", scenario, "--joints", 3, "--out", json)).isEqualTo(2);
        assertThat(command.run("train", scenario, "--out", temporary.resolve("trained.txt")))
                .isEqualTo(2);
        Path deaf = Files.writeString(
                temporary.resolve("deaf.yaml"),
                "based on: small.yaml\nsensors: {based on: good, carrier speed: no}\nstrategies: [blow count]\n");
        assertThat(command.run("train", deaf, "--out", json)).isEqualTo(2);
        assertThat(command.err()).contains("--joints 3", "ends in .json", "carrier speed");
        assertThat(json).doesNotExist();
    }
}
