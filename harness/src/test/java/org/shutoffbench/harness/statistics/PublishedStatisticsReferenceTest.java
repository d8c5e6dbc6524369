package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values printed in published sources; tolerances are half a unit of the last printed digit unless said otherwise. */
class PublishedStatisticsReferenceTest {

    /** NIST/SEMATECH e-Handbook 7.2.6.3: n 43, content 90 %, confidence 99 %. */
    @Test
    void toleranceFactorOfTheNistHandbook() {
        assertThat(ToleranceFactor.HOWE.twoSided(43, 0.90, 0.99)).isCloseTo(2.2173, within(2e-4));
        assertThat(ToleranceFactor.EXACT.twoSided(43, 0.90, 0.99)).isCloseTo(2.2228, within(5e-5));
    }

    /** Exact two-sided factors, n 10, 95 % confidence (tables of the exact method, three decimals). */
    @ParameterizedTest
    @CsvSource({"0.90,2.856", "0.95,3.393", "0.99,4.437"})
    void exactToleranceFactors(double content, double factor) {
        assertThat(ToleranceFactor.EXACT.twoSided(10, content, 0.95)).isCloseTo(factor, within(5e-4));
    }

    /** Wilks 1941: 59 and 93; success run: 299, 1109, 2995 trials without failure at 95 %. */
    @Test
    void sampleSizesWithoutAnyDistribution() {
        assertThat(FreeTolerance.leastSample(1, 0.95, 0.95)).isEqualTo(59);
        assertThat(FreeTolerance.leastSample(2, 0.95, 0.95)).isEqualTo(93);
        assertThat(FreeTolerance.successRun(0.99, 0.95)).isEqualTo(299);
        assertThat(FreeTolerance.successRun(0.9973, 0.95)).isEqualTo(1109);
        assertThat(FreeTolerance.successRun(0.999, 0.95)).isEqualTo(2995);
    }

    /** Commons Math's own tests: 50 of 500 at 90 %; 4 of 20 at 95 % recomputed with R. */
    @Test
    void binomialIntervals() {
        Interval exact = BinomialInterval.CLOPPER_PEARSON.of(50, 500, 0.90);
        assertThat(exact.low()).isCloseTo(0.07873857, within(5e-9));
        assertThat(exact.high()).isCloseTo(0.1248658, within(5e-8));
        Interval score = BinomialInterval.WILSON.of(50, 500, 0.90);
        assertThat(score.low()).isCloseTo(0.08003919, within(5e-9));
        assertThat(score.high()).isCloseTo(0.1242664, within(5e-8));
        Interval small = BinomialInterval.CLOPPER_PEARSON.of(4, 20, 0.95);
        assertThat(small.low()).isCloseTo(0.05733, within(5e-6));
        assertThat(small.high()).isCloseTo(0.43661, within(5e-6));
    }

    /** Boost Math documentation, chi-square confidence limits: s 13.97, n 10, 95 %. */
    @Test
    void intervalOfTheStandardDeviation() {
        Interval sigma = NormalIntervals.sigma(13.97, 10, 0.95);
        assertThat(sigma.low()).isCloseTo(9.60906, within(5e-6));
        assertThat(sigma.high()).isCloseTo(25.50377, within(5e-5));
    }

    /** Bissell 1990, recomputed: C_pk 1.67, 95 % lower bound at n 25, 50, 100. */
    @ParameterizedTest
    @CsvSource({"25,1.26", "50,1.38", "100,1.47"})
    void capabilityBound(int n, double bound) {
        assertThat(CapabilityIndex.bissellLowerBound(1.67, n, 0.95)).isCloseTo(bound, within(5e-3));
    }

