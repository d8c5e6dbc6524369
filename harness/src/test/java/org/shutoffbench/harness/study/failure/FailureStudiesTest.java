package org.shutoffbench.harness.study.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.StrategyTrace;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.statistics.LimitState;
import org.shutoffbench.harness.statistics.NormalPoint;
import org.shutoffbench.harness.statistics.StandardNormal;
import org.shutoffbench.plant.FastPlant;

/** Hard plain joints, of which one in ten has a lock nut of 4 to 14 N m; blow counting at its default setting. */
class FailureStudiesTest {

    private static final Path SCENARIO = Path.of("src/test/resources/a-lock-nut-now-and-then.yaml");

    private static final StrategyCatalogue CATALOGUE = new StrategyCatalogue();
    private static final Scenario READ = new ScenarioFile(CATALOGUE).read(SCENARIO);
    private static final Bench BENCH = Bench.of(READ, READ.seed(), CATALOGUE);

    /** One search serves two tests. */
    private static final WeakestStudy.Found WEAKEST =
            new WeakestStudy(200, 1, 30, 100, 0.95, 1).run(BENCH, READ.seed(), 0, 0, FailureEvent.SILENT_MISS, 2);

    /** One in ten is present above Phi^-1(0.9) = 1.2816; its median is 9 N m, which blow counting cannot tell from a joint. */
    @Test
    void aLockNutAloneIsEnoughToFoolBlowCounting() {
        WeakestStudy.Result result = WEAKEST.result();
        assertThat(result.beta()).isCloseTo(StandardNormal.quantile(0.9), within(1e-4));
        assertThat(result.changes()).hasSize(1);
        assertThat(result.changes().get(0).source()).isEqualTo("prevailing present (piece)");
        assertThat(result.words()).contains("9.0 N m").contains("alone");
        assertThat(result.verdict()).isEqualTo("REACHED");
        assertThat(result.failsOverNoise()).isGreaterThan(0.9);
    }

    @Test
    void theSavedJointGivesTheSameTighteningToTheLastBit(@TempDir Path folder) throws Exception {
        WeakestStudy.Found found = WEAKEST;
        Scenario joint = found.joint();
        assertThat(joint).isNotNull();
        Path file = folder.resolve("weakest.yaml");
        Files.writeString(file, ScenarioFile.resolved(joint));
        Bench again = Bench.of(new ScenarioFile(CATALOGUE).read(file), 99, CATALOGUE);
        TighteningRecord record = new StrategyTrace(again, 0, FastPlant::new, null).tighten(0, 0);
        assertThat(record.clampingTorqueNm()).isEqualTo(found.result().clampingTorqueNm());
        assertThat(record.clampForceN()).isEqualTo(found.result().clampForceN());
        assertThat(record.outcome().title()).isEqualTo(found.result().outcome());
        assertThat(record.verdict().name()).isEqualTo(found.result().verdict());
    }

    /** Margin: noise of 0.4 on a distance of 2; one noise may be kind or not, the median of many is the distance. */
    @Test
    void overManyNoisesTheJointIsAtFault() {
        LimitState noisy = points -> points.stream()
                .mapToDouble(point ->
                        2 - point.coordinate(0) + 0.8 * (new SplittableRandom(point.noiseKey()).nextDouble() - 0.5))
                .toArray();
        NoisePanel panel = new NoisePanel(noisy, BENCH.population(), 0, 201);
        NormalPoint near = NormalPoint.of(new double[] {2}, 7);
        assertThat(panel.margins(List.of(near))[0]).isCloseTo(0, within(0.15));
        NormalPoint beyond = NormalPoint.of(new double[] {2.2}, 7);
        int joint = panel.failingJoint(beyond);
        assertThat(noisy.margins(List.of(beyond.withNoise(panel.key(joint))))[0])
                .isLessThanOrEqualTo(0);
        assertThatThrownBy(() -> new NoisePanel(noisy, BENCH.population(), 0, 2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void threadsChangeNothing() {
        RareStudy study = new RareStudy(100, 0, 20, 0.95, 1);
        assertThat(study.run(BENCH, 0, 0, FailureEvent.OUT_OF_WINDOW, 2))
                .isEqualTo(study.run(BENCH, 0, 0, FailureEvent.OUT_OF_WINDOW, 1));
    }

    @Test
    void aFrequentFailureIsFoundAlikeByAllMethods() {
        RareStudy.Result result = new RareStudy(300, 300, 300, 0.99, 3).run(BENCH, 0, 0, FailureEvent.SILENT_MISS, 2);
        assertThat(result.estimates()).hasSize(3);
        assertThat(result.agreement()).isEqualTo("the intervals of all methods meet");
        assertThat(result.estimates().get(2).estimate()).isBetween(0.03, 0.4);
    }

    @Test
    void theLockNutExplainsMostOfTheSilentMisses() {
        SensitivityStudy.Result result =
                new SensitivityStudy(60, 0.95, 5).run(BENCH, 0, 0, FailureEvent.SILENT_MISS, 2);
        assertThat(result.shares().get(0).name()).isEqualTo("prevailing present");
        assertThat(result.shares()).anyMatch(share -> share.name().equals(SensitivityStudy.NOISE));
        assertThat(result.tightenings()).isEqualTo(60L * (result.shares().size() + 2));
    }
}
