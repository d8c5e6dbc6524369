package org.shutoffbench.harness.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.report.Templates;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.StrategyEntry;

/** The race of the lesson is run with the settings that tuning left, and on the families of the demo. */
class LessonBenchTest {

    private static final ScenarioFile FILES = new ScenarioFile(new StrategyCatalogue());
    private static final Scenario DEMO = FILES.read(Path.of("../docs/examples/harbour-walkway.yaml"));
    private static final Scenario LESSON =
            FILES.parse("lesson.yaml", new Templates(LessonBench.class).text("lesson.yaml"));

    @Test
    void strategiesAreSetAsTheTableOfAllFamiliesHasThem() {
        Map<String, Map<String, Double>> tuned = DEMO.strategies().stream()
                .filter(s -> s.settings().equals("all"))
                .collect(Collectors.toMap(StrategyEntry::name, StrategyEntry::values));
        for (StrategyEntry entry : LESSON.strategies()) {
            if (!entry.name().equals("blow count")) {
                assertThat(entry.values()).as(entry.name()).isEqualTo(tuned.get(entry.name()));
            }
        }
    }

    @Test
    void familiesAreThoseOfTheDemo() {
        assertThat(LESSON.families().stream().map(f -> f.name()))
                .isEqualTo(DEMO.families().stream().map(f -> f.name()).toList());
    }
}
