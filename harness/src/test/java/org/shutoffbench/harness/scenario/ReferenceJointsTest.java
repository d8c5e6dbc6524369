package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.tool.ReferenceTools;

/** The file of the reference joints says what docs/physics.md says of them. */
class ReferenceJointsTest {

    private static final Path FILE = Path.of("../docs/examples/reference-joints.yaml");

    private final Scenario scenario = new ScenarioFile(new StrategyCatalogue()).read(FILE);
    private final Population population = new Population(scenario);

    @Test
    void jointAHasItsPlainNumbers() {
        JointLaw law = population.draw(0, 0).law();
        assertThat(law.clamp().forcePerAngleNPerRad()).isEqualTo(312e6 * 0.00175 / (2 * Math.PI), within(1e-6));
        assertThat(law.clamp().snugAngleRad()).isEqualTo(4 * Math.PI, within(1e-12));
        assertThat(Math.toDegrees(law.clamp().seatingWidthRad())).isEqualTo(8, within(1e-12));
        double d2 = 0.012 - 0.64952 * 0.00175;
        double kappa = 0.00175 / (2 * Math.PI) + 0.12 * d2 / (2 * Math.cos(Math.PI / 6)) + 0.12 * 0.65 * 0.012;
        assertThat(law.torqueTension().kappaOnM()).isEqualTo(kappa, within(1e-9));
        assertThat(law.freeTorque().torqueNm(5)).isEqualTo(0.2);
        assertThat(law.staticRatio()).isEqualTo(1);
        assertThat(law.yielding().yieldForceN()).isInfinite();
    }

    @Test
    void jointDHasTenNewtonMetresFromHalfATurnOn() {
        JointLaw law = population.draw(3, 0).law();
        assertThat(law.freeTorque().torqueNm(Math.PI)).isEqualTo(0.2, within(1e-9));
        assertThat(law.freeTorque().torqueNm(2 * Math.PI)).isEqualTo(5.2, within(1e-9));
        assertThat(law.freeTorque().torqueNm(3.001 * Math.PI)).isEqualTo(10.2, within(1e-9));
    }

    @Test
    void theToolIsTheLightOneBitForBit() {
        assertThat(population.draw(0, 0).impactTool()).isEqualTo(ReferenceTools.LIGHT);
    }

    @Test
    void theResolvedFileIsTheSameScenario() {
        String resolved = ScenarioFile.resolved(scenario);
        Scenario again = new ScenarioFile(new StrategyCatalogue()).parse("resolved.yaml", resolved);
        assertThat(ScenarioFile.resolved(again)).isEqualTo(resolved);
        assertThat(new Population(again).draw(3, 7).values())
                .isEqualTo(population.draw(3, 7).values());
    }
}
