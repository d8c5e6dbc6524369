package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DistributionAnalyticTest {

    private static final DrawKey KEY = DrawKey.of(5, "distributions", "all");

    static Stream<Distribution> all() {
        return Stream.of(
                new Constant(3),
                new CutNormal(300, 24),
                new Lognormal(0.13, 0.3),
                new Uniform(-1, 2),
                new Presence(0.3));
    }

    @ParameterizedTest
    @MethodSource("all")
    void quantileNeverFalls(Distribution distribution) {
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < 10_000; i++) {
            double quantile = distribution.quantile(i / 10_000.0);
            assertThat(quantile).isGreaterThanOrEqualTo(last);
            last = quantile;
        }
    }

    @Test
    void constantIsTheSameAtBothEnds() {
        assertThat(new Constant(-2.5).quantile(1e-9)).isEqualTo(-2.5);
        assertThat(new Constant(-2.5).quantile(0.999)).isEqualTo(-2.5);
    }

    /** Quantiles computed with mpmath 1.3 in 50 digits. */
    @ParameterizedTest
    @CsvSource({
        "0.001, -3.08097845139731784",
        "0.01, -2.32518489598045614",
        "0.2, -0.841553359333690006",
        "0.999, 3.08097845139731759"
    })
    void cutNormalHasTheQuantilesOfATruncatedNormal(double uniform, double sigmas) {
        assertThat(new CutNormal(10, 2).quantile(uniform)).isCloseTo(10 + 2 * sigmas, within(2e-14));
    }

    @Test
    void cutNormalEndsAtFourSigma() {
        CutNormal normal = new CutNormal(100, 10);

        assertThat(normal.quantile(0x1p-53)).isBetween(60.0, 60.0 + 1e-9);
        assertThat(normal.quantile(1 - 0x1p-53)).isBetween(140.0 - 1e-9, 140.0);
        assertThat(normal.quantile(0.5)).isEqualTo(100);
    }

    /**
     * Variance of a normal cut at c: 1 - 2 c phi(c) / (2 Phi(c) - 1), here 0.998929290372474 (mpmath). The midpoint sum
     * itself is off by h^2/24 times the jump of the slope of z^2, 2 x 8/phi(4): 5e-9.
     */
    @Test
    void cutNormalHasTheMomentsOfATruncatedNormal() {
        int cells = 1_000_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < cells; i++) {
            double z = new CutNormal(0, 1).quantile((i + 0.5) / cells);
            sum += z;
            squares += z * z;
        }
        assertThat(sum / cells).isCloseTo(0, within(1e-12));
        assertThat(squares / cells).isCloseTo(0.998929290372474, within(1e-8));
    }

    @Test
    void cutNormalByCvTakesTheSizeOfTheMean() {
        assertThat(CutNormal.ofCv(-200, 0.05)).isEqualTo(new CutNormal(-200, 10));
    }

    @Test
    void lognormalHasItsMedianAndSigma() {
        Lognormal lognormal = new Lognormal(0.13, 0.3);

        assertThat(lognormal.quantile(0.5)).isEqualTo(0.13);
        assertThat(Math.log(lognormal.quantile(0.99) / 0.13)).isCloseTo(0.3 * 2.3263478740408408, within(1e-14));
        assertThat(lognormal.quantile(0.01) * lognormal.quantile(0.99)).isCloseTo(0.13 * 0.13, within(1e-16));
    }

    /** Moments of the lognormal: mean = median exp(sigma^2/2), cv^2 = exp(sigma^2) - 1. */
    @Test
    void lognormalByCvHasThatCv() {
        Lognormal lognormal = Lognormal.ofCv(2, 0.3);
        Sample sample = Sample.of(400_000, i -> KEY.draw(lognormal, org.shutoffbench.draw.Stream.LOT, i, 0));
        double mean = sample.mean();

        assertThat(Math.exp(lognormal.sigma() * lognormal.sigma()) - 1).isCloseTo(0.09, within(1e-15));
        assertThat(mean).isCloseTo(2 * Math.sqrt(1.09), within(0.005));
        assertThat(Math.sqrt(sample.momentAbout(mean, 2)) / mean).isCloseTo(0.3, within(0.003));
    }

    @Test
    void uniformIsALine() {
        Uniform uniform = new Uniform(4, 14);

        assertThat(uniform.quantile(0.25)).isEqualTo(6.5);
        assertThat(new Uniform(2, 2).quantile(0.7)).isEqualTo(2);
    }

    @Test
    void presenceHasItsProbability() {
        Presence presence = new Presence(0.2);
        Sample sample = Sample.of(100_000, i -> KEY.draw(presence, org.shutoffbench.draw.Stream.PIECE, i, 3));

        assertThat(sample.mean()).isCloseTo(0.2, within(5 * Math.sqrt(0.16 / 100_000)));
        assertThat(presence.isPresent(0.79)).isFalse();
        assertThat(presence.isPresent(0.81)).isTrue();
        assertThat(new Presence(0).isPresent(1 - 0x1p-53)).isFalse();
        assertThat(new Presence(1).isPresent(0x1p-53)).isTrue();
    }

    @Test
    void nonsenseParametersAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Constant(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new CutNormal(Double.POSITIVE_INFINITY, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new CutNormal(0, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new CutNormal(0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lognormal(0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lognormal(Double.POSITIVE_INFINITY, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lognormal(1, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Lognormal.ofCv(1, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Uniform(1, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Uniform(Double.NaN, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Uniform(0, Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Presence(1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Presence(-0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Presence(Double.NaN));
    }
}
