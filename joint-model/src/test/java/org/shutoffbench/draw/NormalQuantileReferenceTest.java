package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalQuantileReferenceTest {

    /** Computed with mpmath 1.3 in 50 digits by Newton's method on the logarithm of the distribution function. */
    @ParameterizedTest
    @CsvSource({
        "0.5000009765625, 2.4478791743888964277e-6",
        "0.6, 0.25334710313579974132",
        "0.75, 0.6744897501960817432",
        "0.925, 1.4395314709384562291",
        "0.9250000000000002, 1.4395314709384570134",
        "0.99, 2.3263478740408407676",
        "0.999, 3.0902323061678132778",
        "0.9999, 3.7190164854557083867",
        "0.001, -3.0902323061678135354",
        "1e-8, -5.6120012441747887279",
        "1.3e-11, -6.6676114565107408347",
        "1.4e-11, -6.6567230915181836356",
        "1e-12, -7.0344838253011319326",
        "1.1102230246251565e-16, -8.2095361516013868556",
        "5.551115123125783e-17, -8.2923610758135955382",
        "1e-100, -21.273453560965324294",
        "1e-300, -37.047096299361199237"
    })
    void agreesWithMultiplePrecision(double probability, double expected) {
        assertThat(NormalQuantile.at(probability)).isCloseTo(expected, within(1e-15 * Math.abs(expected)));
    }

    @Test
    void agreesWithAnotherProgramEverywhere() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        for (int i = 1; i < 20_000; i++) {
            double p = i / 20_000.0;
            double expected = normal.inverseCumulativeProbability(p);
            assertThat(NormalQuantile.at(p)).isCloseTo(expected, within(2e-15 * Math.abs(expected) + 1e-16));
        }
    }

    @Test
    void isOddAboutTheMiddle() {
        for (int i = 1; i < 1000; i++) {
            double p = i / 2048.0;
            assertThat(NormalQuantile.at(1 - p)).isEqualTo(-NormalQuantile.at(p));
        }
        assertThat(NormalQuantile.at(0.5)).isEqualTo(0);
    }

    @Test
    void endsAreInfiniteAndNonsenseIsNaN() {
        assertThat(NormalQuantile.at(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(NormalQuantile.at(1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(NormalQuantile.at(-0.1)).isNaN();
        assertThat(NormalQuantile.at(1.1)).isNaN();
        assertThat(NormalQuantile.at(Double.NaN)).isNaN();
    }

    /** Neighbours on the grid of drawn uniforms (odd multiples of 2^-53), around seams and in the body. */
    @ParameterizedTest
    @ValueSource(doubles = {1.3887943864964021e-11, 1e-9, 1e-4, 0.01, 0.075, 0.2, 0.31, 0.4, 0.5, 0.84, 0.925, 0.999})
    void isMonotoneFromOneUniformToTheNext(double around) {
        double start = (Math.floor(around * 0x1p52) + 0.5) * 0x1p-52;
        double last = Double.NEGATIVE_INFINITY;
        for (int step = -20_000; step <= 20_000; step++) {
            double p = start + step * 0x1p-52;
            double z = NormalQuantile.at(p);
            assertThat(z).isGreaterThanOrEqualTo(last);
            last = z;
        }
    }
}
