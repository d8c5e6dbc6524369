package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TraceCommandTest {

    private static final Path REFERENCE_JOINTS = Path.of("../docs/examples/reference-joints.yaml");

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    private List<String> trace(Object... options) throws IOException {
        Path out = temporary.resolve("trace.csv");
        Object[] args = new Object[options.length + 3];
        args[0] = "trace";
        args[1] = "--out";
        args[2] = out;
        System.arraycopy(options, 0, args, 3, options.length);
        assertThat(command.run(args)).as(command.err()).isZero();
        return Files.readAllLines(out);
    }

    /**
     * Joint A braked at blow 40: 62.227 deg and 88,311 N by three independent programs (fixed-step Runge-Kutta at 0.1 us,
     * adaptive Dormand-Prince with events, a Taylor series solver); tolerance 1e-4 relative.
     */
    @ParameterizedTest
    @ValueSource(strings = {"fast", "reference"})
    void jointABrakedAtBlow40EndsWhereIndependentProgramsEnd(String solver) throws IOException {
        List<String> rows = trace(REFERENCE_JOINTS, "--joint", 0, "--brake-at-blow", 40, "--solver", solver);
        String end = rows.get(rows.size() - 1);
        assertThat(end).startsWith("# end: ");
        assertThat(number(end, "clamp_force_N=")).isCloseTo(88_311, within(8.8));
        assertThat(number(end, "nut_angle_deg=")).isCloseTo(62.227, within(0.01));
        assertThat(rows.get(rows.size() - 2)).startsWith("40,");
        assertThat(command.out()).contains(end.substring(2));
    }

    private static double number(String line, String key) {
        return Double.parseDouble(line.replaceFirst(".*" + key, "").replaceFirst(",.*", ""));
    }

    @Test
    void drivingForATimeEndsThereWithoutRunOn() throws IOException {
        List<String> rows = trace(REFERENCE_JOINTS, "--joint", 0, "--family", "C", "--drive-for", "0.5s");
        assertThat(number(rows.get(rows.size() - 1), "time_s=")).isEqualTo(0.5);
    }

    @Test
    void samplesShowWhatTheToolSensedUpToTheEnd() throws IOException {
        Path samples = temporary.resolve("samples.csv");
        trace(REFERENCE_JOINTS, "--joint", 0, "--drive-for", "20 ms", "--samples", samples);
        assertThat(Files.readAllLines(samples)).hasSize(1 + 201);
    }

    @Test
    void aStrategyIsFollowedThroughItsRunOn() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path samples = temporary.resolve("samples.csv");
        List<String> rows = trace(
                scenario, "--joint", 3, "--family", "locked", "--strategy", "energy per blow", "--samples", samples);
        assertThat(rows.get(rows.size() - 1)).contains("strategy=energy per blow", "end_reason=shutoff", "verdict=");
        assertThat(Files.readAllLines(samples).size()).isGreaterThan(1000);
        Path out = temporary.resolve("run");
        assertThat(command.run("run", scenario, "--out", out)).isZero();
        double force = number(rows.get(rows.size() - 1), "clamp_force_N=");
        assertThat(Files.readAllLines(out.resolve("outcomes.csv")))
                .anySatisfy(row -> assertThat(row)
                        .startsWith("locked,3,")
                        .contains(",energy per blow,", String.format(java.util.Locale.ROOT, ",%.2f,", force)));
    }

    @Test
    void mistakesAreNamedWithTheirRemedy() throws IOException {
        Path scenario = CommandLineHarness.scenarioIn(temporary);
        Path out = temporary.resolve("never.csv");
        assertThat(command.run("trace", scenario, "--joint", 0, "--out", out, "--family", "odd"))
                .isEqualTo(2);
        assertThat(command.run("trace", scenario, "--joint", 0, "--out", out, "--strategy", "odd"))
                .isEqualTo(2);
        assertThat(command.run("trace", scenario, "--joint", -1, "--out", out)).isEqualTo(2);
        assertThat(command.run("trace", scenario, "--joint", 0, "--out", out, "--drive-for", "2.5"))
                .isEqualTo(2);
        assertThat(command.run("trace", scenario, "--joint", 0, "--out", out, "--brake-at-blow", 0))
                .isEqualTo(2);
        assertThat(command.run("trace", scenario, "--joint", 0, "--out", out, "--drive-for", "-1 s"))
                .isEqualTo(2);
        Path picture = temporary.resolve("never.svg");
        assertThat(command.run(
                        "trace", scenario, "--joint", 0, "--out", out, "--drive-for", "1 s", "--picture", picture))
                .isEqualTo(2);
        assertThat(command.err()).contains("not with --drive-for");
        assertThat(command.err())
                .contains("hard, locked", "energy per blow (given)", "count from 0", "2.5s", "count from 1")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }
}
