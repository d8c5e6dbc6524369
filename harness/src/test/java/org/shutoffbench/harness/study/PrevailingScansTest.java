package org.shutoffbench.harness.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.ScenarioFile;

/** The median lock nut under a fixed count, on the real plant. */
class PrevailingScansTest {

    private static final String SCENARIO = """
            bench: 1
            name: scan
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            tool: light
            sensors: ideal
            families:
              plain:
                thread: M12x1.75
                friction: {mu_th: 0.12, mu_b: 0.12, D_b: 15.6 mm, static_ratio: 1.0}
                stiffness: 312 kN/mm
                seating: 8 deg
                turns_to_snug: 2
                running_torque: 0.2 N*m
                yield: off
              nut:
                like: plain
                prevailing: {torque: {uniform: [2 N*m, 12 N*m]}, from: 0.5 turns, ramp: 1 turn}
            strategies:
              - {name: blow count, settings: {blows: 8}}
            """;

    @Test
    void theNutCostsMoreBlowsAtEveryLevelUntilTheCountIsSpent() {
        StrategyCatalogue catalogue = new StrategyCatalogue();
        Bench bench = Bench.of(new ScenarioFile(catalogue).parse("scan.yaml", SCENARIO), 1, catalogue);
        List<PrevailingScan> scans =
                PrevailingScans.of(bench, StudyPlans.of(bench, 10).families());
        assertThat(scans).hasSize(1);
        List<PrevailingScan.Level> levels = scans.get(0).levels();
        assertThat(levels).hasSize(13);
        assertThat(levels.stream().map(PrevailingScan.Level::blowsBeforeSnug)).isSorted();
        assertThat(levels.get(12).blowsBeforeSnug()).isGreaterThan(levels.get(0).blowsBeforeSnug() + 3);
        for (PrevailingScan.Level level : levels) {
            PrevailingScan.Ending ending = level.endings().get(0);
            boolean spent = level.blowsBeforeSnug() > ending.blows();
            assertThat(ending.outcome() == Outcome.UNSEATED || !spent)
                    .as("%s N m", level.torqueNm())
                    .isTrue();
        }
        assertThat(levels.get(12).endings().get(0).silentMiss()).isTrue();
    }
}
