package org.shutoffbench.harness.statistics;

import java.util.Arrays;

/** The Anderson-Darling test of normality with mean and standard deviation estimated (source: Stephens1986). */
public final class AndersonDarling {

    /** Least sample for which the probabilities hold. */
    public static final int LEAST_SAMPLE = 8;

    private AndersonDarling() {}

    /** A^2 of a sample, not corrected for its size. */
    public static double statistic(double[] values) {
        Levels.atLeast(values.length, LEAST_SAMPLE, "sample size");
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        double mean = Arrays.stream(sorted).average().orElseThrow();
        double squares = Arrays.stream(sorted).map(x -> (x - mean) * (x - mean)).sum();
        double s = Math.sqrt(squares / (n - 1));
        if (!(s > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double low = StandardNormal.cdf((sorted[i] - mean) / s);
            double high = StandardNormal.survival((sorted[n - 1 - i] - mean) / s);
            sum += (2 * i + 1)
                    * (Math.log(Math.max(low, Double.MIN_NORMAL)) + Math.log(Math.max(high, Double.MIN_NORMAL)));
        }
        return -n - sum / n;
    }

    /** Probability of so great a statistic where the population is normal, to about 1e-3. */
    public static double p(double[] values) {
        double n = values.length;
        double a = statistic(values) * (1 + 0.75 / n + 2.25 / (n * n));
        if (a >= 13) {
            return 0;
        }
        if (a >= 0.6) {
            return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
        }
        if (a > 0.34) {
            return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
        }
        return a > 0.2
                ? 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a)
                : 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
    }
}
