package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class ShutoffBenchTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void helpNamesTheCommandAndSucceeds() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).startsWith("Usage: shutoff-bench");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void versionNamesTheCommandAndSucceeds() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).startsWith("shutoff-bench ");
    }

    @Test
    void noCommandIsAUsageError() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("Missing command", "Usage: shutoff-bench");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void anUnknownOptionIsAUsageErrorThatNamesIt() {
        assertThat(run("--no-such-option")).isEqualTo(2);
        assertThat(err.toString()).contains("--no-such-option");
    }

    private int run(String... args) {
        CommandLine command = ShutoffBench.commandLine();
        command.setOut(new PrintWriter(out, true));
        command.setErr(new PrintWriter(err, true));
        return command.execute(args);
    }
}