    /** Definition check of the torque-rate pair, six sigma: hard (50, 1.5), soft (46, 2.0), worked by hand. */
    @Test
    void torqueRatePair() {
        TorqueRateFigures figures = TorqueRateFigures.of(50, 1.5, 46, 2.0, 3);
        assertThat(figures.hardScatterPercent()).isCloseTo(18.0, within(0.05));
        assertThat(figures.softScatterPercent()).isCloseTo(26.1, within(0.05));
        assertThat(figures.combinedMean()).isCloseTo(47.25, within(1e-12));
        assertThat(figures.meanShiftPercent()).isCloseTo(8.47, within(0.005));
        assertThat(figures.combinedScatterPercent()).isCloseTo(30.7, within(0.05));
    }

    /** Kim and Nelson 2001, k 6, n0 20, alpha 0.05 (recomputed from the formula). */
    @Test
    void kimNelsonConstants() {
        assertThat(KimNelson.eta(6, 20, 0.05)).isCloseTo(0.2548, within(5e-5));
        assertThat(KimNelson.hSquared(6, 20, 0.05)).isCloseTo(9.68, within(5e-3));
    }

    /** NIST StRD, NumAcc4: 10000000.2 then 1000 times .1 and .3 less; mean 10000000.2, s 0.1: certified, to all digits. */
    @Test
    void numAcc4() {
        DoubleStream rest = DoubleStream.iterate(10000000.1, x -> x == 10000000.1 ? 10000000.3 : 10000000.1)
                .limit(1000);
        ExactMoments moments = moments(DoubleStream.concat(DoubleStream.of(10000000.2), rest), 10);
        assertThat(moments.n()).isEqualTo(1001);
        assertThat(moments.mean()).isEqualTo(10000000.2);
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(1e-16));
    }

    /** NIST StRD, NumAcc1: 10000001, 10000003, 10000002; mean 10000002, s 1. */
    @Test
    void numAcc1() {
        ExactMoments moments = moments(DoubleStream.of(10000001, 10000003, 10000002), 1);
        assertThat(moments.mean()).isEqualTo(10000002);
        assertThat(moments.standardDeviation()).isEqualTo(1);
    }

    /** NIST StRD, NumAcc2: 1.2 then 500 pairs 1.1, 1.3; mean 1.2, s 0.1. NumAcc3: the same from 1000000. */
    @ParameterizedTest
    @CsvSource({"1.1,1.2,1.3", "1000000.1,1000000.2,1000000.3"})
    void numAcc2And3(double low, double middle, double high) {
        DoubleStream rest =
                DoubleStream.iterate(low, x -> x == low ? high : low).limit(1000);
        ExactMoments moments = moments(DoubleStream.concat(DoubleStream.of(middle), rest), 10);
        assertThat(moments.mean()).isEqualTo(middle);
        assertThat(moments.standardDeviation()).isCloseTo(0.1, within(1e-16));
    }

    /** NIST StRD, Lottery (218 values, a whole file): mean 518.958715596330, s 291.699727470969, certified. */
    @Test
    void lottery() {
        ExactMoments moments =
                moments(ReferenceRows.of("lottery.csv").stream().mapToDouble(row -> Double.parseDouble(row[0])), 1);
        assertThat(moments.n()).isEqualTo(218);
        assertThat(moments.mean()).isCloseTo(518.958715596330, within(5e-13));
        assertThat(moments.standardDeviation()).isCloseTo(291.699727470969, within(5e-13));
    }

    /** NIST StRD, Lottery: lag-1 autocorrelation -0.120948622967393, certified. */
    @Test
    void lotteryAutocorrelation() {
        double[] series = ReferenceRows.of("lottery.csv").stream()
                .mapToDouble(row -> Double.parseDouble(row[0]))
                .toArray();
        assertThat(Autocorrelation.lag1(series)).isCloseTo(-0.120948622967393, within(5e-16));
    }

    private static ExactMoments moments(DoubleStream values, double perUnit) {
        FixedPoint point = new FixedPoint(perUnit);
        ExactMoments moments = new ExactMoments(point);
        values.forEach(value -> moments.add(point.steps(value)));
        return moments;
    }
}
