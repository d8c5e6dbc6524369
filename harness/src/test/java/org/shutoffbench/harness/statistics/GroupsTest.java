package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Clusters, variance components, ranks and tolerance ranks in closed or limiting cases. */
class GroupsTest {

    @Test
    void oneClusterTellsNothing() {
        ClusterInterval rate = ClusterInterval.ofRate(new long[] {3}, new long[] {10}, 0.95);
        assertThat(rate.interval()).isEqualTo(new Interval(0, 1));
        assertThat(rate.designEffect()).isEqualTo(10);
        ClusterInterval mean = ClusterInterval.ofMean(new double[] {30}, new long[] {10}, 1, 0.95);
        assertThat(mean.interval().width()).isInfinite();
    }

    /** No failure in five lots: each lot counts once, and the interval is that of 0 of at most 5. */
    @Test
    void withoutAnyFailureLotsCountOnce() {
        ClusterInterval rate = ClusterInterval.ofRate(new long[5], new long[] {100, 100, 100, 100, 100}, 0.95);
        assertThat(rate.designEffect()).isEqualTo(100);
        assertThat(rate.interval().low()).isZero();
        assertThat(rate.interval().high())
                .isGreaterThanOrEqualTo(
                        BinomialInterval.CLOPPER_PEARSON.of(0, 5, 0.95).high());
        ClusterInterval all = ClusterInterval.ofRate(new long[] {9, 9}, new long[] {9, 9}, 0.95);
        assertThat(all.interval().high()).isEqualTo(1);
    }

    /** Joints of a lot that are all alike: the design effect is the size of the lot (times n/(n - 1), about 1). */
    @Test
    void alikeJointsCountAsOne() {
        long[] sizes = new long[40];
        long[] counts = new long[40];
        for (int i = 0; i < 40; i++) {
            sizes[i] = 25;
            counts[i] = i % 2 == 0 ? 25 : 0;
        }
        assertThat(ClusterInterval.ofRate(counts, sizes, 0.95).designEffect()).isCloseTo(25 * 40 / 39.0, within(0.1));
    }

