package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.LongToDoubleFunction;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Drawn numbers and what they must look like. Limits are 5 standard errors: keys are fixed, so a test cannot flicker. */
final class Sample {

    private static final double SIGMAS = 5;
    private final double[] values;

    private Sample(double[] values) {
        this.values = values;
    }

    static Sample of(int count, LongToDoubleFunction draw) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = draw.applyAsDouble(i);
        }
        return new Sample(values);
    }

    double mean() {
        return Arrays.stream(values).average().orElseThrow();
    }

    double momentAbout(double centre, int order) {
        return Arrays.stream(values)
                .map(v -> Math.pow(v - centre, order))
                .average()
                .orElseThrow();
    }

    /** Limit of a correlation of independent samples. */
    double correlationLimit() {
        return SIGMAS / Math.sqrt(values.length);
    }

    double correlationWith(Sample other) {
        return correlation(values, other.values, 0);
    }

    double serialCorrelation(int lag) {
        return correlation(values, values, lag);
    }

    private static double correlation(double[] a, double[] b, int lag) {
        double meanA = Arrays.stream(a).average().orElseThrow();
        double meanB = Arrays.stream(b).average().orElseThrow();
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i + lag < a.length; i++) {
            ab += (a[i] - meanA) * (b[i + lag] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i + lag] - meanB) * (b[i + lag] - meanB);
        }
        return ab / Math.sqrt(aa * bb);
    }

    /** Moments (variances of their estimates: 1, 2, 6 to 15, 96 over n) and Kolmogorov-Smirnov at 1e-4. */
    void assertStandardNormal() {
        double root = Math.sqrt(values.length);
        assertThat(mean()).isCloseTo(0, within(SIGMAS / root));
        assertThat(momentAbout(0, 2)).isCloseTo(1, within(SIGMAS * Math.sqrt(2) / root));
        assertThat(momentAbout(0, 3)).isCloseTo(0, within(SIGMAS * Math.sqrt(15) / root));
        assertThat(momentAbout(0, 4)).isCloseTo(3, within(SIGMAS * Math.sqrt(96) / root));
        NormalDistribution normal = NormalDistribution.of(0, 1);
        assertThat(kolmogorovSmirnov(normal::cumulativeProbability)).isLessThan(ksLimit());
    }

    /** Greatest distance of the empirical from a given distribution function. */
    double kolmogorovSmirnov(java.util.function.DoubleUnaryOperator cdf) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double greatest = 0;
        for (int i = 0; i < sorted.length; i++) {
            double p = cdf.applyAsDouble(sorted[i]);
            greatest = Math.max(greatest, Math.max(p - (double) i / sorted.length, (i + 1.0) / sorted.length - p));
        }
        return greatest;
    }

    /** Limit at level 1e-4: sqrt(ln(2/1e-4)/2 / n), the asymptotic (and conservative, Massart 1990) value. */
    double ksLimit() {
        return Math.sqrt(Math.log(2 / 1e-4) / 2 / values.length);
    }
}
