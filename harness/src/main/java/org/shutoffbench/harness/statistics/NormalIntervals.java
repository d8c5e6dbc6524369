package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Intervals of the mean and of the standard deviation, exact for a normal population (source: NIST-Handbook 7.2). */
public final class NormalIntervals {

    private NormalIntervals() {}

    /**
     * Student's interval of the mean.
     *
     * @param standardError s / sqrt(n)
     * @param degreesOfFreedom n - 1, above 0
     */
    public static Interval mean(double mean, double standardError, double degreesOfFreedom, double confidence) {
        Levels.probability(confidence, "confidence");
        double reach =
                standardError * TDistribution.of(degreesOfFreedom).inverseSurvivalProbability((1 - confidence) / 2);
        return new Interval(mean - reach, mean + reach);
    }

    /**
     * Chi-square interval of the standard deviation.
     *
     * @param s standard deviation of the sample, not negative
     * @param n sample size, at least 2
     */
    public static Interval sigma(double s, long n, double confidence) {
        Levels.probability(confidence, "confidence");
        Levels.atLeast(n, 2, "n");
        double nu = n - 1.0;
        ChiSquaredDistribution chiSquare = ChiSquaredDistribution.of(nu);
        double tail = (1 - confidence) / 2;
        return new Interval(
                s * Math.sqrt(nu / chiSquare.inverseSurvivalProbability(tail)),
                s * Math.sqrt(nu / chiSquare.inverseCumulativeProbability(tail)));
    }

    /**
     * Fisher's interval of a correlation.
     *
     * @param r correlation of the sample, -1 to 1
     * @param n pairs, at least 4
     */
    public static Interval correlation(double r, long n, double confidence) {
        Levels.probability(confidence, "confidence");
        Levels.atLeast(n, 4, "n");
        if (Math.abs(r) >= 1) {
            return new Interval(Math.signum(r), Math.signum(r));
        }
        double z = Math.log((1 + r) / (1 - r)) / 2;
        double reach = StandardNormal.twoSided(confidence) / Math.sqrt(n - 3.0);
        return new Interval(Math.tanh(z - reach), Math.tanh(z + reach));
    }
}
