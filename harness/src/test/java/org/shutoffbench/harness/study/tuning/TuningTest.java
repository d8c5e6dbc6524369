package org.shutoffbench.harness.study.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.strategy.Strategies;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.Benches;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.SettingsTable;

class TuningTest {

    private static final Tuning.Budget SMALL = new Tuning.Budget(20, 10);

    private static SettingsTable table(int threads, List<String> log) throws InterruptedException {
        Scenario scenario =
                Benches.scattered("strategies: [blow count, energy per blow]").scenario();
        return new Tuning(scenario, new StrategyCatalogue(), List.of(0), SMALL, threads, log::add).table("home");
    }

    @Test
    void theTableIsTheSameForAnyNumberOfThreads() throws InterruptedException {
        assertThat(table(2, new ArrayList<>()).text())
                .isEqualTo(table(1, new ArrayList<>()).text());
    }

    @Test
    void theTableNamesItsSeedsItsBudgetAndEveryEvaluationIsLogged() throws InterruptedException {
        List<String> log = new ArrayList<>();
        SettingsTable table = table(2, log);
        assertThat(table.provenance())
                .containsEntry("tuning seed", "1000004")
                .containsEntry("validation seed", "2000004")
                .containsEntry("budget", "20 evaluations of 10 joints per family")
                .containsEntry("families", "hard");
        assertThat(table.values().get("blow count")).containsKey("blows");
        assertThat(log)
                .filteredOn(line -> line.startsWith("blow count, evaluation"))
                .hasSize(20);
        assertThat(log)
                .filteredOn(line -> line.startsWith("energy per blow, evaluation"))
                .hasSize(20);
    }

    private static Trials trials(String strategy) {
        Scenario scenario = Benches.scattered().scenario();
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Bench bench = Bench.of(scenario, scenario.seed() + Tuning.TUNING_SEED_OFFSET, catalogue);
        return new Trials(
                bench,
                Strategies.byName().get(strategy),
                Bench.provision(scenario, Set.of()),
                List.of(0),
                SMALL.jointsPerFamily(),
                2);
    }

    /** Every value of the one setting on the real bench, on the joints that tuning uses, against the search. */
    @ParameterizedTest
    @CsvSource({
        "blow count, blows, 1, 400, 1",
        "angle from snug, angle past snug, 0, 90, 0.5",
        "elapsed time, drive time, 0.05, 1, 0.005"
    })
    void oneSettingOptimaAgreeWithAFullScan(String strategy, String name, double from, double to, double step)
            throws InterruptedException {
        Trials trials = trials(strategy);
        List<Map<String, Double>> scan = new ArrayList<>();
        for (int i = 0; from + i * step <= to; i++) {
            scan.add(Map.of(name, from + i * step));
        }
        double best = trials.run(scan).stream().mapToDouble(Score::loss).min().orElseThrow();
        List<Setting> tuned = Strategies.byName().get(strategy).descriptor().settings().stream()
                .filter(setting -> setting.name().equals(name))
                .toList();
        Score found = new SettingsSearch(tuned, Map.of(), trials::run)
                .leastLoss(Tuning.Budget.STANDARD.evaluations())
                .score();
        // The count in the window is the whole part of the loss; among equals the scan's grid may lie nearer to the
        // least.
        assertThat(Math.floor(found.loss())).isLessThanOrEqualTo(Math.floor(best));
        assertThat(found.loss()).isCloseTo(best, within(0.002));
    }
}
