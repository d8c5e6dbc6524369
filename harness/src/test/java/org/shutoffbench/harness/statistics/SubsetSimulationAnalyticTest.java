package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Closed form: the sum of d standard normals over sqrt(d) is one, so beta = 4.7534243 fails with probability 1e-6. */
class SubsetSimulationAnalyticTest {

    private static final int DIMENSION = 20;
    private static final double BETA = StandardNormal.upperQuantile(1e-6);

    private static final LimitState HYPERPLANE = points -> points.stream()
            .mapToDouble(point -> {
                double sum = 0;
                for (int i = 0; i < point.dimension(); i++) {
                    sum += point.coordinate(i);
                }
                return BETA - sum / Math.sqrt(point.dimension());
            })
            .toArray();

    @Test
    void oneInAMillionIsFoundWithin20000Evaluations() {
        int runs = 50;
        int covered = 0;
        double mean = 0;
        for (int run = 0; run < runs; run++) {
            SubsetSimulation.Result result =
                    new SubsetSimulation(HYPERPLANE, DIMENSION, 3000, new SplittableRandom(run)).run(0.95);
            assertThat(result.evaluations()).isLessThanOrEqualTo(20_000);
            mean += result.estimate() / runs;
            covered += result.interval().holds(1e-6) ? 1 : 0;
        }
        assertThat(mean).isCloseTo(1e-6, within(1e-7));
        // 50 intervals of 95 %: fewer than 43 cover with probability below 1 % (binomial).
        assertThat(covered).isGreaterThanOrEqualTo(43);
    }

    /** P(max of 4 normals > b) with b such that it is 1e-4: four failure regions, none of them alone. */
    @Test
    void severalFailureRegionsAreAllFound() {
        double each = 1 - Math.pow(1 - 1e-4, 0.25);
        double edge = StandardNormal.upperQuantile(each);
        LimitState corners = points -> points.stream()
                .mapToDouble(point -> {
                    double greatest = Double.NEGATIVE_INFINITY;
                    for (int i = 0; i < point.dimension(); i++) {
                        greatest = Math.max(greatest, point.coordinate(i));
                    }
                    return edge - greatest;
                })
                .toArray();
        double mean = 0;
        for (int run = 0; run < 30; run++) {
            mean += new SubsetSimulation(corners, 4, 2000, new SplittableRandom(run))
                            .run(0.95)
                            .estimate()
                    / 30;
        }
        assertThat(mean).isCloseTo(1e-4, within(1.5e-5));
    }

    /** The verdict rules half of the space out: P = Phi(-3)/2 with the rest infinite. */
    @Test
    void whereTheVerdictRulesItOutNothingCounts() {
        LimitState half = points -> points.stream()
                .mapToDouble(point -> point.coordinate(1) > 0 ? Double.POSITIVE_INFINITY : 3 - point.coordinate(0))
                .toArray();
        double truth = StandardNormal.survival(3) / 2;
        double mean = 0;
        for (int run = 0; run < 30; run++) {
            mean += new SubsetSimulation(half, 5, 2000, new SplittableRandom(run))
                            .run(0.95)
                            .estimate()
                    / 30;
        }
        assertThat(mean).isCloseTo(truth, within(0.1 * truth));
    }

    @Test
    void noiseIsProposedAfreshInEveryStep() {
        // The margin is noise alone: uniform on 0..1 less 1e-3, so P = 1e-3.
        LimitState noise = points -> points.stream()
                .mapToDouble(point -> new SplittableRandom(point.noiseKey()).nextDouble() - 1e-3)
                .toArray();
        SubsetSimulation.Result result = new SubsetSimulation(noise, 2, 5000, new SplittableRandom(3)).run(0.99);
        assertThat(result.interval().holds(1e-3)).isTrue();
    }

    @Test
    void whatNeverFailsGetsAnUpperBoundOnly() {
        LimitState never = points -> points.stream().mapToDouble(point -> 1).toArray();
        LimitState impossible = points ->
                points.stream().mapToDouble(point -> Double.POSITIVE_INFINITY).toArray();
        SubsetSimulation.Result stuck = new SubsetSimulation(never, 3, 1000, new SplittableRandom(1)).run(0.95);
        assertThat(stuck.estimate()).isZero();
        assertThat(stuck.interval().high()).isEqualTo(1);
        SubsetSimulation.Result result = new SubsetSimulation(impossible, 3, 1000, new SplittableRandom(1)).run(0.95);
        assertThat(result.estimate()).isZero();
        // 1 - 0.025^(1/1000) to first order.
        assertThat(result.interval().high()).isCloseTo(-Math.log(0.025) / 1000, within(1e-12));
    }

    /** Margin max(3 - z, 1): it falls to 1 at z = 2 and stays. The plateau's own probability, Phi(-2), bounds what is below it. */
    @Test
    void aPlateauBoundsWhatLiesBelowIt() {
        LimitState plateau = points -> points.stream()
                .mapToDouble(point -> Math.max(3 - point.coordinate(0), 1))
                .toArray();
        SubsetSimulation.Result result = new SubsetSimulation(plateau, 3, 2000, new SplittableRandom(1)).run(0.95);
        assertThat(result.estimate()).isZero();
        assertThat(result.interval().high()).isCloseTo(StandardNormal.survival(2), within(0.006));
    }

    @Test
    void whatFailsOftenIsPlainSampling() {
        LimitState often = points ->
                points.stream().mapToDouble(point -> point.coordinate(0)).toArray();
        SubsetSimulation.Result result = new SubsetSimulation(often, 2, 4000, new SplittableRandom(8)).run(0.95);
        assertThat(result.levels()).isEqualTo(1);
        assertThat(result.evaluations()).isEqualTo(4000);
        assertThat(result.estimate()).isCloseTo(0.5, within(0.03));
        assertThat(result.variation()).isCloseTo(1 / Math.sqrt(4000), within(1e-3));
        assertThat(result.effectiveSamples()).isCloseTo(4000, within(200.0));
    }

    @Test
    void failuresComeNearestFirst() {
        SubsetSimulation.Result result =
                new SubsetSimulation(HYPERPLANE, DIMENSION, 1000, new SplittableRandom(4)).run(0.95);
        assertThat(result.failures()).isNotEmpty();
        assertThat(result.failures().get(0).norm()).isGreaterThanOrEqualTo(BETA);
        for (int i = 1; i < result.failures().size(); i++) {
            assertThat(result.failures().get(i).norm())
                    .isGreaterThanOrEqualTo(result.failures().get(i - 1).norm());
        }
    }

    @Test
    void tooFewSamplesAreRefused() {
        assertThatThrownBy(() -> new SubsetSimulation(HYPERPLANE, 2, 90, new SplittableRandom(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SubsetSimulation(HYPERPLANE, 2, 105, new SplittableRandom(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
