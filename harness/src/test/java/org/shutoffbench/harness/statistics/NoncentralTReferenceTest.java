package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against SciPy (noncentral_t.csv states version, date and tolerance) and against the central law. */
class NoncentralTReferenceTest {

    @Test
    void largeNoncentralityAndBrokenDegreesOfFreedom() {
        for (String[] row : ReferenceRows.of("noncentral_t.csv")) {
            double[] x = ReferenceRows.numbers(row, 0);
            assertThat(NoncentralT.of(x[1], x[2]).cdf(x[0]))
                    .as("t %s nu %s delta %s", x[0], x[1], x[2])
                    .isCloseTo(x[3], within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.3,1", "-2.5,2", "4,7", "1.1,3000"})
    void withoutNoncentralityItIsStudentsT(double t, double nu) {
        assertThat(NoncentralT.of(nu, 0).cdf(t))
                .isCloseTo(TDistribution.of(nu).cumulativeProbability(t), within(1e-11));
    }

    @ParameterizedTest
    @CsvSource({"2,9,1", "30,19,25", "-1,4,-3", "0,6,0.5"})
    void bothTailsMakeOne(double t, double nu, double delta) {
        NoncentralT law = NoncentralT.of(nu, delta);
        assertThat(law.cdf(t) + law.survival(t)).isCloseTo(1, within(1e-12));
        assertThat(NoncentralT.of(nu, -delta).survival(-t)).isCloseTo(law.cdf(t), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.05,9,1", "0.5,42,8", "0.999,4,20", "1e-6,30,2"})
    void theQuantileInvertsTheLaw(double p, double nu, double delta) {
        NoncentralT law = NoncentralT.of(nu, delta);
        assertThat(law.cdf(law.quantile(p))).isCloseTo(p, within(1e-9 * Math.max(p, 1e-3)));
    }

    @Test
    void parametersAreChecked() {
        assertThatThrownBy(() -> NoncentralT.of(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NoncentralT.of(3, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NoncentralT.of(3, 1).quantile(1)).isInstanceOf(IllegalArgumentException.class);
    }
}
