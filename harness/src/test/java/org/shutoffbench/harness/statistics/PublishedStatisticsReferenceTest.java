package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
