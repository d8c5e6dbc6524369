package org.shutoffbench.harness.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Target;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.sensor.SensorSuite;

/**
 * A scenario set up: its population, its strategies ready to be made, its sensors, its clockwork. Immutable and shared by
 * threads; each thread takes a loop of its own.
 */
public final class Bench {

    private final Scenario scenario;
    private final Population population;
    private final List<Contestant> contestants;
    private final SensorSuite suite;
    private final LoopTiming timing;
    private final OutcomeRule rule;

    private Bench(Scenario scenario, Population population, List<Contestant> contestants) {
        this.scenario = scenario;
        this.population = population;
        this.contestants = List.copyOf(contestants);
        this.suite = scenario.sensors().suite();
        this.timing = LoopTiming.of(suite, scenario.timeLimitS());
        this.rule = OutcomeRule.of(scenario.judgement());
    }

    /** The bench with the strategies that the scenario names. */
    public static Bench of(Scenario scenario, long seed, StrategyCatalogue catalogue) {
        List<Contestant> contestants = new ArrayList<>();
        for (StrategyEntry entry : scenario.strategies()) {
            contestants.add(
                    new Contestant(catalogue.factory(entry), entry.values(), provision(scenario, entry.withheld())));
        }
        return new Bench(scenario, new Population(scenario, seed), contestants);
    }

    /** The bench with other strategies on the same joints. */
    public Bench with(List<Contestant> others) {
        return new Bench(scenario, population, others);
    }

    /** What the scenario's tool provides to a strategy from which some channels are withheld. */
    public static Provision provision(Scenario scenario, Set<Channel> withheld) {
        Set<Channel> channels = EnumSet.noneOf(Channel.class);
        channels.addAll(scenario.sensors().channels());
        channels.removeAll(withheld);
        return new Provision(scenario.sensors().suite().rateHz(), channels);
    }

    public Scenario scenario() {
        return scenario;
    }

    public Population population() {
        return population;
    }

    public List<Contestant> contestants() {
        return contestants;
    }

    public SensorSuite suite() {
        return suite;
    }

    public LoopTiming timing() {
        return timing;
    }

    public OutcomeRule rule() {
        return rule;
    }

    /** A loop for one thread on the fast plant. */
    public ClosedLoop newLoop() {
        return newLoop(FastPlant::new);
    }

    /** A loop for one thread on plants of a kind. */
    public ClosedLoop newLoop(Supplier<? extends Plant> plants) {
        return new ClosedLoop(contestants, timing, rule, suite, plants);
    }

    /** Every strategy on one joint, in the scenario's order. */
    public TighteningRecord[] tighten(ClosedLoop loop, int family, int joint) {
        return tighten(loop, population.draw(family, joint));
    }

    /** Every strategy on one joint that is drawn already, in the scenario's order. */
    public TighteningRecord[] tighten(ClosedLoop loop, DrawnCase drawn) {
        TighteningRecord[] records = new TighteningRecord[contestants.size()];
        loop.run(drawn, population.target(drawn.family()), records);
        return records;
    }

    /** What the tool is set to on a family. */
    public Target target(int family) {
        return population.target(family);
    }
}
