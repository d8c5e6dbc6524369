package org.shutoffbench.harness.study.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
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
                .hasSizeBetween(12, 20);
    }
}
