package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExactSampleTest {

    private static final FixedPoint MICRO = new FixedPoint(1e6);

    @Test
    void smallSamplesKnowEveryValue() {
        OrderStatistics order = sample(new double[] {84.25, 3, 96.5, 84.25, 60}).orderStatistics();
        assertThat(order.n()).isEqualTo(5);
        assertThat(order.ofRank(1)).isEqualTo(new Interval(3, 3));
        assertThat(order.ofRank(3)).isEqualTo(new Interval(84.25, 84.25));
        assertThat(order.ofRank(5)).isEqualTo(new Interval(96.5, 96.5));
        assertThat(order.quantile(0)).isEqualTo(3);
        assertThat(order.quantile(0.5)).isEqualTo(84.25);
        assertThat(order.quantile(1)).isEqualTo(96.5);
        // (n - 1) p + 1 = 1.4: 3 + 0.4 (60 - 3).
        assertThat(order.quantile(0.1)).isCloseTo(25.8, within(1e-9));
    }

    /** Beyond the values kept, every order statistic lies within its class, which is narrower than 1/2048 of its value. */
    @Test
    void largeSamplesAreKnownToTheirClass() {
        int n = 20_000;
        SplittableRandom random = new SplittableRandom(1);
        double[] values = random.doubles(n, 0, 120).toArray();
        OrderStatistics order = sample(values).orderStatistics();
        double[] sorted = Arrays.stream(values).map(MICRO::rounded).sorted().toArray();
        for (int rank : new int[] {1, 2, 500, 10_000, 19_999, n}) {
            Interval bounds = order.ofRank(rank);
            assertThat(bounds.holds(sorted[rank - 1])).as("rank %d", rank).isTrue();
            assertThat(bounds.width()).isLessThanOrEqualTo(sorted[rank - 1] / 2048 + 1e-6);
        }
        assertThat(order.ofRank(1).low()).isEqualTo(sorted[0]);
        assertThat(order.ofRank(n).high()).isEqualTo(sorted[n - 1]);
        double median = (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
        assertThat(order.quantile(0.5)).isCloseTo(median, within(median / 2048));
    }

    @ParameterizedTest
    @ValueSource(ints = {7, 300, 9000})
    void splittingChangesNothing(int n) {
        double[] values = new SplittableRandom(n).doubles(n, 0, 200).toArray();
        ExactSample whole = sample(values);
        ExactSample even = new ExactSample(MICRO);
        ExactSample odd = new ExactSample(MICRO);
        for (int joint = n - 1; joint >= 0; joint--) {
            (joint % 2 == 0 ? even : odd).add(joint, values[joint]);
        }
        odd.merge(even);
        assertThat(odd.n()).isEqualTo(whole.n());
        assertThat(odd.moments().mean()).isEqualTo(whole.moments().mean());
        assertThat(odd.moments().variance()).isEqualTo(whole.moments().variance());
        assertThat(odd.least()).isEqualTo(whole.least());
        assertThat(odd.greatest()).isEqualTo(whole.greatest());
        assertThat(odd.orderStatistics().cumulativeShare(256))
                .isEqualTo(whole.orderStatistics().cumulativeShare(256));
        assertThat(Autocorrelation.lag1(odd.keptByJoint())).isEqualTo(Autocorrelation.lag1(whole.keptByJoint()));
    }

    @Test
    void theCumulativeShareRisesToOne() {
        double[] values = new SplittableRandom(3).doubles(5000, 0, 100).toArray();
        List<OrderStatistics.CumulativeShare> shares =
                sample(values).orderStatistics().cumulativeShare(256);
        assertThat(shares.size()).isBetween(250, 258);
        assertThat(shares.get(0).share()).isEqualTo(1 / 5000.0);
        assertThat(shares.get(shares.size() - 1).share()).isEqualTo(1);
        for (int i = 1; i < shares.size(); i++) {
            assertThat(shares.get(i).value()).isGreaterThan(shares.get(i - 1).value());
            assertThat(shares.get(i).share() - shares.get(i - 1).share()).isBetween(1e-12, 2.0 / 256);
        }
    }

    @Test
    void equalValuesAreOneStep() {
        OrderStatistics order = sample(new double[] {0, 0, 0, 5}).orderStatistics();
        assertThat(order.cumulativeShare(256))
                .containsExactly(
                        new OrderStatistics.CumulativeShare(0, 0.75), new OrderStatistics.CumulativeShare(5, 1));
    }

    @Test
    void emptySamplesHaveNothing() {
        ExactSample empty = new ExactSample(MICRO);
        assertThat(empty.least()).isNaN();
        assertThat(empty.greatest()).isNaN();
        assertThat(empty.moments().mean()).isNaN();
        assertThat(empty.moments().variance()).isNaN();
        assertThatThrownBy(empty::orderStatistics).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void whatCannotBeCountedIsRefused() {
        ExactSample sample = sample(new double[] {1, 2});
        assertThatThrownBy(() -> sample.add(0, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> sample.add(2, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> sample.add(2, 1e12)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> sample.orderStatistics().ofRank(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> sample.orderStatistics().ofRank(3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ExactMoments(MICRO).merge(new ExactMoments(new FixedPoint(10))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FixedPoint(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Sums of 1e6 squares of 2^40 leave 64 bits far behind and stay exact. */
    @Test
    void sumsOfSquaresNeverOverflow() {
        ExactMoments moments = new ExactMoments(new FixedPoint(1));
        for (int i = 0; i < 1_000_000; i++) {
            moments.add((1L << 40) + (i % 2 == 0 ? 1 : -1));
        }
        assertThat(moments.mean()).isEqualTo(0x1p40);
        assertThat(moments.variance()).isCloseTo(1, within(2e-6));
    }

    @Test
    void pairsAgreeWithCommonsMath() {
        ExactPairMoments pairs = new ExactPairMoments(new FixedPoint(1));
        pairs.add(3, 5);
        pairs.add(-7, 9);
        pairs.add(2, -30);
        ExactPairMoments more = new ExactPairMoments(new FixedPoint(1));
        more.add(0, 1);
        pairs.merge(more);
        assertThat(pairs.difference().mean()).isEqualTo((-2 - 16 + 32 - 1) / 4.0);
        double[] x = {3, -7, 2, 0};
        double[] y = {5, 9, -30, 1};
        assertThat(pairs.correlation())
                .isCloseTo(
                        new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(x, y),
                        within(1e-14));
    }

    private static ExactSample sample(double[] values) {
        ExactSample sample = new ExactSample(MICRO);
        for (int joint = 0; joint < values.length; joint++) {
            sample.add(joint, values[joint]);
        }
        return sample;
    }
}
