package org.shutoffbench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.strategy.Strategies;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.ScenarioFile;

/**
 * The closed loop at 10 kHz with noisy carrier speed, anvil angle and blow detection, joint after joint in equal shares of
 * the families. The joints are invented: reference joint A, and the four families of the demo.
 */
final class LoopWorkload {

    /** Joints that measurements cover in one go: 16 of every family of the demo. */
    static final int JOINTS_PER_EXECUTION = 64;

    private static final String HEAD = """
            bench: 1
            name: benchmark
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            tool: light
            sensors: good
            """;
    static final String JOINT_A = HEAD + """
            families:
              A:
                thread: M12x1.75
                friction: {mu_th: 0.12, mu_b: 0.12, D_b: 15.6 mm, static_ratio: 1.0}
                stiffness: 312 kN/mm
                seating: 8 deg
                turns_to_snug: 2
                running_torque: 0.2 N*m
                yield: off
            """;
    static final String DEMO = HEAD + """
            supply: {uniform: [0.93, 1]}
            families:
              hard plain:
                thread: M12x1.75
                class: 10.9
                friction:
                  mu_th: {lognormal: 0.13, lot: 8 %, piece: 6 %}
                  mu_b: {mu_th times: {lognormal: 1, sigma: 6 %}}
                  D_b: 15.07 mm
                  static_ratio: {uniform: [1.0, 1.15]}
                stiffness: {normal: 300 kN/mm, cv: 8 %}
                seating: {lognormal: 8 deg, sigma: 30 %}
                turns_to_snug: {uniform: [1.5, 3.5]}
                running_torque: 0.2 N*m
              soft plain:
                like: hard plain
                stiffness: {normal: 70 kN/mm, cv: 8 %}
                seating: {lognormal: 35 deg, sigma: 30 %}
              lock nut:
                like: hard plain
                stiffness: {normal: 180 kN/mm, cv: 8 %}
                seating: {lognormal: 14 deg, sigma: 30 %}
                prevailing:
                  torque: {uniform: [4 N*m, 14 N*m]}
                  before_snug: {uniform: [0.6 turns, 1.4 turns]}
                  ramp: 1 turn
              fouled lock nut:
                like: lock nut
                seating: {lognormal: 20 deg, sigma: 30 %}
                fouling: {torque: {uniform: [4 N*m, 10 N*m]}}
            """;

    /** Counts blows and nothing else, but hears three channels; a count of 40 makes it brake at blow 40. */
    record Trivial(int stopAtBlow) implements StrategyFactory {
        @Override
        public StrategyDescriptor descriptor() {
            return new StrategyDescriptor(
                    "trivial",
                    "counts blows",
                    Set.of(Channel.CARRIER_SPEED, Channel.ANVIL_ANGLE, Channel.BLOWS),
                    Set.of(),
                    List.of(),
                    List.of(),
                    4);
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            return new ShutoffStrategy() {
                private int blows;

                @Override
                public void arm(Target target) {
                    blows = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    blows += frame.blows;
                    return blows >= stopAtBlow ? Command.BRAKE : Command.FULL;
                }

                @Override
                public Verdict verdict() {
                    return Verdict.REACHED;
                }

                @Override
                public int estimates(float[] into) {
                    return 0;
                }
            };
        }
    }

    /** Strategies that hold the drive constant and so share their plant runs. */
    static List<StrategyFactory> constantDrive() {
        return List.of(
                ours("energy per blow"),
                ours("elapsed time"),
                ours("blow count"),
                ours("gated blow count"),
                ours("angle from snug"),
                new Trivial(12));
    }

    static StrategyFactory ours(String name) {
        StrategyFactory factory = Strategies.byName().get(name);
        if (factory == null) {
            throw new IllegalArgumentException("no strategy is called " + name);
        }
        return factory;
    }

    private final Bench bench;
    private final ClosedLoop loop;
    private int next;

    LoopWorkload(String scenario, List<StrategyFactory> factories) {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Bench empty = Bench.of(new ScenarioFile(catalogue).parse("benchmark.yaml", scenario), 1, catalogue);
        List<Contestant> contestants = new ArrayList<>();
        for (StrategyFactory factory : factories) {
            contestants.add(new Contestant(factory, Map.of(), Bench.provision(empty.scenario(), Set.of())));
        }
        bench = empty.with(contestants);
        loop = bench.newLoop();
    }

    /** The first joints again, as many as said. */
    void tightenFromStart(int joints) {
        next = 0;
        for (int i = 0; i < joints; i++) {
            tightenNext();
        }
    }

    TighteningRecord[] tightenNext() {
        int families = bench.scenario().families().size();
        int number = next++ & 0xffff;
        return bench.tighten(loop, number % families, number / families);
    }
}
