package org.shutoffbench.harness.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.report.Templates;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.StrategyEntry;

/** The randomised joints of the lesson: thirty alike for trust, five hundred for the race. */
final class LessonBench {

    static final int REPEATS = 30;
    static final int RACE_JOINTS = 500;

    private static final String COUNTING = "blow count";
    private static final String COUNT_SETTING = "blows";
    private static final int STEP = 20;

    private final StrategyCatalogue catalogue = new StrategyCatalogue();
    private final Scenario scenario;
    private final Bench bench;

    /** Joints and strategies of a scenario; the first family is the bench joint's. */
    LessonBench(Scenario scenario) {
        this.scenario = scenario;
        this.bench = Bench.of(scenario, scenario.seed(), catalogue);
    }

    /** The joints and strategies that come with the lesson. */
    static LessonBench ofTheLesson() {
        String text = new Templates(LessonBench.class).text("lesson.yaml");
        return new LessonBench(new ScenarioFile(new StrategyCatalogue()).parse("lesson.yaml", text));
    }

    List<String> families() {
        return scenario.families().stream().map(f -> f.name()).toList();
    }

    List<String> strategies() {
        return scenario.strategies().stream().map(StrategyEntry::label).toList();
    }

    /** One tightening of the bench family by the count. */
    record Repeat(int joint, double clampForceKn, boolean inWindow) {}

    /**
     * How a strategy did up to now.
     *
     * @param inWindow joints in window
     * @param silentMiss called done, low or unseated
     * @param high too high, yielded or fractured
     * @param other low or unseated and not called done
     */
    record Standing(String strategy, int inWindow, int silentMiss, int high, int other) {

        static Standing none(String strategy) {
            return new Standing(strategy, 0, 0, 0, 0);
        }

        Standing with(TighteningRecord r) {
            return switch (r.outcome()) {
                case IN_WINDOW -> new Standing(strategy, inWindow + 1, silentMiss, high, other);
                case HIGH, YIELDED, FRACTURED -> new Standing(strategy, inWindow, silentMiss, high + 1, other);
                case LOW, UNSEATED ->
                    r.verdict() == Verdict.REACHED
                            ? new Standing(strategy, inWindow, silentMiss + 1, high, other)
                            : new Standing(strategy, inWindow, silentMiss, high, other + 1);
            };
        }
    }

    /** The same count on thirty joints of the first family. */
    List<Repeat> repeat(int count) {
        Bench alone = bench.with(List.of(contestant(counting(), count)));
        ClosedLoop loop = alone.newLoop();
        List<Repeat> repeats = new ArrayList<>();
        for (int joint = 0; joint < REPEATS; joint++) {
            TighteningRecord r = alone.tighten(loop, 0, joint)[0];
            repeats.add(new Repeat(
                    joint, r.clampForceN() / 1000, r.outcome() == org.shutoffbench.harness.run.Outcome.IN_WINDOW));
        }
        return repeats;
    }

    /**
     * Every strategy on the same joints of a family.
     *
     * @param count what the class set the blow count to
     * @param wanted whether anybody still watches
     * @param progress receives how all strategies stand, every few joints and at the end
     */
    void race(int family, int count, BooleanSupplier wanted, Consumer<Progress> progress) {
        List<Contestant> contestants = new ArrayList<>();
        List<Standing> standings = new ArrayList<>();
        for (StrategyEntry entry : scenario.strategies()) {
            contestants.add(contestant(entry, count));
            standings.add(Standing.none(entry.label()));
        }
        Bench race = bench.with(contestants);
        ClosedLoop loop = race.newLoop();
        for (int joint = 0; joint < RACE_JOINTS && wanted.getAsBoolean(); joint++) {
            TighteningRecord[] records = race.tighten(loop, family, joint);
            for (int s = 0; s < records.length; s++) {
                standings.set(s, standings.get(s).with(records[s]));
            }
            if ((joint + 1) % STEP == 0) {
                progress.accept(new Progress(families().get(family), joint + 1, RACE_JOINTS, List.copyOf(standings)));
            }
        }
    }

    /**
     * The ends of the races with each of several counts, run together on the same joints.
     *
     * @param counts in the order of the answer
     */
    List<Progress> finals(int family, List<Integer> counts) {
        List<Contestant> contestants = new ArrayList<>();
        List<StrategyEntry> others = scenario.strategies().stream()
                .filter(entry -> !isCounting(entry))
                .toList();
        StrategyEntry counting = counting();
        counts.forEach(count -> contestants.add(contestant(counting, count)));
        others.forEach(entry -> contestants.add(contestant(entry, 0)));
        List<Standing> standings = new ArrayList<>();
        counts.forEach(count -> standings.add(Standing.none(counting.label())));
        others.forEach(entry -> standings.add(Standing.none(entry.label())));
        Bench race = bench.with(contestants);
        ClosedLoop loop = race.newLoop();
        for (int joint = 0; joint < RACE_JOINTS; joint++) {
            TighteningRecord[] records = race.tighten(loop, family, joint);
            for (int s = 0; s < records.length; s++) {
                standings.set(s, standings.get(s).with(records[s]));
            }
        }
        List<Progress> finals = new ArrayList<>();
        for (int i = 0; i < counts.size(); i++) {
            Standing counted = standings.get(i);
            List<Standing> rest = standings.subList(counts.size(), standings.size());
            List<Standing> inOrder = new ArrayList<>();
            int next = 0;
            for (StrategyEntry entry : scenario.strategies()) {
                inOrder.add(isCounting(entry) ? counted : rest.get(next++));
            }
            finals.add(new Progress(families().get(family), RACE_JOINTS, RACE_JOINTS, inOrder));
        }
        return finals;
    }

    private StrategyEntry counting() {
        return scenario.strategies().stream()
                .filter(LessonBench::isCounting)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the scenario has no " + COUNTING));
    }

    /** A race under way. */
    record Progress(String family, int done, int of, List<Standing> standings) {}

    private Contestant contestant(StrategyEntry entry, int count) {
        Map<String, Double> values = isCounting(entry) ? Map.of(COUNT_SETTING, (double) count) : entry.values();
        return new Contestant(catalogue.factory(entry), values, Bench.provision(scenario, entry.withheld()));
    }

    private static boolean isCounting(StrategyEntry entry) {
        return COUNTING.equals(entry.name());
    }
}
