package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Test functions with indices in closed form. Source: Saltelli, Ratto, Andres, Campolongo, Cariboni, Gatelli, Saisana,
 * Tarantola, "Global Sensitivity Analysis: The Primer" (2008), g-function and Ishigami function; numbers recomputed from the
 * closed forms in {@code sobol.py} beside the reference files. Tolerance: four standard errors of 40,000 rows.
 */
class SobolIndicesReferenceTest {

    private static final int ROWS = 40_000;

    @Test
    void gFunction() {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        double[] first = {0.7162, 0.1790, 0.0237, 0.0072};
        double[] total = {0.7871, 0.2422, 0.0343, 0.0105};
        List<SobolIndices.Index> indices = estimate(8, u -> {
            double product = 1;
            for (int i = 0; i < a.length; i++) {
                product *= (Math.abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
            }
            return product;
        });
        for (int i = 0; i < first.length; i++) {
            assertThat(indices.get(i).first()).as("S%d", i + 1).isCloseTo(first[i], within(0.03));
            assertThat(indices.get(i).total()).as("ST%d", i + 1).isCloseTo(total[i], within(0.03));
        }
    }

    /** Ishigami, a = 7, b = 0.1: S 0.3139, 0.4424, 0; ST 0.5576, 0.4424, 0.2437. */
    @Test
    void ishigami() {
        double[] first = {0.3139, 0.4424, 0};
        double[] total = {0.5576, 0.4424, 0.2437};
        List<SobolIndices.Index> indices = estimate(3, SobolIndicesReferenceTest::ishigami);
        for (int i = 0; i < 3; i++) {
            assertThat(indices.get(i).first()).as("S%d", i + 1).isCloseTo(first[i], within(0.03));
            assertThat(indices.get(i).total()).as("ST%d", i + 1).isCloseTo(total[i], within(0.02));
            assertThat(indices.get(i).firstInterval().holds(indices.get(i).first()))
                    .isTrue();
            assertThat(indices.get(i).totalInterval().width()).isLessThan(0.03);
        }
    }

    /** A group's total index holds its members' and their interaction: Ishigami x1 and x3 together 1 - 0.4424. */
    @Test
    void inputsWorkInGroups() {
        List<SobolIndices.Index> indices = new SobolIndices(new int[][] {{0, 2}, {1}})
                .estimate(
                        points -> points.stream()
                                .mapToDouble(SobolIndicesReferenceTest::ishigami)
                                .toArray(),
                        ROWS,
                        0.95,
                        new SplittableRandom(2));
        assertThat(indices.get(0).first()).isCloseTo(0.5576, within(0.03));
        assertThat(indices.get(0).total()).isCloseTo(0.5576, within(0.02));
    }

    /** Bootstrap intervals of a linear function, S = 0.8 and 0.2 exactly, cover about as often as they say. */
    @Test
    void bootstrapIntervalsCover() {
        int covered = 0;
        for (int run = 0; run < 60; run++) {
            SobolIndices.Index index = new SobolIndices(new int[][] {{0}, {1}})
                    .estimate(
                            points -> points.stream()
                                    .mapToDouble(u -> 2 * u[0] + u[1])
                                    .toArray(),
                            400,
                            0.95,
                            new SplittableRandom(run))
                    .get(0);
            covered += index.totalInterval().holds(0.8) ? 1 : 0;
        }
        // 60 intervals of 95 %: fewer than 52 cover with probability below 1 % (binomial).
        assertThat(covered).isGreaterThanOrEqualTo(52);
    }

    @Test
    void whatDoesNotVaryExplainsNothing() {
        SobolIndices.Index index = new SobolIndices(new int[][] {{0}})
                .estimate(points -> new double[points.size()], 20, 0.95, new SplittableRandom(1))
                .get(0);
        assertThat(index.total()).isZero();
    }

    /** Few rows or many: what changes nothing has indices of exactly 0, and so have all resamples. */
    @Test
    void anIdleInputHasIndicesOfExactlyZero() {
        SobolIndices.Index idle = new SobolIndices(new int[][] {{0}, {1}})
                .estimate(
                        points -> points.stream()
                                .mapToDouble(u -> 5 + u[0] * u[0])
                                .toArray(),
                        50,
                        0.95,
                        new SplittableRandom(3))
                .get(1);
        assertThat(idle).isEqualTo(new SobolIndices.Index(0, new Interval(0, 0), 0, new Interval(0, 0)));
    }

    /** A constant added to the result changes no index: the sample is centred. */
    @Test
    void whereTheResultLiesDoesNotMatter() {
        for (double shift : new double[] {0, 1e3}) {
            SobolIndices.Index index = new SobolIndices(new int[][] {{0}, {1}})
                    .estimate(
                            points -> points.stream()
                                    .mapToDouble(u -> shift + 2 * u[0] + u[1])
                                    .toArray(),
                            4000,
                            0.95,
                            new SplittableRandom(4))
                    .get(0);
            assertThat(index.first()).isCloseTo(0.8, within(0.05));
        }
    }

    @Test
    void anInputInTwoGroupsIsRefused() {
        assertThatThrownBy(() -> new SobolIndices(new int[][] {{0, 1}, {1}}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double ishigami(double[] u) {
        double x1 = Math.PI * (2 * u[0] - 1);
        double x2 = Math.PI * (2 * u[1] - 1);
        double x3 = Math.PI * (2 * u[2] - 1);
        return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    private static List<SobolIndices.Index> estimate(
            int dimension, java.util.function.ToDoubleFunction<double[]> model) {
        int[][] single =
                IntStream.range(0, dimension).mapToObj(i -> new int[] {i}).toArray(int[][]::new);
        return new SobolIndices(single)
                .estimate(points -> points.stream().mapToDouble(model).toArray(), ROWS, 0.95, new SplittableRandom(11));
    }
}
