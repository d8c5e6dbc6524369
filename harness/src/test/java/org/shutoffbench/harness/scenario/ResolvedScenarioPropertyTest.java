package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.StrategyCatalogue;

/** A resolved scenario is a scenario file, and one that gives the same joints. */
class ResolvedScenarioPropertyTest {

    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final ScenarioFile FILES = new ScenarioFile(new StrategyCatalogue());

    static Stream<Scenario> scenarios() {
        return Stream.concat(
                Stream.of(FILES.parse("wide.yaml", WidePlainScenario.TEXT)),
                Stream.of(
                                "reference-joints",
                                "harbour-walkway",
                                "hidden-lock-nut",
                                "harbour-walkway-learned",
                                "shifts/friction-scatter-doubled",
                                "shifts/another-coating",
                                "shifts/weak-battery",
                                "shifts/prevailing-torque-doubled",
                                "shifts/socket-extension",
                                "shifts/arm-sway-doubled",
                                "shifts/heavy-tool")
                        .map(name -> FILES.read(EXAMPLES.resolve(name + ".yaml"))));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void itIsTheSameScenario(Scenario scenario) {
        Scenario again = FILES.parse("resolved.yaml", ScenarioFile.resolved(scenario));
        assertThat(again).isEqualTo(scenario);
        assertThat(ScenarioFile.hash(again)).isEqualTo(ScenarioFile.hash(scenario));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void itDrawsTheSameJoints(Scenario scenario) {
        Population own = new Population(scenario, 11);
        Population again = new Population(FILES.parse("resolved.yaml", ScenarioFile.resolved(scenario)), 11);
        for (int family = 0; family < scenario.families().size(); family++) {
            for (int joint : List.of(0, 1, 57)) {
                assertThat(again.draw(family, joint).values())
                        .isEqualTo(own.draw(family, joint).values());
            }
        }
    }

    @Test
    void everyKeyOfAFamilyIsWrittenOut() {
        String resolved = ScenarioFile.resolved(FILES.parse("wide.yaml", WidePlainScenario.TEXT));
        for (JointKey key : JointKey.values()) {
            if (key != JointKey.PREVAILING_FROM && key != JointKey.DAMAGE_FROM && key != JointKey.MU_B_OVER_MU_TH) {
                assertThat(resolved).contains(" " + key.key() + ": ");
            }
        }
    }
}