    @Test
    void emptyClustersAreSkipped() {
        ClusterInterval with = ClusterInterval.ofRate(new long[] {1, 0, 4}, new long[] {10, 0, 10}, 0.95);
        ClusterInterval without = ClusterInterval.ofRate(new long[] {1, 4}, new long[] {10, 10}, 0.95);
        assertThat(with).isEqualTo(without);
        assertThatThrownBy(() -> ClusterInterval.ofRate(new long[1], new long[1], 0.95))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A mean that does not vary within or between: no design effect. */
    @Test
    void constantMeansHaveNoDesignEffect() {
        ClusterInterval mean = ClusterInterval.ofMean(new double[] {20, 20}, new long[] {10, 10}, 0, 0.95);
        assertThat(mean.designEffect()).isEqualTo(1);
        assertThat(mean.interval()).isEqualTo(new Interval(2, 2));
    }

    /** Known components 9, 4, 1 of unequal groups: estimates come within three standard errors (simulated once). */
    @Test
    void unequalGroupsGiveTheirComponents() {
        Gaussians gaussians = new Gaussians(new SplittableRandom(5));
        int lots = 400;
        int n = 0;
        double[] values = new double[lots * 12];
        int[] lotOf = new int[values.length];
        int[] pieceOf = new int[values.length];
        int piece = 0;
        for (int lot = 0; lot < lots; lot++) {
            double ofLot = 3 * gaussians.next();
            for (int p = 0; p < 2 + lot % 3; p++) {
                double ofPiece = 2 * gaussians.next();
                for (int repeat = 0; repeat < 1 + (lot + p) % 3; repeat++) {
                    values[n] = 84 + ofLot + ofPiece + gaussians.next();
                    lotOf[n] = lot;
                    pieceOf[n++] = piece;
                }
                piece++;
            }
        }
        VarianceComponents found = VarianceComponents.of(
                java.util.Arrays.copyOf(values, n),
                java.util.Arrays.copyOf(lotOf, n),
                java.util.Arrays.copyOf(pieceOf, n));
        assertThat(found.lot()).isCloseTo(9, within(2.4));
        assertThat(found.piece()).isCloseTo(4, within(0.8));
        assertThat(found.repeat()).isCloseTo(1, within(0.15));
    }

    /** Two lots of two pieces, no repeats: within 0.5 and between (10 - 0.5)/2 by hand. */
    @Test
    void withoutRepeatsPiecesAndRepeatsAreOne() {
        VarianceComponents found =
                VarianceComponents.of(new double[] {1, 2, 4, 5}, new int[] {0, 0, 1, 1}, new int[] {0, 1, 2, 3});
        assertThat(found.piece()).isNaN();
        assertThat(found.repeat()).isCloseTo(0.5, within(1e-12));
        assertThat(found.lot()).isCloseTo((9 - 0.5) / 2, within(1e-12));
    }

    @Test
    void oneLotHasNoComponentOfItsOwn() {
        VarianceComponents found = VarianceComponents.of(new double[] {1, 2, 4, 5}, new int[4], new int[] {0, 0, 1, 1});
        assertThat(found.lot()).isNaN();
        assertThat(found.repeat()).isCloseTo(0.5, within(1e-12));
        assertThat(found.piece()).isCloseTo((9 - 0.5) / 2, within(1e-12));
    }

    /** n 93, 95 %/95 %: the whole sample; one less: nothing. */
    @Test
    void toleranceRanksBeginWithTheWholeSample() {
        assertThat(FreeTolerance.ranks(93, 0.95, 0.95)).isEqualTo(new QuantileRanks(1, 93));
        assertThat(FreeTolerance.ranks(92, 0.95, 0.95)).isEqualTo(new QuantileRanks(0, 93));
        QuantileRanks of500 = FreeTolerance.ranks(500, 0.95, 0.95);
        assertThat(of500.lower() + (501 - of500.upper())).isEqualTo(FreeTolerance.blocksCut(500, 0.95, 0.95));
        assertThat(501 - of500.upper() - of500.lower()).isBetween(0L, 1L);
        assertThatThrownBy(() -> FreeTolerance.leastSample(3, 0.95, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void friedmanOfAgreementAndOfTies() {
        Friedman agreed = Friedman.of(new double[][] {{1, 2, 3}, {1, 2, 3}, {1, 2, 3}});
        // All three blocks agree: 6 of 6^3 rankings spread as far, statistic n (k - 1).
        assertThat(agreed.p()).isCloseTo(1 / 36.0, within(1e-12));
        assertThat(agreed.statistic()).isCloseTo(6, within(1e-12));
        assertThat(agreed.exact()).isTrue();
        Friedman tied = Friedman.of(new double[][] {{1, 1}, {2, 2}});
        assertThat(tied.statistic()).isZero();
        assertThat(tied.p()).isEqualTo(1);
        Friedman large = Friedman.of(new double[][] {{1, 2, 3, 4, 5, 6, 7}, {2, 1, 3, 4, 5, 7, 6}});
        assertThat(large.exact()).isFalse();
        assertThat(large.p()).isEqualTo(large.chiSquareP());
        assertThatThrownBy(() -> Friedman.of(new double[][] {{1, 2}})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Friedman.of(new double[][] {{1}, {2}})).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void missingJointsBreakTheSeries() {
        double nan = Double.NaN;
        assertThat(Autocorrelation.lag1(new double[] {1, nan, 2, nan})).isNaN();
        assertThat(Autocorrelation.lag1(new double[] {3, 3, 3})).isNaN();
        // Mean 2.5: pair (1, 2) only, products 0.75; squares 2.25 + 0.25 + 2.25 + 0.25 = 5.
        assertThat(Autocorrelation.lag1(new double[] {1, 2, nan, 4, nan, 3})).isCloseTo(0.75 / 5, within(1e-12));
    }

    @Test
    void boundsNeverContradictTheExactTest() {
        for (long b = 0; b < 30; b++) {
            for (long c = 0; c < 30; c++) {
                Interval bounds = PairedRateDifference.bounds(b, c, 100, 0.95);
                if (McNemar.EXACT.p(b, c) > 0.05) {
                    assertThat(bounds.holds(0)).as("%d %d", b, c).isTrue();
                } else {
                    assertThat(bounds.holds(0)).as("%d %d", b, c).isFalse();
                }
                assertThat(bounds.low())
                        .isCloseTo(-PairedRateDifference.bounds(c, b, 100, 0.95).high(), within(1e-9));
            }
        }
    }

    @Test
    void argumentsAreChecked() {
        assertThatThrownBy(() -> BinomialInterval.WILSON.of(3, 2, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BinomialInterval.WILSON.of(-1, 2, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BinomialInterval.WILSON.of(0, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BinomialInterval.WILSON.of(1, 2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ToleranceFactor.EXACT.twoSided(1, 0.9, 0.9))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ToleranceFactor.HOWE.twoSided(5, 1, 0.9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ToleranceFactor.oneSided(5, 0.9, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PairedRateDifference.score(3, 3, 5, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NormalIntervals.correlation(0.5, 3, 0.95))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Interval(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(NormalIntervals.correlation(1, 10, 0.95)).isEqualTo(new Interval(1, 1));
        assertThat(CapabilityIndex.spread(71.4, 96.6, 72, 96)).isCloseTo(1.05, within(1e-12));
        assertThat(CapabilityIndex.worstSide(71.4, 96.6, 72, 84, 97)).isCloseTo(12.6 / 13, within(1e-12));
    }
}
