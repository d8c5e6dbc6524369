package org.shutoffbench.harness.run;

import org.shutoffbench.harness.scenario.ScenarioFile;

/** Small benches for tests; the joints are invented. */
public final class Benches {

    private static final String PLAIN = """
            bench: 1
            name: plain
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %%}
            tool: light
            sensors: %s
            time_limit: 1 s
            joints: 12
            %s
            families:
              hard:
                thread: M12x1.75
                friction: {mu_th: %s, mu_b: 0.12, D_b: 15.6 mm, static_ratio: 1.05}
                stiffness: 312 kN/mm
                seating: 8 deg
                turns_to_snug: 2
                running_torque: 0.2 N*m
                %s
            """;

    private Benches() {}

    /** One hard joint without scatter, ideal sensors. */
    public static Bench plain() {
        return plain("");
    }

    /** The same with one more line: a key of the family (yield), or of the scenario. */
    public static Bench plain(String line) {
        boolean ofFamily = line.startsWith("yield");
        return bench(String.format(PLAIN, "ideal", ofFamily ? "" : line, "0.12", ofFamily ? line : "yield: off"));
    }

    /** Scattered joints, hard and with a lock nut, good sensors. */
    public static Bench scattered() {
        return scattered("");
    }

    /** The same with strategies. */
    public static Bench scattered(String strategies) {
        return bench(String.format(PLAIN, "good", strategies, "{lognormal: 0.13, lot: 8 %, piece: 6 %}", "yield: off")
                + """
  locked:
    like: hard
    stiffness: {normal: 180 kN/mm, cv: 8 %}
    prevailing: {torque: {uniform: [4 N*m, 14 N*m]}, before_snug: {uniform: [0.6 turns, 1.4 turns]}, ramp: 1 turn}
""");
    }

    private static Bench bench(String text) {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        return Bench.of(new ScenarioFile(catalogue).parse("test.yaml", text), 7, catalogue);
    }
}
