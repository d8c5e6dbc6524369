package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ImportanceSamplingAnalyticTest {

    private static final LimitState BEYOND_4 = points ->
            points.stream().mapToDouble(point -> 4 - point.coordinate(0)).toArray();

    /** P(Z > 4) = 3.167e-5, exact. */
    @Test
    void roundTheDesignPointARareFailureIsFoundQuickly() {
        NormalPoint centre = NormalPoint.origin(5, 0).with(0, 4);
        int covered = 0;
        double mean = 0;
        for (int run = 0; run < 100; run++) {
            ImportanceSampling.Result result =
                    new ImportanceSampling(BEYOND_4, centre, 0.1).run(2000, 0.95, new SplittableRandom(run));
            mean += result.estimate() / 100;
            covered += result.interval().holds(StandardNormal.survival(4)) ? 1 : 0;
            assertThat(result.effectiveSamples()).isGreaterThan(200);
            assertThat(result.evaluations()).isEqualTo(2000);
        }
        assertThat(mean).isCloseTo(StandardNormal.survival(4), within(0.02 * StandardNormal.survival(4)));
        // 100 intervals of 95 %: fewer than 89 cover with probability below 1 % (binomial).
        assertThat(covered).isBetween(89, 100);
    }

    /** A second region on the other side, as likely as the first: the natural draws find it, no weight explodes. */
    @Test
    void theDefensivePartKeepsAFarRegionFromRuiningTheEstimate() {
        LimitState bothSides = points -> points.stream()
                .mapToDouble(point -> 2 - Math.abs(point.coordinate(0)))
                .toArray();
        NormalPoint centre = NormalPoint.origin(2, 0).with(0, 2);
        ImportanceSampling.Result result =
                new ImportanceSampling(bothSides, centre, 0.3).run(50_000, 0.99, new SplittableRandom(1));
        assertThat(result.interval().holds(2 * StandardNormal.survival(2))).isTrue();
        // Far region: Phi(-2) of the natural draws, each with weight 1/0.3 at most.
        double bound = Math.sqrt(2 * StandardNormal.survival(2) / 0.3 / 50_000);
        assertThat(result.standardError()).isLessThan(bound);
    }

    @Test
    void withoutFailuresNothingIsEffective() {
        LimitState never = points -> points.stream().mapToDouble(point -> 1).toArray();
        ImportanceSampling.Result result =
                new ImportanceSampling(never, NormalPoint.origin(2, 0), 0.5).run(1500, 0.95, new SplittableRandom(1));
        assertThat(result.estimate()).isZero();
        assertThat(result.effectiveSamples()).isZero();
    }
}
