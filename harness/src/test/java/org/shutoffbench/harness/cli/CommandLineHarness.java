package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/** Runs the command line in this process and keeps what it says. */
final class CommandLineHarness {

    /** A scenario of two invented families and two strategies. */
    static final String SCENARIO = """
            bench: 1
            name: small
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            tool: light
            sensors: good
            time_limit: 1 s
            joints: 9
            families:
              hard:
                thread: M12x1.75
                friction: {mu_th: {lognormal: 0.13, lot: 8 %, piece: 6 %}, mu_b: 0.12, D_b: 15.6 mm, static_ratio: 1.05}
                stiffness: {normal: 312 kN/mm, cv: 8 %}
                seating: 8 deg
                turns_to_snug: {uniform: [1.5, 2.5]}
                running_torque: 0.2 N*m
                yield: off
              locked:
                like: hard
                prevailing: {torque: {uniform: [4 N*m, 14 N*m]}, before_snug: 1 turn, ramp: 1 turn}
            strategies: [blow count, energy per blow]
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    int run(Object... args) {
        CommandLine command = ShutoffBench.commandLine();
        command.setOut(new PrintWriter(out, true));
        command.setErr(new PrintWriter(err, true));
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        return command.execute(texts);
    }

    String out() {
        return out.toString();
    }

    String err() {
        return err.toString();
    }

    static Path scenarioIn(Path folder) throws IOException {
        return Files.writeString(folder.resolve("small.yaml"), SCENARIO);
    }
}
